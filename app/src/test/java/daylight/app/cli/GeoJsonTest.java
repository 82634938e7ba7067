package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The map file held to RFC 7946 by the npm packages check-geojson and, for the sense in which rings
 * run (3.1.6), geojson-rewind.
 */
class GeoJsonTest {
  private static final Npm CHECKER = new Npm("geojson", "check.mjs");
  private static final Path CORPUS = Path.of("..", "corpus");

  @TempDir private Path folder = Path.of("");

  private Path map(String book) {
    return map(CORPUS.resolve(book));
  }

  private Path map(Path book) {
    if (!(Job.answerWithoutFootage(book, Job.Settings.USUAL)
        instanceof Job.Outcome.Answered answered)) {
      throw new AssertionError(book + " was not answered");
    }
    try {
      return Files.write(
          folder.resolve(book.getFileName() + ".geojson"),
          Objects.requireNonNull(answered.files().get("line.geojson")));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** One tied to the earth, with its band as an area, and one that lies nowhere on it. */
  @Test
  void theMapIsGeoJsonByTheStandard() throws IOException {
    Path onEarth = map("S25-gnss.yaml");

    assertThat(Files.readString(onEarth)).contains("Polygon");
    assertThat(CHECKER.read(onEarth)).isEmpty();
    assertThat(CHECKER.read(map("S64-one-look.yaml"))).isEmpty();
  }

  @Test
  void aMapThatIsNotIsFound() throws IOException {
    Path map = map("S25-gnss.yaml");
    Files.writeString(map, Files.readString(map).replace("\"coordinates\"", "\"places\""));

    assertThat(CHECKER.read(map)).isNotEmpty();
  }
}
