package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveCommandsTest {
  private static final Path CORPUS = Path.of("..", "corpus");

  @TempDir private Path folder = Path.of("");

  private record Said(int code, String out, String err) {}

  private Said run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    return new Said(code, out.toString(), err.toString());
  }

  private String home() {
    return folder.resolve("home").toString();
  }

  private static String corpus(String name) {
    return CORPUS.resolve(name).toString();
  }

  @Test
  void aBookGoesInIsFoundComesOutAndIsBroughtBack() throws IOException {
    String book = corpus("S71-copes-with-the-rain.yaml");
    Said kept = run("keep", book, "--archive", home(), "--by", "Someone", "--device", "laptop");
    Said again = run("keep", book, "--archive", home());
    run("keep", corpus("S12-belly.yaml"), "--archive", home());

    assertThat(kept.code()).isZero();
    assertThat(kept.out()).startsWith("Kept: Copes with the rain. New entries: ");
    assertThat(again.out()).contains("New entries: 0, changed: 0, withdrawn: 0");
    assertThat(run("sites", "--archive", home()).out().lines()).hasSize(2);
    assertThat(run("sites", "RAIN", "--archive", home()).out())
        .startsWith("Copes with the rain: visits: 1, the last on April 18, 2026 (");

    String out = folder.resolve("out.yaml").toString();
    assertThat(run("export", "rain", "-o", out, "--archive", home()).code()).isZero();
    assertThat(run("export", "rain", "-o", out, "--archive", home()).code()).isEqualTo(3);
    assertThat(run("answer", out, "-o", folder.resolve("answered").toString()).out())
        .contains("It copes with what may come in");

    String zip = folder.resolve("saved.zip").toString();
    String other = folder.resolve("other").toString();
    assertThat(run("backup", zip, "--archive", home()).code()).isZero();
    assertThat(run("restore", zip, "--archive", other).code()).isZero();
    assertThat(run("sites", "--archive", other).out())
        .isEqualTo(run("sites", "--archive", home()).out());
    assertThat(run("restore", zip, "--archive", other).err()).contains("it is not empty");
  }

  @Test
  void whatCannotBeDoneIsSaidAndNothingIsWritten() throws IOException {
    String book = corpus("S71-copes-with-the-rain.yaml");
    run("keep", book, "--archive", home());
    Path same = folder.resolve("same.yaml");
    Files.writeString(
        same,
        Files.readString(CORPUS.resolve("S12-belly.yaml"))
            .replaceFirst("name: .*", "name: Copes with the rain"));
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(wrong, "daylight-book: 1\nvisit: {locates: [{cable: far}]}\n");
    String nowhere = folder.resolve("nowhere").toString();

    Said another = run("keep", same.toString(), "--archive", home());
    assertThat(another.code()).isEqualTo(2);
    assertThat(another.err()).contains("It may be another site of that name");
    assertThat(run("keep", same.toString(), "--archive", home(), "--even-if-other").code())
        .isZero();
    assertThat(run("keep", wrong.toString(), "--archive", nowhere).code()).isEqualTo(2);
    assertThat(run("sites", "--archive", nowhere).err()).contains("there is no archive");
    assertThat(Path.of(nowhere)).doesNotExist();
    assertThat(run("export", "nobody", "-o", nowhere, "--archive", home()).err())
        .contains("No site’s name or address holds “nobody”");
    assertThat(run("sites", "--archive", folder.toString()).err())
        .contains("something else lies there");
  }

  @Test
  void anotherProgramGetsOneObject() throws IOException {
    JsonMapper mapper = new JsonMapper();
    String book = corpus("S71-copes-with-the-rain.yaml");
    JsonNode kept = mapper.readTree(run("keep", book, "--json", "--archive", home()).out());
    JsonNode sites = mapper.readTree(run("sites", "--json", "--archive", home()).out());

    assertThat(kept.get("schema").asText()).isEqualTo("daylight-reply");
    assertThat(kept.get("outcome").asText()).isEqualTo("kept");
    assertThat(kept.get("added").asInt()).isGreaterThan(10);
    assertThat(sites.get("sites").get(0).get("book")).isEqualTo(kept.get("book"));
    String nowhere = folder.resolve("nowhere").toString();
    JsonNode none = mapper.readTree(run("sites", "--json", "--archive", nowhere).out());
    assertThat(none.get("complaints").get(0).get("code").asText()).isEqualTo("archive.missing");
  }

  @Test
  void recordingsGoInWithTheBookAndComeOutBesideIt() throws IOException {
    Path site = Files.createDirectories(folder.resolve("site"));
    Path book = site.resolve("field-book.yaml");
    Files.writeString(
        book,
        """
        daylight-book: 1
        site: {name: Kept with its film, address: 7 Invented Lane}
        visit:
          date: 2026-04-18
          media:
            - {kind: footage, file: film/push.mp4}
            - {kind: photo, file: gone.jpg}
        """);
    Files.createDirectories(site.resolve("film"));
    Files.writeString(site.resolve("film/push.mp4"), "a recording");

    Said kept = run("keep", site.toString(), "--archive", home());
    JsonNode again =
        JsonMapper.builder()
            .build()
            .readTree(run("keep", site.toString(), "--archive", home(), "--json").out());

    assertThat(kept.err()).isEmpty();
    assertThat(kept.out()).contains("Kept: film/push.mp4", "Not there, so not copied: gone.jpg");
    assertThat(again.at("/media/0/outcome").asText()).isEqualTo("same");
    assertThat(again.at("/media/1/outcome").asText()).isEqualTo("missing");

    Path out = Files.createDirectories(folder.resolve("out")).resolve("book.yaml");
    Said written = run("export", "film", "-o", out.toString(), "--with-media", "--archive", home());
    assertThat(written.code()).isZero();
    assertThat(written.out()).contains("Written: film/push.mp4");
    assertThat(out.resolveSibling("film/push.mp4")).hasContent("a recording");

    // What a link leads to elsewhere is not of this book, and is not taken.
    Path elsewhere = Files.writeString(folder.resolve("private.jpg"), "of somebody else");
    Files.createSymbolicLink(site.resolve("gone.jpg"), elsewhere);
    assertThat(run("keep", site.toString(), "--archive", home()).code()).isEqualTo(2);
  }
}
