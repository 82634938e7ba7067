package daylight.report.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import daylight.report.page.OwnersReport;
import daylight.report.page.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The door for the owner's report on paper. */
public final class PaperReport {
  private static final String FAMILY = "Daylight Sans";
  private static final float VERSION = 1.7f;

  static {
    XRLog.setLoggerImpl(new Quiet());
  }

  private PaperReport() {}

  /** The report as PDF; the same report and sheet give the same bytes. */
  public static byte[] write(OwnersReport report, Paper paper) {
    return write(report, paper, said -> {});
  }

  /** The same, telling what the page setter has to say on the way. */
  static byte[] write(OwnersReport report, Paper paper, Consumer<Diagnostic> told) {
    PaperPage page = new PaperPage(report, paper);
    try (PDDocument document = new PDDocument()) {
      set(page, document, told);
      page.imprint().put(document);
      document.setDocumentId(page.id());
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void set(PaperPage page, PDDocument document, Consumer<Diagnostic> told)
      throws IOException {
    Fonts fonts = Fonts.load(document);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(page.document(), "");
    builder.usePDDocument(document);
    builder.usePdfVersion(VERSION);
    builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
    builder.usePdfUaAccessibility(true);
    builder.useColorProfile(ColourProfile.srgb());
    builder.useReplacementText(String.valueOf(Fonts.MISSING));
    builder.useUnicodeLineBreaker(new LineEnds());
    builder.useSVGDrawer(new Drawings(document, fonts));
    builder.withDiagnosticConsumer(told);
    useFont(builder, fonts.regular(), 400);
    useFont(builder, fonts.bold(), 700);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
    }
  }

  private static void useFont(PdfRendererBuilder builder, PDFont font, int weight) {
    builder.useFont(new PDFontSupplier(font), FAMILY, weight, FontStyle.NORMAL, true);
  }
}
