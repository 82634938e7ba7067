package daylight.bench;

import daylight.app.Job;
import daylight.archive.Folders;
import daylight.report.Handout;
import daylight.report.Report;
import daylight.report.page.OwnersReport;
import daylight.report.paper.PaperReport;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * The report of a drain with a photograph for every finding: how long its pages take, beside a PDF
 * of the same pictures and nothing else; how large it is beside them. Of the times read the ratios.
 *
 * <p>Arguments: pictures (40 if none), times (15 if none).
 */
public final class ReportBench {
  private static final double METRES = 60;
  private static final int LOCATES = 20;
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 960;

  /** At most; where few times are asked for, as few. */
  private static final int WARM = 5;

  private static final double MEBIBYTE = 1 << 20;

  private ReportBench() {}

  /** Runs it. */
  public static void main(String[] words) throws IOException {
    int pictures = words.length > 0 ? Integer.parseInt(words[0]) : 40;
    int times = words.length > 1 ? Integer.parseInt(words[1]) : 15;
    Path folder = Files.createTempDirectory("report-bench");
    try {
      Path book = folder.resolve("field-book.yaml");
      Files.writeString(book, LongDrain.book(METRES, LOCATES, pictures, pictures));
      for (int i = 0; i < pictures; i++) {
        photograph(folder.resolve(LongDrain.photograph(i)), i);
      }
      if (!(Job.answer(book, Job.Settings.USUAL) instanceof Job.Outcome.Answered answered)) {
        throw new IllegalStateException("the book was not answered");
      }
      measure(answered.handout(), times);
    } finally {
      Folders.delete(folder);
    }
  }

  /** As a camera's: some order and much noise. */
  private static void photograph(Path file, int seed) throws IOException {
    Random random = new Random(seed);
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double wide = Math.hypot(x - WIDTH / 2.0, y - HEIGHT / 2.0) / HEIGHT;
        int grey = (int) Math.max(0, Math.min(255, 200 * wide + 12 * random.nextGaussian()));
        picture.setRGB(x, y, grey << 16 | grey << 8 | (grey * 3 / 4));
      }
    }
    try (OutputStream out = Files.newOutputStream(file)) {
      ImageIO.write(picture, "jpg", out);
    }
  }

  private static void measure(Handout handout, int times) throws IOException {
    List<byte[]> pictures =
        handout.shots().photos().stream().map(photo -> photo.picture().jpeg()).toList();
    double[] report = new double[times];
    double[] alone = new double[times];
    double[] all = new double[times];
    int size = 0;
    int pages = 0;
    int most = 0;
    for (int i = -Math.min(WARM, times); i < times; i++) {
      int at = Math.max(i, 0);
      long begun = System.nanoTime();
      byte[] pdf =
          PaperReport.write(
              OwnersReport.of(handout.subject(), handout.sender()).edition(), handout.paper());
      report[at] = since(begun);
      begun = System.nanoTime();
      byte[] bare = alone(pictures);
      alone[at] = since(begun);
      begun = System.nanoTime();
      Map<String, byte[]> files = Report.files(handout);
      all[at] = since(begun);
      size = pdf.length;
      most = Math.max(most, files.size());
      if (bare.length == 0) {
        throw new IllegalStateException("no pictures were written");
      }
      if (pages == 0) {
        try (PDDocument read = Loader.loadPDF(pdf)) {
          pages = read.getNumberOfPages();
        }
      }
    }
    long bytes = pictures.stream().mapToLong(one -> one.length).sum();
    System.out.printf(
        Locale.ROOT,
        "report.pdf of %d pages with %d pictures: median %.2f s; the pictures alone %.2f s; ratio"
            + " %.1f%n",
        pages,
        pictures.size(),
        median(report),
        median(alone),
        median(report) / median(alone));
    System.out.printf(
        Locale.ROOT,
        "size %.2f MiB, of its pictures %.2f MiB: ratio %.3f%n",
        size / MEBIBYTE,
        bytes / MEBIBYTE,
        size / (double) bytes);
    System.out.printf(
        Locale.ROOT,
        "all %d files to hand over: median %.2f s; beside report.pdf %.1f%n",
        most,
        median(all),
        median(all) / median(report));
    System.out.printf(
        Locale.ROOT,
        "all of it within a heap of %.0f MiB%n",
        Runtime.getRuntime().maxMemory() / MEBIBYTE);
  }

  /** Two on a page, as the report has them. */
  private static byte[] alone(List<byte[]> pictures) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pictures.size(); i += 2) {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          for (int k = i; k < Math.min(i + 2, pictures.size()); k++) {
            PDImageXObject picture = JPEGFactory.createFromByteArray(document, pictures.get(k));
            content.drawImage(picture, 36, 36 + 360 * (k - i), 460, 345);
          }
        }
      }
      document.save(out);
    }
    return out.toByteArray();
  }

  private static double since(long begun) {
    return (System.nanoTime() - begun) / 1e9;
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
