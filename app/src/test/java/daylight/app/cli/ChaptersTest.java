package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.app.CountedFilm;
import daylight.app.Ffprobe;
import daylight.app.OneDrain;
import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code chapters}; MP4 chapters are read back by ffprobe. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChaptersTest {
  private Path folder = Path.of("");
  private Path film = Path.of("");
  private Path book = Path.of("");

  @BeforeAll
  void films(@TempDir Path made) throws IOException {
    folder = made;
    film = CountedFilm.write(folder.resolve("push.mp4"), Make.H264_MP4);
    book =
        OneDrain.empty()
            .to("35")
            .found(
                "{label: F1, kind: crack, cable: 4, clock: 12}",
                "{label: F2, kind: roots, cable: 7, moving: pulling}",
                "{label: F3, kind: roots, cable: 30}")
            .filmed("push.mp4")
            .write(folder.resolve("field-book.yaml"));
  }

  @Test
  void withABookOneChapterForEachFindingThatIsShown() throws IOException {
    Path copy = folder.resolve("chaptered.mp4");

    Said said = Said.by("chapters", film, "--book", book, "--to", copy, "--json");

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    JsonNode chapters = said.json().path("chapters");
    assertThat(chapters.findValuesAsText("title"))
        .containsExactly("Entry at C1", "F1 Crack, 4' 0\", 12:00", "F2 Roots, 7' 0\"");
    assertThat(said.json().path("not-shown").toString()).isEqualTo("[\"F3\"]");
    // On the way out the first frames that show 4.0 ft, on the way back those that show 7.0 ft.
    int out = (int) Math.round(10 * chapters.path(1).path("from").asDouble());
    int back = (int) Math.round(10 * chapters.path(2).path("from").asDouble());
    assertThat(CountedFilm.shown(out)).isEqualTo("4.0 ft");
    assertThat(out).isLessThan(80);
    assertThat(Double.parseDouble(CountedFilm.shown(back).replace(" ft", ""))).isBetween(6.8, 7.2);
    assertThat(back).isGreaterThan(160);
    assertThat(Ffprobe.says(copy, "-show_chapters", "-show_entries", "chapter_tags=title"))
        .contains("TAG:title=F1 Crack, 4' 0\", 12:00", "TAG:title=F2 Roots, 7' 0\"");
    assertThat(streamHash(copy)).isEqualTo(streamHash(film)).contains("SHA256=");
  }

  private static String streamHash(Path file) throws IOException {
    return Ffprobe.ffmpeg("-i", file.toString(), "-c", "copy", "-f", "streamhash", "-");
  }

  @Test
  void withoutABookByDistance() {
    Said said = Said.by("chapters", film, "--every", "4 ft", "--json");

    assertThat(said.json().path("chapters").findValuesAsText("title"))
        .containsExactly(
            "0.0 ft, at rest",
            "4.0 ft",
            "6.0 ft, at rest",
            "8.0 ft",
            "9.0 ft, the furthest",
            "8.0 ft, coming back",
            "4.0 ft, coming back");
  }

  @Test
  void chaptersAndCaptionsAreWrittenAsWebVtt() throws IOException {
    Path chapters = folder.resolve("chapters.vtt");
    Path captions = folder.resolve("captions.vtt");

    Said said = Said.by("chapters", film, "--book", book, "--to", chapters, "--captions", captions);

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).contains("at no known moment of the recording: F3");
    assertThat(Files.readString(chapters))
        .contains("nobody, no company and no place in it is real");
    List<String> shown = Vtt.texts(captions);
    assertThat(shown).contains("4' 0\"", "9' 0\"", "F1 Crack, 4' 0\", 12:00");
    assertThat(Vtt.texts(chapters)).hasSize(3).first().isEqualTo("Entry at C1");
  }

  @Test
  void nothingIsWrittenOverUnasked() throws IOException {
    Path there = Files.writeString(folder.resolve("there.vtt"), "mine");

    assertThat(Said.by("chapters", film, "--to", there).err()).contains("is there already");
    assertThat(Said.by("chapters", film, "--to", film, "--over").err())
        .contains("is the recording itself");
    assertThat(Said.by("chapters", film, "--to", "x.txt").err()).contains(".vtt or .mp4");
    assertThat(Files.readString(there)).isEqualTo("mine");
    assertThat(Said.by("chapters", film, "--to", there, "--over").code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(there)).startsWith("WEBVTT");
  }

  @Test
  void whatMp4CannotHoldIsRefusedAndTheWayOutNamed() throws IOException {
    Path avi = CountedFilm.write(folder.resolve("old.avi"), Make.MPEG4_AVI);
    Path copy = folder.resolve("old.mp4");

    Said said = Said.by("chapters", avi, "--to", copy);

    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).contains("MP4 cannot take", "daylight proxy");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .noneMatch(name -> name.contains("old.mp4"));
    }
  }

  @Test
  void aBookThatDoesNotNameTheRecordingIsNotTakenForIt() throws IOException {
    Path other = Files.copy(film, folder.resolve("other.mp4"));

    Said said = Said.by("chapters", other, "--book", book);

    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("does not name the recording");
  }
}
