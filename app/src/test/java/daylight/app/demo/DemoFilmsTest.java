package daylight.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.footage.Frame;
import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.footage.scene.FrameTruth;
import daylight.footage.scene.Region;
import daylight.footage.scene.Scene;
import daylight.footage.scene.Script;
import daylight.line.book.FieldBook;
import daylight.line.book.Material;
import daylight.line.book.Pass;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Footage made for invented properties. */
class DemoFilmsTest {
  @TempDir private Path folder = Path.of("");

  private static String text(String name) throws IOException {
    try (InputStream in = DemoFilms.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static FieldBook book(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    ReadBook read = FieldBookReader.read("book.yaml", bytes, null, Bundled.catalogue());
    assertThat(read.sound()).as(read.complaints().toString()).isTrue();
    return Objects.requireNonNull(read.book());
  }

  private static FieldBook shortPush() throws IOException {
    return book(text("short-push.yaml"));
  }

  @Test
  void aFilmDecodesToAsManyFramesAsItsTruthHasAndEachShowsItsOwn() throws IOException {
    FieldBook book = shortPush();
    List<Path> made = DemoFilms.make(book, folder, Watch.NOBODY);
    assertThat(made)
        .containsExactly(folder.resolve("footage/in.webm"), folder.resolve("footage/back.avi"));
    for (DemoFilm film : DemoFilms.of(book)) {
      assertThat(film.truth().lines()).hasSize((int) film.frames() + 1);
      Opening opening = Footage.open(folder.resolve(film.file()), Watch.NOBODY);
      assertThat(opening).isInstanceOf(Opening.Opened.class);
      try (Footage footage = ((Opening.Opened) opening).footage()) {
        assertThat(footage.times().count()).isEqualTo((int) film.frames());
        for (int number : new int[] {0, 17, (int) film.frames() - 1}) {
          showsItsOwn(film, footage.frame(number).orElseThrow());
        }
      }
    }
  }

  private static void showsItsOwn(DemoFilm film, Frame frame) {
    Scene scene = new Scene(film.script(), film.camera().look());
    var painted = scene.raster();
    Region region = scene.paint(frame.number(), painted).region();
    double off = 0;
    for (int y = region.top(); y < region.top() + region.height(); y++) {
      for (int x = region.left(); x < region.left() + region.width(); x++) {
        int i = y * painted.width() + x;
        off += Math.abs((frame.raster().pixels()[i] >> 8 & 255) - (painted.pixels()[i] >> 8 & 255));
      }
    }
    assertThat(off / (region.width() * region.height())).isLessThan(12);
  }

  @Test
  void makesTheSameBytesAgainAndLeavesAloneWhatIsThere() throws IOException {
    FieldBook book = shortPush();
    Path there = folder.resolve("there");
    DemoFilms.make(book, folder, Watch.NOBODY);
    Files.createDirectories(there.resolve("footage"));
    Files.writeString(there.resolve("footage/back.avi"), "mine");
    assertThat(DemoFilms.make(book, there, Watch.NOBODY))
        .containsExactly(there.resolve("footage/in.webm"));
    assertThat(there.resolve("footage/in.webm"))
        .hasSameBinaryContentAs(folder.resolve("footage/in.webm"));
    assertThat(there.resolve("footage/back.avi")).hasContent("mine");
    assertThat(DemoFilms.make(book, there, Watch.NOBODY)).isEmpty();
  }

  @Test
  void leavesNothingBehindWhenStoppedAndTellsHowFarItIs() throws IOException {
    double[] shares = new double[1000];
    int[] told = new int[1];
    Watch impatient =
        new Watch() {
          @Override
          public void done(double share) {
            shares[told[0]++] = share;
          }

          @Override
          public boolean stopped() {
            return told[0] >= 20;
          }
        };
    assertThat(DemoFilms.make(shortPush(), folder, impatient)).isEmpty();
    try (Stream<Path> left = Files.walk(folder)) {
      assertThat(left.filter(Files::isRegularFile)).isEmpty();
    }
    double[] seen = Arrays.copyOf(shares, told[0]);
    assertThat(seen).hasSizeBetween(20, 22).isSorted();
    assertThat(seen[19]).isBetween(0.05, 0.5);
  }

  @Test
  void theScriptHasWhatTheBookHasAtItsPlaces() throws IOException {
    Script script = DemoFilms.of(shortPush()).getFirst().script();
    assertThat(script.pipes())
        .extracting(Script.Pipe::material)
        .containsExactly(Material.CAST_IRON, Material.CLAY, Material.PVC);
    assertThat(script.pipes()).extracting(Script.Pipe::radius).containsExactly(.05, .075, .075);
    assertThat(script.things()).hasSize(4);
    assertThat(script.things().get(1).at())
        .as("roots, in full view when noted")
        .isCloseTo(1.4 + 1.6 * 0.075, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(script.pipes().get(2).from())
        .as("less the jump of the counter")
        .isCloseTo(1.7 + 1.6 * 0.075, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(script.joints()).contains(script.things().get(1).at());
    assertThat(script.mouth().into()).isEqualTo(Script.Into.DAYLIGHT);
    assertThat(script.begun()).isEqualTo(9 * 3600 + 30 * 60);
  }

  @ParameterizedTest
  @ValueSource(strings = {"shop-roof-drain", "house-sewer", "wash-down-pit"})
  void footageOfTheDemoPropertiesShowsTheReadingOfEveryAnchor(String property) throws IOException {
    FieldBook book = book(text(property + ".yaml"));
    List<DemoFilm> films = DemoFilms.of(book);
    assertThat(films).isNotEmpty();
    for (DemoFilm film : films) {
      Scene scene = new Scene(film.script(), film.camera().look());
      for (Pass pass : book.visits().getLast().passes()) {
        for (Pass.Anchor anchor : pass.anchors()) {
          if (anchor.media().equals(film.media())) {
            shows(film, scene, anchor);
          }
        }
      }
    }
  }

  private static void shows(DemoFilm film, Scene scene, Pass.Anchor anchor) {
    double counter = anchor.counter().value();
    assertThat(film.script().motion().readingAt(anchor.seconds())).isEqualTo(counter);
    double rate = film.camera().look().rate().perSecond();
    FrameTruth truth = scene.truth(Math.round(anchor.seconds() * rate));
    assertThat(truth.reading()).isCloseTo(counter, org.assertj.core.data.Offset.offset(0.03));
    assertThat(truth.text()).isEqualTo(film.camera().look().format().text(truth.reading()));
  }

  @Test
  void refusesRealPropertiesUnknownEndingsAndFootageWithoutAnchors() throws IOException {
    String text = text("short-push.yaml");
    refuses(text.replace("invented: yes", "invented: no"), "for invented properties only");
    refuses(text.replace("in.webm", "in.mkv"), "no invented camera writes footage/in.mkv");
    refuses(text.replaceAll(".*media: M2, at.*\n", ""), "no pass has anchors in M2");
  }

  private void refuses(String text, String why) {
    FieldBook book = book(text);
    assertThatThrownBy(() -> DemoFilms.make(book, folder, Watch.NOBODY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }
}
