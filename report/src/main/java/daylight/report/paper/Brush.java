package daylight.report.paper;

import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.w3c.dom.Element;

/**
 * How an element is painted: what it says itself, and what it inherits from those around it.
 *
 * @param fill a colour as {@code #rrggbb}, {@code none} or {@code url(#…)}
 * @param stroke a colour as {@code #rrggbb} or {@code none}
 * @param dash lengths of strokes and gaps in turn; empty for a solid stroke
 * @param anchor which part of a text stands at its point: {@code start}, {@code middle}, {@code
 *     end}
 */
record Brush(
    String fill,
    String stroke,
    float width,
    float fillOpacity,
    float strokeOpacity,
    int cap,
    int join,
    List<Float> dash,
    float fontSize,
    boolean bold,
    String anchor) {
  static final String NONE = "none";
  private static final List<String> CAPS = List.of("butt", "round", "square");
  private static final List<String> JOINS = List.of("miter", "round", "bevel");

  /** Where nothing is said. */
  static final Brush FIRST =
      new Brush("#000000", NONE, 1, 1, 1, 0, 0, List.of(), 16, false, "start");

  Brush {
    dash = List.copyOf(dash);
  }

  /** The same with what an element says about itself. */
  Brush of(Element element) {
    float opacity = number(element, "opacity", 1);
    return new Brush(
        text(element, "fill", fill),
        text(element, "stroke", stroke),
        number(element, "stroke-width", width),
        number(element, "fill-opacity", fillOpacity) * opacity,
        number(element, "stroke-opacity", strokeOpacity) * opacity,
        one(CAPS, text(element, "stroke-linecap", CAPS.get(cap))),
        one(JOINS, text(element, "stroke-linejoin", JOINS.get(join))),
        element.hasAttribute("stroke-dasharray")
            ? dash(element.getAttribute("stroke-dasharray"))
            : dash,
        number(element, "font-size", fontSize),
        text(element, "font-weight", bold ? "700" : "400").equals("700"),
        text(element, "text-anchor", anchor));
  }

  boolean fills() {
    return !fill.equals(NONE);
  }

  boolean strokes() {
    return !stroke.equals(NONE) && width > 0;
  }

  /** What is not opaque needs a state of its own. */
  boolean isClear() {
    return fillOpacity < 1 || strokeOpacity < 1;
  }

  PDExtendedGraphicsState transparency() {
    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
    state.setNonStrokingAlphaConstant(fillOpacity);
    state.setStrokingAlphaConstant(strokeOpacity);
    return state;
  }

  float[] dashes() {
    float[] lengths = new float[dash.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = dash.get(i);
    }
    return lengths;
  }

  private static List<Float> dash(String lengths) {
    return lengths.equals(NONE)
        ? List.of()
        : Arrays.stream(lengths.strip().split("[\\s,]+", -1)).map(Float::valueOf).toList();
  }

  private static int one(List<String> names, String name) {
    int at = names.indexOf(name);
    if (at < 0) {
      throw new IllegalArgumentException(name + " is none of " + names);
    }
    return at;
  }

  private static String text(Element element, String name, String inherited) {
    return element.hasAttribute(name) ? element.getAttribute(name) : inherited;
  }

  private static float number(Element element, String name, float inherited) {
    return element.hasAttribute(name) ? Float.parseFloat(element.getAttribute(name)) : inherited;
  }
}
