package daylight.report.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints the elements of one drawing into a content stream. */
final class Plotter {
  private static final Set<String> UNSEEN = Set.of("title", "desc", "defs", "style");

  private final Fonts fonts;
  private final Function<String, PDImageXObject> pictures;
  private final PDPageContentStream out;
  private final Painter painter;

  /**
   * Paints into a stream.
   *
   * @param pictures finds a picture by its address
   */
  Plotter(
      Fonts fonts,
      Function<String, PDImageXObject> pictures,
      PDPageContentStream out,
      Painter painter) {
    this.fonts = fonts;
    this.pictures = pictures;
    this.out = out;
    this.painter = painter;
  }

  /** The elements within one. */
  static List<Element> children(Element parent) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }

  /** Every element within one that has an id, by its id. */
  static Map<String, Element> named(Element parent) {
    Map<String, Element> named = new HashMap<>();
    for (Element child : children(parent)) {
      named.putAll(named(child));
      if (child.hasAttribute("id")) {
        named.put(child.getAttribute("id"), child);
      }
    }
    return named;
  }

  /** Paints what stands in an element; the matrix leads from there to the drawing's page. */
  void inside(Element parent, Brush around, Matrix matrix) throws IOException {
    for (Element child : children(parent)) {
      if (!UNSEEN.contains(child.getTagName())) {
        Known.check(child);
        paint(child, around.of(child), matrix);
      }
    }
  }

  private void paint(Element element, Brush brush, Matrix matrix) throws IOException {
    boolean plain = !element.hasAttribute("transform") && !element.hasAttribute("clip-path");
    if (plain && element.getTagName().equals("g")) {
      inside(element, brush, matrix);
      return;
    }
    out.saveGraphicsState();
    Matrix here = matrix;
    if (element.hasAttribute("transform")) {
      Matrix own = Turn.read(element.getAttribute("transform"));
      out.transform(own);
      here = own.multiply(matrix);
    }
    if (element.hasAttribute("clip-path")) {
      painter.clip(element.getAttribute("clip-path"));
    }
    switch (element.getTagName()) {
      case "g" -> inside(element, brush, here);
      case "text" -> text(element, brush, here);
      case "image" -> image(element);
      default -> painter.shape(element, brush, here);
    }
    out.restoreGraphicsState();
  }

  /** A picture keeps its proportions: whole within its box, or filling it, its middle kept. */
  private void image(Element image) throws IOException {
    PDImageXObject picture = pictures.apply(image.getAttribute("xlink:href"));
    float width = Shapes.number(image, "width");
    float height = Shapes.number(image, "height");
    float x = Shapes.number(image, "x");
    float y = Shapes.number(image, "y");
    float across = width / picture.getWidth();
    float down = height / picture.getHeight();
    String fit = image.getAttribute("preserveAspectRatio");
    float scale = fit.endsWith("slice") ? Math.max(across, down) : Math.min(across, down);
    float wide = scale * picture.getWidth();
    float high = scale * picture.getHeight();
    out.addRect(x, y, width, height);
    out.clip();
    float left = x + (width - wide) / 2;
    float foot = y + (height + high) / 2;
    out.drawImage(picture, new Matrix(wide, 0, 0, -high, left, foot));
  }

  /** A rim is painted below the letters, and says nothing to whoever reads the text aloud. */
  private void text(Element element, Brush brush, Matrix matrix) throws IOException {
    painter.take(brush, matrix);
    if (brush.strokes()) {
      COSDictionary silence = new COSDictionary();
      silence.setString(COSName.ACTUAL_TEXT, "");
      out.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(silence));
      letters(element, brush, RenderingMode.STROKE);
      out.endMarkedContent();
    }
    letters(element, brush, RenderingMode.FILL);
  }

  private void letters(Element element, Brush brush, RenderingMode mode) throws IOException {
    PDFont font = fonts.of(brush.bold());
    String text = Fonts.writable(element.getTextContent(), brush.bold());
    float width = font.getStringWidth(text) / 1000 * brush.fontSize();
    float back =
        switch (brush.anchor()) {
          case "start" -> 0;
          case "middle" -> width / 2;
          case "end" -> width;
          default -> throw new IllegalArgumentException("text-anchor: " + brush.anchor());
        };
    out.beginText();
    out.setRenderingMode(mode);
    out.setFont(font, brush.fontSize());
    out.setTextMatrix(
        new Matrix(1, 0, 0, -1, Shapes.number(element, "x") - back, Shapes.number(element, "y")));
    out.showText(text);
    out.endText();
  }
}
