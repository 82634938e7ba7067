package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.CountedFilm;
import daylight.app.Ffprobe;
import daylight.app.OneDrain;
import daylight.app.OwnCache;
import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A recording is read once, whichever command needs its counter first. */
class ReadOnceTest {
  private static final String READING = "reading the counter";

  @TempDir private Path folder = Path.of("");

  @RegisterExtension final OwnCache cache = new OwnCache();

  private Path film = Path.of("");
  private Path book = Path.of("");

  @BeforeEach
  void films() throws IOException {
    film = CountedFilm.write(folder.resolve("push.mp4"), Make.H264_MP4);
    book =
        OneDrain.empty()
            .found("{label: F1, kind: crack, cable: 6, clock: 12}")
            .filmed("push.mp4")
            .write(folder.resolve("book.yaml"));
  }

  private Said still(String at) {
    return Said.by("still", film, "--at", at, "-o", folder.resolve("stills"));
  }

  /** What it said of the picture, with its file, moment and reading. */
  private static String told(Said said) {
    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    return said.out();
  }

  private List<Path> kept() throws IOException {
    try (Stream<Path> files = Files.list(cache.folder())) {
      return files.toList();
    }
  }

  @Test
  void whatOneCommandReadTheOthersTake() throws IOException {
    Said read = still("4 ft");
    assertThat(read.err()).contains(READING);
    assertThat(kept()).hasSize(1);

    Said again = still("4 ft");
    assertThat(again.err()).doesNotContain(READING);
    assertThat(told(again)).isEqualTo(told(read));
    Path sheet = folder.resolve("sheet.html");
    Path copy = folder.resolve("copy.webm");
    Path out = folder.resolve("out");
    for (Said said :
        List.of(
            Said.by("chapters", film),
            Said.by("sheet", film, "--to", sheet),
            Said.by("copy", film, "--to", copy),
            Said.by("answer", book, "-o", out))) {
      assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
      assertThat(said.err()).doesNotContain(READING);
    }
    assertThat(kept()).hasSize(1);
  }

  @Test
  void whatAnswerReadTheCommandsTake() throws IOException {
    assertThat(Said.by("answer", book, "-o", folder.resolve("out")).err()).contains(READING);

    assertThat(Said.by("chapters", film, "--book", book).err()).doesNotContain(READING);
    assertThat(told(still("4 ft"))).contains("the counter shows 4.0 ft");
  }

  @Test
  void whereTheCounterIsToldToStandItIsReadByItself() throws IOException {
    told(still("4 ft"));

    Said told = Said.by("chapters", film, "--region", "0,180,320,60");

    assertThat(told.code()).as(told.err()).isEqualTo(ExitCode.DONE);
    assertThat(told.err()).contains(READING);
    assertThat(kept()).hasSize(2);
  }

  @Test
  void counterReadsAnewEachTime() {
    told(still("4 ft"));

    assertThat(Said.by("counter", film).err()).contains(READING);
  }

  @Test
  void whatIsDamagedIsReadAnewAndMended() throws IOException {
    String right = told(still("4 ft"));
    Path file = kept().getFirst();
    String whole = Files.readString(file);
    for (String damaged :
        List.of(
            "",
            whole.substring(0, whole.length() / 2),
            // A frame that showed 4 ft is said to have shown 8 ft, and so on.
            whole.replace("4.0 ft", "8.0 ft"),
            whole.replaceAll("(?m)^(\\d+\\.\\d+),1\\.2\\d*", "$1,2.4"),
            whole.replace("\nleaps", "\nleaps,30"))) {
      assertThat(damaged).isNotEqualTo(whole);
      Files.writeString(file, damaged);

      Said said = still("4 ft");

      assertThat(said.err()).contains(READING);
      assertThat(told(said)).isEqualTo(right);
      assertThat(Files.readString(file)).isEqualTo(whole);
    }
  }

  @Test
  void anotherRecordingOfTheSameNameSizeAndTimeIsReadAnew() throws IOException {
    told(still("4 ft"));
    FileTime time = Files.getLastModifiedTime(film);
    long size = Files.size(film);
    Path cut = folder.resolve("cut.mp4");
    Ffprobe.ffmpeg("-i", film.toString(), "-t", "8", "-c", "copy", "-bitexact", cut.toString());
    byte[] shorter = Files.readAllBytes(cut);
    // What follows the boxes of an MP4 is padding to any reader (ISO/IEC 14496-12, "free").
    byte[] padded = java.util.Arrays.copyOf(shorter, (int) size);
    java.nio.ByteBuffer.wrap(padded)
        .putInt(shorter.length, (int) size - shorter.length)
        .position(shorter.length + 4)
        .put("free".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    Files.write(cut, padded);
    Files.setLastModifiedTime(cut, time);
    Files.move(cut, film, StandardCopyOption.REPLACE_EXISTING);
    assertThat(Files.size(film)).isEqualTo(size);

    Said said = still("8 ft");

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.err()).contains("never came to 8 ft");
  }

  @Test
  void whereNothingCanBeKeptItIsReadEachTime() throws IOException {
    Files.writeString(cache.folder(), "a file where the folder should be");

    assertThat(told(still("4 ft"))).isEqualTo(told(still("4 ft")));
    assertThat(still("4 ft").err()).contains(READING);
  }
}
