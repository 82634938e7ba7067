package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import daylight.app.OneDrain;
import daylight.footage.Raster;
import daylight.footage.photo.Photo;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Photographs of a book. The invented one lies on its side, and says in its file when it was taken,
 * with what, and a place.
 */
class PhotosTest {
  @TempDir private Path folder = Path.of("");

  private Path book() throws IOException {
    return book("");
  }

  private Path book(String more) throws IOException {
    try (InputStream photo = Job.class.getResourceAsStream("turned.jpg")) {
      Files.write(folder.resolve("wall.jpg"), Objects.requireNonNull(photo).readAllBytes());
    }
    assertThat(latin(folder.resolve("wall.jpg"))).contains("Exif", "Invented Camera", "2026:04:18");
    return OneDrain.empty()
        .to("10")
        .found("{label: F1, kind: crack, cable: 5, clock: 12, stills: [B1, B2]" + more + "}")
        .with(
            "{label: B1, kind: photo, file: wall.jpg}", "{label: B2, kind: photo, file: notes.jpg}")
        .write(folder.resolve("book.yaml"));
  }

  private static String latin(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.ISO_8859_1);
  }

  @Test
  void aPhotographStandsUprightAmongThePicturesAndTellsNothingOfItsPlace() throws IOException {
    Files.writeString(folder.resolve("notes.jpg"), "only words");
    Path out = folder.resolve("out");

    Said said = Said.by("answer", book(), "-o", out, "--json");

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    assertThat(said.json().path("complaints").toString()).contains("footage.not-a-photo");
    Path made = out.resolve("stills/005.0ft-F1-crack-B1.jpg");
    Photo photo = Photo.read(made).orElseThrow();
    Raster upright = photo.picture();
    assertThat(upright.width()).isEqualTo(32);
    assertThat(upright.height()).isEqualTo(64);
    // A quarter turn to the right brings the bright corner from the upper left to the upper right.
    assertThat(upright.pixels()[4 * 32 + 27] & 0xFF).isGreaterThan(200);
    assertThat(photo.taken()).isNull();
    String page = Files.readString(out.resolve("report.html"));
    assertThat(page)
        .contains("Photograph B1, taken April 18, 2026 at 10:02", "time zone not known")
        .contains(Base64.getEncoder().encodeToString(Files.readAllBytes(made)));
    for (String name : Books.below(out).keySet()) {
      assertThat(latin(out.resolve(name))).as(name).doesNotContain("Exif", "Invented Camera");
    }
  }

  /**
   * As it is shown the picture is 32 wide and 64 high, and nobody knows how its camera was held.
   */
  @Test
  void aRingLiesOnThePhotographAsItIsShown() throws IOException {
    Files.writeString(folder.resolve("notes.jpg"), "only words");
    Path out = folder.resolve("out");
    String inside = "{on: B1, across: 27, down: 60, wide: 8, high: 6}";
    String outside = "{on: B1, across: 40, down: 10, wide: 8, high: 6}";
    Path book = book(", outlines: [" + inside + ", " + outside + "]");

    Said said = Said.by("answer", book, "-o", out);

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    String page = Files.readString(out.resolve("report.html"));
    assertThat(page)
        .contains("along the pipe. A ring is drawn round it.")
        .contains("A ring that the field book gives lies outside this picture and is not drawn.")
        .contains("The ring was drawn round it by who keeps the field book.")
        .contains("d=\"M27 57L")
        .doesNotContain("An arc marks it");
  }

  /** The report holds a copy of half the width. */
  @Test
  void aRingIsGivenInPixelsOfThePhotographItself() throws IOException {
    Files.writeString(folder.resolve("notes.jpg"), "only words");
    Path book = book(", outlines: [{on: B1, across: 2000, down: 1000, wide: 200, high: 100}]");
    BufferedImage large = new BufferedImage(2560, 1280, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(large, "jpg", folder.resolve("wall.jpg").toFile());
    Path out = folder.resolve("out");

    Said said = Said.by("answer", book, "-o", out);

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("viewBox=\"0 0 1280 640\"", "d=\"M1000 475L")
        .doesNotContain("lies outside this picture");
  }
}
