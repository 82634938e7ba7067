package daylight.report.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import daylight.report.draw.Subject;
import daylight.report.page.CrewCards;
import daylight.report.page.Edition;
import daylight.report.page.Paper;
import daylight.report.page.Sender;
import daylight.report.page.ShortReport;
import daylight.report.shots.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The door for the reports on paper. */
public final class PaperReport {
  private static final String FAMILY = "Daylight Sans";
  private static final float VERSION = 1.7f;

  /** So many things of a sort it tells one by one where there is room for all of them. */
  private static final int MOST = 8;

  /** A lower sketch shows nothing at a glance. */
  private static final double LEAST_SKETCH = 160;

  private static final double SKETCH_STEP = 20;

  static {
    XRLog.setLoggerImpl(new Quiet());
  }

  private PaperReport() {}

  /** The report as PDF; the same report and sheet give the same bytes. */
  public static byte[] write(Edition edition, Paper paper) {
    return write(edition, paper, said -> {});
  }

  /** The same, telling what the page setter has to say on the way. */
  static byte[] write(Edition edition, Paper paper, Consumer<Diagnostic> told) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(edition, paper, told, out);
    return out.toByteArray();
  }

  /**
   * The short report, with as much told one by one as its first page holds; of many lines it has
   * more pages than two.
   */
  public static byte[] brief(Subject subject, Sender sender, Paper paper) {
    int toDo = MOST;
    int toMeasure = MOST;
    while (toMeasure >= 0
        && pages(ShortReport.first(subject, sender, toDo, toMeasure), paper) > 1) {
      // What is to be done is worth more room than what could still be measured.
      if (toMeasure > 0) {
        toMeasure /= 2;
      } else if (toDo > 0) {
        toDo--;
      } else {
        toMeasure = ShortReport.LEFT_OUT;
      }
    }
    return write(ShortReport.of(subject, sender, toDo, toMeasure), paper);
  }

  /**
   * The cards of those who dig, one page for each, with a sketch as high as its page has room for;
   * a card that is full without one has none.
   */
  public static byte[] crew(Subject subject, Sender sender, Paper paper) {
    List<Double> heights = new ArrayList<>();
    int cards = CrewCards.count(subject);
    for (int i = 0; i < cards; i++) {
      double height = CrewCards.SKETCH;
      while (height > CrewCards.NO_SKETCH
          && pages(CrewCards.one(subject, sender, i, height), paper) > 1) {
        height = height > LEAST_SKETCH ? height - SKETCH_STEP : CrewCards.NO_SKETCH;
      }
      heights.add(height);
    }
    return write(CrewCards.of(subject, sender, heights), paper);
  }

  private static int pages(Edition edition, Paper paper) {
    return write(edition, paper, said -> {}, new ByteArrayOutputStream());
  }

  /** Writes it; how many pages it took. */
  private static int write(
      Edition edition, Paper paper, Consumer<Diagnostic> told, ByteArrayOutputStream out) {
    PaperPage page = new PaperPage(edition, paper);
    try (PDDocument document = new PDDocument()) {
      set(page, document, told);
      page.imprint().put(document);
      document.setDocumentId(page.id());
      document.save(out);
      return document.getNumberOfPages();
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
    builder.useProtocolsStreamImplementation(page.beside(), Picture.PROTOCOL);
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
