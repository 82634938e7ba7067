package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;

/** What a drawing is drawn with, its legend apart from the rest. */
final class Inks {
  private final Set<String> strokesOfLegend = new TreeSet<>();
  private final Set<String> strokesDrawn = new TreeSet<>();
  private final Set<String> signsOfLegend = new TreeSet<>();
  private final Set<String> signsDrawn = new TreeSet<>();
  private final Set<String> strokes = new TreeSet<>();
  private final Set<String> letters = new TreeSet<>();

  private Inks(Tag svg) {
    read(LabelOverlaps.parsed(svg).getDocumentElement(), false);
  }

  static Inks of(Tag svg) {
    return new Inks(svg);
  }

  /** Colour and dashes of each. */
  Set<String> strokesOfLegend() {
    return strokesOfLegend;
  }

  Set<String> strokesDrawn() {
    return strokesDrawn;
  }

  /** As they are written, without where they stand. */
  Set<String> signsOfLegend() {
    return signsOfLegend;
  }

  Set<String> signsDrawn() {
    return signsDrawn;
  }

  /** The colours of strokes that have no darker edge. */
  Set<String> strokes() {
    return strokes;
  }

  Set<String> letters() {
    return letters;
  }

  private void read(Element element, boolean legend) {
    boolean beside = legend || (isMoved(element) && holds(element, "text"));
    switch (element.getTagName()) {
      case "defs" -> {
        patterns(element);
        return;
      }
      case "style", "title", "desc" -> {
        return;
      }
      case "text" -> letter(element.getAttribute("fill"));
      case "image" -> {}
      default -> stroke(element, beside);
    }
    if (isMoved(element)
        && !holds(element, "text")
        && !element.getAttribute("transform").contains("rotate")) {
      // In the legend a sign stands in a group that says where, on the drawing it says so itself.
      if (!beside) {
        signsDrawn.add(written(element));
      } else {
        inner(element).forEach(one -> signsOfLegend.add(written(one)));
      }
    }
    inner(element).forEach(child -> read(child, beside));
  }

  /** What areas are filled with is drawn with strokes, too. */
  private void patterns(Element defs) {
    inner(defs).stream()
        .flatMap(pattern -> inner(pattern).stream())
        .filter(one -> one.hasAttribute("stroke"))
        .forEach(one -> strokesDrawn.add(one.getAttribute("stroke") + " "));
  }

  private static boolean isMoved(Element element) {
    return element.getTagName().equals("g")
        && element.getAttribute("transform").startsWith("translate(");
  }

  private static boolean holds(Element element, String name) {
    return element.getElementsByTagName(name).getLength() > 0;
  }

  private void letter(String fill) {
    // White letters stand on the red of a stop order, which is as far from white as white from it.
    if (!fill.equals(Ink.PAPER)) {
      letters.add(fill);
    }
  }

  private void stroke(Element element, boolean legend) {
    String ink = element.getAttribute("stroke");
    if (ink.isEmpty() || ink.equals("none")) {
      return;
    }
    (legend ? strokesOfLegend : strokesDrawn)
        .add(ink + " " + element.getAttribute("stroke-dasharray"));
    boolean edged =
        element.getPreviousSibling() instanceof Element before
            && before.getAttribute("d").equals(element.getAttribute("d"))
            && before.getAttribute("stroke").equals(Ink.DARK);
    if (!ink.equals(Ink.PAPER) && !edged) {
      strokes.add(ink);
    }
  }

  private static List<Element> inner(Element element) {
    List<Element> inner = new ArrayList<>();
    NodeList all = element.getChildNodes();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element child) {
        inner.add(child);
      }
    }
    return inner;
  }

  private static String written(Element element) {
    StringBuilder out = new StringBuilder("<" + element.getTagName());
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      if (!name.equals("transform")) {
        out.append(' ').append(name).append('=').append(attributes.item(i).getNodeValue());
      }
    }
    out.append('>');
    inner(element).forEach(child -> out.append(written(child)));
    return out.toString();
  }
}
