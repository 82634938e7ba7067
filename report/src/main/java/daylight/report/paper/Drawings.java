package daylight.report.paper;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceType;
import com.openhtmltopdf.pdfboxout.PdfBoxImage;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Draws with the document's own fonts; those that style rules name are never asked for. */
final class Drawings implements SVGDrawer {
  private final PDDocument document;
  private final Fonts fonts;
  private @Nullable UserAgentCallback setter;

  Drawings(PDDocument document, Fonts fonts) {
    this.document = document;
    this.fonts = fonts;
  }

  PDDocument document() {
    return document;
  }

  Fonts fonts() {
    return fonts;
  }

  /** A picture by its address; one that stands on a page too is in the document only once. */
  PDImageXObject picture(String address) {
    if (setter != null
        && setter.getImageResource(address, ExternalResourceType.IMAGE_RASTER).getImage()
            instanceof PdfBoxImage image) {
      return image.getXObject();
    }
    throw new IllegalArgumentException(
        "no picture at " + address.substring(0, Math.min(40, address.length())));
  }

  @Override
  public void withUserAgent(UserAgentCallback callback) {
    setter = callback;
  }

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext context, double width, double height, double dotsPerPixel) {
    if (width < 0 || height < 0) {
      throw new IllegalArgumentException("a drawing on paper is given its size");
    }
    return new Drawing(this, svg, width, height);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {}

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

  @Override
  public void close() {}
}
