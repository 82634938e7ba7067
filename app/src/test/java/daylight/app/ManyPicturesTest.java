package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drain of which very many photographs were taken. */
class ManyPicturesTest {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 960;

  @TempDir private Path folder = Path.of("");

  /** Every picture is on paper as it is handed over, and the report is little larger than they. */
  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {40, 400})
  void theReportHasEveryPictureAndIsLittleLarger(int pictures) throws IOException {
    String[] findings = new String[pictures];
    String[] media = new String[pictures];
    for (int i = 0; i < pictures; i++) {
      photograph(folder.resolve("p" + i + ".jpg"), i);
      findings[i] =
          "{label: F%d, kind: crack, cable: %.1f, clock: 12, stills: [B%d]}"
              .formatted(i, 1 + 100.0 * i / pictures, i);
      media[i] = "{label: B%d, kind: photo, file: p%d.jpg}".formatted(i, i);
    }
    Path book =
        OneDrain.empty().to("110").found(findings).with(media).write(folder.resolve("book.yaml"));

    if (!(Job.answer(book, Job.Settings.USUAL) instanceof Job.Outcome.Answered answered)) {
      throw new AssertionError("the book was not answered");
    }
    byte[] pdf = Objects.requireNonNull(answered.files().get("report.pdf"));
    long size =
        answered.handout().shots().photos().stream()
            .mapToLong(photo -> photo.picture().jpeg().length)
            .sum();

    assertThat(answered.handout().shots().photos()).hasSize(pictures);
    assertThat(answered.files().keySet())
        .filteredOn(name -> name.startsWith("stills/"))
        .hasSize(pictures);
    assertThat(pdf.length).isLessThan((int) (1.1 * size));
    try (PDDocument paper = Loader.loadPDF(pdf)) {
      Set<COSStream> onPaper = new HashSet<>();
      for (PDPage page : paper.getPages()) {
        collect(page.getResources(), onPaper);
      }
      assertThat(onPaper).hasSize(pictures);
    }
  }

  /** The photographs of a page and of the forms on it. */
  private static void collect(PDResources resources, Set<COSStream> found) throws IOException {
    for (COSName name : resources.getXObjectNames()) {
      switch (resources.getXObject(name)) {
        case PDFormXObject form -> collect(form.getResources(), found);
        case PDImageXObject image when image.getWidth() == WIDTH -> found.add(image.getCOSObject());
        default -> {}
      }
    }
  }

  /** As a camera's: a lit ring, and much noise. */
  private static void photograph(Path file, int seed) throws IOException {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(seed);
    Graphics2D pen = picture.createGraphics();
    pen.setPaint(new GradientPaint(0, 0, Color.DARK_GRAY, WIDTH, HEIGHT, Color.ORANGE));
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    pen.dispose();
    for (int i = 0; i < WIDTH * HEIGHT / 40; i++) {
      picture.setRGB(random.nextInt(WIDTH), random.nextInt(HEIGHT), random.nextInt(1 << 24));
    }
    ImageIO.write(picture, "jpg", file.toFile());
  }
}
