package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import daylight.app.CountedFilm;
import daylight.app.OneDrain;
import daylight.app.OwnCache;
import daylight.footage.Make;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A book sealed, looked at again, and answered again from what is in it. */
class SealTest {
  private static final Path CORPUS = Path.of("..", "corpus");

  @RegisterExtension static final OwnCache CACHE = new OwnCache();

  @TempDir private Path folder = Path.of("");

  private record Said(int code, String out, String err) {}

  private static Said run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    return new Said(code, out.toString(), err.toString());
  }

  private String sealed() {
    return folder.resolve("sealed.zip").toString();
  }

  private static String book() {
    return CORPUS.resolve("S71-copes-with-the-rain.yaml").toString();
  }

  private static String sealOf(Said said) {
    return said.out().replaceAll("(?s).*Its seal: ([0-9a-f]{64}).*", "$1");
  }

  @Test
  void aSealedBookIsUnchangedAndGivesTheSameResultsAgain() {
    Said said = run("seal", book(), "-o", sealed(), "--units", "metres", "--plan", "along");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isZero();
    Said again = run("verify", sealed(), "--seal", sealOf(said), "--again");

    assertThat(again.out())
        .contains("unchanged since it was sealed. Its seal: " + sealOf(said))
        .contains("every result is the same, byte for byte")
        .contains("not who sealed it, not when")
        .doesNotContain("another version");
    assertThat(again.code()).isZero();
  }

  @Test
  void tablesOfOnesOwnAndASiteOfTheArchiveGoAlong() throws IOException {
    String home = folder.resolve("home").toString();
    Path limits = folder.resolve("limits.yaml");
    Files.writeString(
        limits,
        "daylight-limits: 1\nlimits:\n  - {what: seen-share, share: 50 %, source: common-practice,"
            + " mark: common-practice}\n");
    run("keep", book(), "--archive", home);
    Said said =
        run("seal", "rain", "--archive", home, "-o", sealed(), "--limits", limits.toString());
    Files.delete(limits);

    assertThat(said.err()).isEmpty();
    assertThat(run("verify", sealed(), "--again").out())
        .contains("every result is the same, byte for byte");
    try (var left = Files.list(folder)) {
      assertThat(left.map(one -> one.getFileName().toString()))
          .containsExactlyInAnyOrder("home", "sealed.zip");
    }
  }

  /** The counter was read from the recording: what came of that lies along, and comes out again. */
  @Test
  void theTrackOfARecordingGoesAlong() throws IOException {
    CountedFilm.write(folder.resolve("in.mpg"), Make.MPEG2_MPG);
    String filmed = OneDrain.empty().filmed("in.mpg").write(folder.resolve("book.yaml")).toString();
    Said said = run("seal", filmed, "-o", sealed());

    assertThat(said.code()).as(said.err()).isZero();
    try (ZipFile zip = new ZipFile(sealed())) {
      ZipEntry entry = Objects.requireNonNull(zip.getEntry("tracks/M1-P1.csv"));
      List<String> rows =
          new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .toList();
      assertThat(rows.getFirst()).isEqualTo("seconds,counter_m,state");
      // The film rests at 6 ft, about its ninth second.
      assertThat(rows)
          .filteredOn(row -> row.startsWith("9.") || row.startsWith("9,"))
          .isNotEmpty()
          .allSatisfy(
              row ->
                  assertThat(Double.parseDouble(row.split(",", -1)[1]))
                      .isCloseTo(6 * 0.3048, within(1e-9)));
    }
    assertThat(run("verify", sealed(), "--again").out())
        .contains("every result is the same, byte for byte");
  }

  @Test
  void aLetterheadAndItsLogoGoAlong() throws IOException {
    Path letterhead = folder.resolve("letterhead.yaml");
    Files.writeString(letterhead, "daylight-letterhead: 1\nname: F (invented)\nlogo: a.png\n");
    Path logo = folder.resolve("a.png");
    BufferedImage dots = new BufferedImage(31, 17, BufferedImage.TYPE_INT_ARGB);
    ImageIO.write(dots, "png", logo.toFile());
    Said said = run("seal", book(), "-o", sealed(), "--letterhead", letterhead.toString());
    Files.delete(letterhead);
    Files.delete(logo);

    assertThat(said.err()).isEmpty();
    assertThat(run("verify", sealed(), "--again").out())
        .contains("every result is the same, byte for byte");
  }

  @Test
  void whatWasChangedIsNamedAlsoForOtherPrograms() throws IOException {
    run("seal", book(), "-o", sealed());
    byte[] bytes = Files.readAllBytes(Path.of(sealed()));
    String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
    int at = text.indexOf("daylight-book: 1");
    bytes[at + 15] = '2';
    Files.write(Path.of(sealed()), bytes);

    Said said = run("verify", sealed(), "--again");
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.out())
        .contains("not as it was sealed", "Changed: book/S71-copes-with-the-rain.yaml")
        .doesNotContain("byte for byte");
    JsonNode json = new JsonMapper().readTree(run("verify", sealed(), "--json").out());
    assertThat(json.path("outcome").asText()).isEqualTo("changed");
    assertThat(json.path("differences").path(0).path("code").asText()).isEqualTo("seal.changed");
    assertThat(run("--language", "fr", "verify", sealed()).out()).contains("Changé\u00a0: book");
  }

  @Test
  void whatCannotBeSealedIsSaidAndNothingIsWritten() throws IOException {
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(wrong, "daylight-book: 1\nvisit: {locates: [{cable: far}]}\n");
    assertThat(run("seal", wrong.toString(), "-o", sealed()).code()).isEqualTo(2);
    assertThat(Path.of(sealed())).doesNotExist();
    assertThat(run("seal", folder.resolve("none.yaml").toString(), "-o", sealed()).code())
        .isEqualTo(2);

    run("seal", book(), "-o", sealed());
    Said twice = run("seal", book(), "-o", sealed());
    assertThat(twice.code()).isEqualTo(3);
    assertThat(twice.err()).contains("it is there already");
    assertThat(run("verify", sealed(), "--seal", "abc").code()).isEqualTo(64);
    assertThat(run("verify", wrong.toString()).code()).isEqualTo(1);
  }
}
