package daylight.report.paper;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.RenderingContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;

/**
 * One drawing at its place on a page, as a form of its own.
 *
 * @param width the room it is given, in the page setter's dots
 * @param height the same
 */
record Drawing(Drawings drawings, Element svg, double width, double height)
    implements SVGDrawer.SVGImage {

  @Override
  public int getIntrinsicWidth() {
    return (int) width;
  }

  @Override
  public int getIntrinsicHeight() {
    return (int) height;
  }

  @Override
  public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
    if (!(device instanceof PdfBoxOutputDevice pdf)) {
      throw new IllegalArgumentException("drawn on paper only");
    }
    PageBox page = context.getPage();
    float dots = pdf.getDotsPerPoint();
    double left = page.getMarginBorderPadding(context, CalculatedStyle.LEFT) + x;
    double top =
        page.getMarginBorderPadding(context, CalculatedStyle.TOP) + y - page.getPaintingTop();
    double foot = page.getHeight(context) - top - height;
    try {
      pdf.getCurrentPage().placeXForm((float) (left / dots), (float) (foot / dots), form(dots));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The type of a form that can be written to as part of a document is an appearance's. */
  private PDAppearanceStream form(float dots) throws IOException {
    String[] view = svg.getAttribute("viewBox").split(" ", -1);
    float wide = Float.parseFloat(view[2]);
    float high = Float.parseFloat(view[3]);
    PDResources resources = new PDResources();
    PDDocument document = drawings.document();
    PDAppearanceStream form = new PDAppearanceStream(document);
    form.setResources(resources);
    form.setBBox(new PDRectangle(wide, high));
    Matrix scale =
        Matrix.getScaleInstance((float) (width / dots / wide), (float) (height / dots / high));
    form.getCOSObject().setItem(COSName.MATRIX, scale.toCOSArray());
    Matrix down = new Matrix(1, 0, 0, -1, 0, high);
    Map<String, Element> named = Plotter.named(svg);
    try (PDPageContentStream out =
        new PDPageContentStream(
            document, form, form.getStream().createOutputStream(COSName.FLATE_DECODE))) {
      out.transform(down);
      Painter painter = new Painter(document, out, resources, named);
      new Plotter(drawings.fonts(), drawings::picture, out, painter)
          .inside(svg, Brush.FIRST.of(svg), down);
    }
    return form;
  }
}
