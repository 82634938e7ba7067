package daylight.report.paper;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.w3c.dom.Element;

/** The outlines of SVG's basic shapes (SVG 1.1, chapter 9) as path operators. */
final class Shapes {
  /** How far the control points of a quarter of a circle lie along its tangents, in radii. */
  private static final double PULL = 4 * (StrictMath.sqrt(2) - 1) / 3;

  private final PDPageContentStream out;

  Shapes(PDPageContentStream out) {
    this.out = out;
  }

  /** Makes the outline of a shape the stream's current path. Refuses what is no shape. */
  void outline(Element shape) throws IOException {
    switch (shape.getTagName()) {
      case "path" -> Outline.trace(shape.getAttribute("d"), out);
      case "line" -> {
        out.moveTo(number(shape, "x1"), number(shape, "y1"));
        out.lineTo(number(shape, "x2"), number(shape, "y2"));
      }
      case "polyline" -> Outline.trace("M" + shape.getAttribute("points"), out);
      case "polygon" -> Outline.trace("M" + shape.getAttribute("points") + "Z", out);
      case "circle" -> ellipse(shape, number(shape, "r"), number(shape, "r"));
      case "ellipse" -> ellipse(shape, number(shape, "rx"), number(shape, "ry"));
      case "rect" -> rectangle(shape);
      default -> throw new IllegalArgumentException("no shape: " + shape.getTagName());
    }
  }

  private void rectangle(Element shape) throws IOException {
    float x = number(shape, "x");
    float y = number(shape, "y");
    float width = number(shape, "width");
    float height = number(shape, "height");
    double round = Math.min(number(shape, "rx"), Math.min(width, height) / 2);
    if (round == 0) {
      out.addRect(x, y, width, height);
      return;
    }
    quarter(x, y + round, x + round, y, true, true);
    out.lineTo((float) (x + width - round), y);
    quarter(x + width - round, y, x + width, y + round, false, false);
    out.lineTo(x + width, (float) (y + height - round));
    quarter(x + width, y + height - round, x + width - round, y + height, true, false);
    out.lineTo((float) (x + round), y + height);
    quarter(x + round, y + height, x, y + height - round, false, false);
    out.closePath();
  }

  private void ellipse(Element shape, double rx, double ry) throws IOException {
    double x = number(shape, "cx");
    double y = number(shape, "cy");
    quarter(x - rx, y, x, y - ry, true, true);
    quarter(x, y - ry, x + rx, y, false, false);
    quarter(x + rx, y, x, y + ry, true, false);
    quarter(x, y + ry, x - rx, y, false, false);
    out.closePath();
  }

  /** A quarter of an ellipse from one point to another, that leaves the first up or down or not. */
  private void quarter(double x1, double y1, double x2, double y2, boolean upright, boolean first)
      throws IOException {
    if (first) {
      out.moveTo((float) x1, (float) y1);
    }
    double ax = upright ? x1 : x1 + PULL * (x2 - x1);
    double ay = upright ? y1 + PULL * (y2 - y1) : y1;
    double bx = upright ? x2 - PULL * (x2 - x1) : x2;
    double by = upright ? y2 : y2 - PULL * (y2 - y1);
    out.curveTo((float) ax, (float) ay, (float) bx, (float) by, (float) x2, (float) y2);
  }

  /** An attribute as a number; nought where it is not given. */
  static float number(Element element, String name) {
    return element.hasAttribute(name) ? Float.parseFloat(element.getAttribute(name)) : 0;
  }
}
