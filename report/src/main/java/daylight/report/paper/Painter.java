package daylight.report.paper;

import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;

/** Paints outlines into a content stream, in colours, patterns and strokes. */
final class Painter {
  private final PDDocument document;
  private final PDPageContentStream out;
  private final PDResources resources;
  private final Shapes shapes;
  private final Map<String, Element> named;

  Painter(
      PDDocument document,
      PDPageContentStream out,
      PDResources resources,
      Map<String, Element> named) {
    this.document = document;
    this.out = out;
    this.resources = resources;
    this.shapes = new Shapes(out);
    this.named = named;
  }

  /** Paints a shape. */
  void shape(Element shape, Brush brush, Matrix matrix) throws IOException {
    if (!brush.fills() && !brush.strokes()) {
      return;
    }
    take(brush, matrix);
    shapes.outline(shape);
    if (brush.fills() && brush.strokes()) {
      out.fillAndStroke();
    } else if (brush.fills()) {
      out.fill();
    } else {
      out.stroke();
    }
  }

  /** Lets through only what is painted inside the shapes that a reference is to. */
  void clip(String reference) throws IOException {
    for (Element shape : Plotter.children(target(reference))) {
      shapes.outline(shape);
    }
    out.clip();
  }

  /**
   * Takes up a brush.
   *
   * @param matrix from where one paints to the page of the content stream, which patterns lie on
   */
  void take(Brush brush, Matrix matrix) throws IOException {
    if (brush.isClear()) {
      out.setGraphicsStateParameters(brush.transparency());
    }
    if (brush.fill().startsWith("url(")) {
      PDTilingPattern pattern = pattern(target(brush.fill()), matrix);
      COSName name = resources.add(pattern);
      out.setNonStrokingColor(new PDColor(name, new PDPattern(null)));
    } else if (brush.fills()) {
      float[] rgb = rgb(brush.fill());
      out.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
    }
    if (brush.strokes()) {
      float[] rgb = rgb(brush.stroke());
      out.setStrokingColor(rgb[0], rgb[1], rgb[2]);
      out.setLineWidth(brush.width());
      out.setLineCapStyle(brush.cap());
      out.setLineJoinStyle(brush.join());
      out.setLineDashPattern(brush.dashes(), 0);
    }
  }

  /** The element that a reference such as {@code url(#band)} is to. */
  private Element target(String reference) {
    String id = reference.substring("url(#".length(), reference.length() - 1);
    return Objects.requireNonNull(named.get(id), reference);
  }

  private PDTilingPattern pattern(Element element, Matrix matrix) throws IOException {
    float width = Shapes.number(element, "width");
    float height = Shapes.number(element, "height");
    Matrix own = Turn.read(element.getAttribute("patternTransform"));
    PDTilingPattern pattern = new PDTilingPattern();
    pattern.setPaintType(PDTilingPattern.PAINT_COLORED);
    pattern.setTilingType(PDTilingPattern.TILING_CONSTANT_SPACING);
    pattern.setBBox(new PDRectangle(width, height));
    pattern.setXStep(width);
    pattern.setYStep(height);
    pattern.setResources(new PDResources());
    pattern.getCOSObject().setItem(COSName.MATRIX, own.multiply(matrix).toCOSArray());
    PDAppearanceStream tile = new PDAppearanceStream(document);
    tile.setResources(pattern.getResources());
    try (PDPageContentStream lines =
        new PDPageContentStream(document, tile, pattern.getContentStream().createOutputStream())) {
      Painter painter = new Painter(document, lines, pattern.getResources(), named);
      for (Element shape : Plotter.children(element)) {
        Known.check(shape);
        lines.saveGraphicsState();
        painter.shape(shape, Brush.FIRST.of(shape), new Matrix());
        lines.restoreGraphicsState();
      }
    }
    return pattern;
  }

  /** A colour's parts from 0 to 1. Refuses what is not {@code #rrggbb}. */
  private static float[] rgb(String colour) {
    if (!colour.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("no colour: " + colour);
    }
    int all = Integer.parseInt(colour.substring(1), 16);
    return new float[] {(all >> 16) / 255f, (all >> 8 & 255) / 255f, (all & 255) / 255f};
  }
}
