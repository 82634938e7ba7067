package daylight.report.paper;

import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** What an element of a drawing may say, so that nothing it says is left out in silence. */
final class Known {
  private static final Set<String> PAINTED =
      Set.of(
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "rx",
          "width",
          "height",
          "d",
          "points",
          "xlink:href",
          "preserveAspectRatio",
          "fill",
          "stroke",
          "stroke-width",
          "fill-opacity",
          "stroke-opacity",
          "opacity",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-dasharray",
          "font-size",
          "font-weight",
          "text-anchor",
          "transform",
          "clip-path",
          "ry");

  /** Names, and what holds of every drawing of ours: one typeface, rims below letters. */
  private static final Set<String> ELSEWHERE =
      Set.of("id", "class", "role", "lang", "font-family", "paint-order", "tabindex");

  private static final Set<String> FITS = Set.of("xMidYMid", "xMidYMid meet", "xMidYMid slice");

  private Known() {}

  /** Refuses an element that says something that would not be painted. */
  static void check(Element element) {
    String fit = element.getAttribute("preserveAspectRatio");
    if (!fit.isEmpty() && !FITS.contains(fit)) {
      throw new IllegalArgumentException("a picture fits as one of " + FITS + ", was " + fit);
    }
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      boolean silent =
          name.startsWith("data-") || name.startsWith("aria-") || name.startsWith("xmlns");
      if (!silent && !PAINTED.contains(name) && !ELSEWHERE.contains(name)) {
        throw new IllegalArgumentException(
            "a drawing's " + element.getTagName() + " says " + name + ", which is not known here");
      }
    }
  }
}
