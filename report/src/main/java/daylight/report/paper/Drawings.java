package daylight.report.paper;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;

/** Draws with the document's own fonts; those that style rules name are never asked for. */
record Drawings(PDDocument document, Fonts fonts) implements SVGDrawer {

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext context, double width, double height, double dotsPerPixel) {
    if (width < 0 || height < 0) {
      throw new IllegalArgumentException("a drawing on paper is given its size");
    }
    return new Drawing(document, fonts, svg, width, height);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {}

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

  @Override
  public void close() {}
}
