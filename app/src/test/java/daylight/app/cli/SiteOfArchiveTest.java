package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.app.CountedFilm;
import daylight.app.OneDrain;
import daylight.app.OwnCache;
import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What is done with one site of an archive: answering it, forgetting in it, kinds of one's own. */
class SiteOfArchiveTest {
  @RegisterExtension static final OwnCache CACHE = new OwnCache();

  @TempDir private Path folder = Path.of("");

  private Path home() {
    return folder.resolve("home");
  }

  private Path kept(OneDrain drain) throws IOException {
    Path book = drain.write(Files.createDirectories(folder.resolve("site")).resolve("book.yaml"));
    Commands.run("keep", book, "--archive", home());
    return book;
  }

  private static List<String> files(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void aSiteIsAnsweredWithTheRecordingsThatAreKeptOfIt() throws IOException {
    Path film = Files.createDirectories(folder.resolve("site")).resolve("in.mpg");
    CountedFilm.write(film, Make.MPEG2_MPG);
    kept(
        OneDrain.empty().found("{label: F1, kind: roots, cable: 6, share: 10 %}").filmed("in.mpg"));
    Path out = Files.createDirectories(folder.resolve("out")).resolve("book.yaml");
    Commands.run("export", "", "-o", out, "--with-media", "--archive", home());
    // Only the archive has it still.
    Files.delete(film);

    Commands.run("answer", "", "--archive", home(), "-o", folder.resolve("of-site"));
    assertThat(files(CACHE.folder())).hasSize(1);
    Commands.run("answer", out, "-o", folder.resolve("of-file"));

    assertThat(files(CACHE.folder())).hasSize(1);
    List<String> names = files(folder.resolve("of-file"));
    assertThat(names).anyMatch(name -> name.startsWith("stills"));
    assertThat(files(folder.resolve("of-site"))).isEqualTo(names);
    for (String name : names) {
      assertThat(folder.resolve("of-site").resolve(name))
          .as(name)
          .hasSameBinaryContentAs(folder.resolve("of-file").resolve(name));
    }
  }

  @Test
  void whatIsNotKeptIsSaidAndWhoseResultsGoNowhereIsAsked() throws IOException {
    kept(OneDrain.empty().filmed("gone.mpg"));

    Said answered = Said.by("answer", "", "--archive", home(), "-o", folder.resolve("answered"));
    assertThat(answered.code()).isZero();
    assertThat(answered.out() + answered.err()).contains("the file “gone.mpg” is not there");
    assertThat(Said.by("answer", "", "--archive", home()).err()).contains("-o is needed");
    assertThat(Said.by("answer", "x", "--archive", home(), "-o", folder.resolve("x")).err())
        .contains("holds “x”");
    Path nowhere = folder.resolve("nowhere");
    assertThat(Said.by("answer", "x", "--archive", nowhere, "-o", folder.resolve("x")).code())
        .isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(nowhere).doesNotExist();
  }

  @Test
  void whatAnEntrySaidIsForgottenWhenSomebodyMeansIt() throws IOException {
    String name = "Somebody Invented";
    OneDrain drain = OneDrain.empty();
    kept(drain.found("{label: F9, kind: roots, cable: 5, remark: " + name + "}"));
    kept(drain.found("{label: F9, kind: roots, cable: 5}"));

    Said asked = Said.by("forget", "", "F9", "--archive", home());
    assertThat(asked.code()).isZero();
    assertThat(asked.out()).contains("would be taken out for good: 1.", "say --yes", "stays");
    assertThat(holds(name)).isTrue();

    JsonNode done = Said.by("forget", "", "F9", "--yes", "--json", "--archive", home()).json();
    assertThat(done.get("outcome").asText()).isEqualTo("forgotten");
    assertThat(done.get("contents").asInt()).isEqualTo(1);
    assertThat(done.get("holdsNow").asBoolean()).isTrue();
    assertThat(holds(name)).isFalse();
    String entry = done.get("entry").asText();
    assertThat(Said.by("forget", "", entry, "--yes", "--archive", home()).out())
        .contains("taken out for good: 0.");

    // What is withdrawn is found by what it was called.
    kept(drain);
    assertThat(Said.by("forget", "", "F9", "--yes", "--archive", home()).out())
        .contains("taken out for good: 2.", "says nothing now");
    assertThat(Said.by("forget", "", "F9", "--archive", home()).err()).contains("is or was called");
  }

  private boolean holds(String text) throws IOException {
    for (String file : files(home())) {
      byte[] bytes = Files.readAllBytes(home().resolve(file));
      if (new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).contains(text)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void kindsOfOnesOwnGoInAndComeOut() throws IOException {
    Path own =
        Files.writeString(
            folder.resolve("own.yaml"),
            """
            daylight-catalogue: 1
            kinds:
              - {id: invented-collar, bears: structure, quantities: {gap: length}}
            """);
    Path book =
        OneDrain.empty()
            .found("{label: F1, kind: invented-collar, cable: 5, gap: 3 mm}")
            .write(Files.createDirectories(folder.resolve("site")).resolve("book.yaml"));

    Said kept = Said.by("keep", book, "--catalogue", own, "--archive", home());
    assertThat(kept.err()).isEmpty();
    Path out = folder.resolve("out.yaml");
    Commands.run("export", "", "--catalogue", own, "-o", out, "--archive", home());
    assertThat(out).content().contains("kind: invented-collar", "gap: 3 mm");
    assertThat(Said.by("keep", out, "--catalogue", own, "--archive", home()).out())
        .contains("New entries: 0, changed: 0, withdrawn: 0");
    Path wrong = Files.writeString(folder.resolve("wrong.yaml"), "kinds: x");
    assertThat(Said.by("keep", book, "--catalogue", wrong, "--archive", home()).code())
        .isEqualTo(ExitCode.BOOK_REFUSED);
  }
}
