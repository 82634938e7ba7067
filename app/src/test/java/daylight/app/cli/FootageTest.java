package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.app.OneDrain;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books with recordings, good ones and bad ones, through the command line. */
class FootageTest {
  private static final int FRAMES = 50;

  @TempDir private Path folder = Path.of("");

  private Path film = Path.of("");

  @BeforeEach
  void filmsFiveSecondsThatGrowLighter() throws IOException {
    film = folder.resolve("push.mp4");
    Raster raster = new Raster(160, 120);
    try (Film writing = Film.begin(film, Make.H264_MP4, 160, 120, Rate.of(10))) {
      for (int i = 0; i < FRAMES; i++) {
        Arrays.fill(raster.pixels(), 0x010101 * (40 + 4 * i));
        writing.add(raster);
      }
      writing.finish();
    }
  }

  /** A crack at 5 ft, which the counter showed two and a half seconds into the recording. */
  private Path book(String file) throws IOException {
    return OneDrain.empty()
        .to("10")
        .found("{label: F1, kind: crack, cable: 5, clock: 12}")
        .typed("{media: M1, at: 0 s, counter: 0}", "{media: M1, at: 5 s, counter: 10}")
        .filmed(file)
        .write(folder.resolve("book.yaml"));
  }

  private JsonNode answered(String file) throws IOException {
    Said said = Said.by("answer", book(file), "-o", folder.resolve("out"), "--json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    return said.json();
  }

  private String complaint(String file) throws IOException {
    JsonNode complaints = answered(file).path("complaints");
    assertThat(complaints.toString()).contains("footage.");
    JsonNode last = complaints.get(complaints.size() - 1);
    // Where the recording is named in the book.
    assertThat(last.path("line").asInt())
        .isEqualTo(OneDrain.line(folder.resolve("book.yaml"), "kind: footage"));
    assertThat(last.path("column").asInt()).isGreaterThan(1);
    return last.path("code").asText();
  }

  @Test
  void whatWasFoundIsPictured() throws IOException {
    JsonNode reply = answered("push.mp4");

    assertThat(reply.path("complaints").toString()).doesNotContain("footage.");
    assertThat(reply.path("files").toString()).contains("stills/005.0ft-F1-crack.jpg");
    assertThat(folder.resolve("out/stills/005.0ft-F1-crack.jpg")).isNotEmptyFile();
    assertThat(Files.readString(folder.resolve("out/report.html")))
        .contains("Recording M1 at 0:02");
  }

  @Test
  void aBookIsAnsweredWithoutARecordingThatIsNoGood() throws IOException {
    byte[] whole = Files.readAllBytes(film);
    Files.write(folder.resolve("empty.mp4"), new byte[0]);
    Files.write(folder.resolve("cut.mp4"), Arrays.copyOf(whole, whole.length / 4));
    Files.writeString(folder.resolve("notes.mp4"), "pushed to the ditch, roots at ten feet\n");
    Files.write(folder.resolve("voice.mp4"), sound());
    Files.createDirectory(folder.resolve("folder.mp4"));

    assertThat(complaint("empty.mp4")).isEqualTo("footage.empty-file");
    assertThat(complaint("cut.mp4")).isEqualTo("footage.truncated");
    assertThat(complaint("notes.mp4")).isEqualTo("footage.not-video");
    assertThat(complaint("voice.mp4")).isEqualTo("footage.no-pictures");
    assertThat(folder.resolve("out/stills")).doesNotExist();
  }

  @Test
  void aWrongEndingIsSaidAndTheRecordingUsedAllTheSame() throws IOException {
    Files.copy(film, folder.resolve("push.avi"));

    JsonNode reply = answered("push.avi");

    assertThat(reply.path("complaints").toString()).contains("footage.wrong-extension");
    assertThat(reply.path("files").toString()).contains("stills/005.0ft-F1-crack.jpg");
  }

  @Test
  void aMomentAfterTheEndOfTheRecordingIsSaid() throws IOException {
    Path book = book("push.mp4");
    Files.writeString(book, Files.readString(book).replace("at: 5 s", "at: 50 s"));

    Said said = Said.by("answer", book, "-o", folder.resolve("out"), "--json");

    assertThat(said.json().path("complaints").toString()).contains("app.moment_beyond_footage");
  }

  @Test
  void leavingDoesNotWaitForTheFootage() throws IOException {
    Said said = Said.by("leaving", book("push.mp4"));

    assertThat(said.err()).isEmpty();
  }

  @Test
  void aStillIsTheFrameOnDisplay() {
    Path stills = folder.resolve("stills");

    Said said =
        Said.by(
            "still", film, "--at", "0:02.55", "--at", "1", "--frame", 49, "-o", stills, "--json");

    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    JsonNode taken = said.json().path("stills");
    assertThat(taken.findValues("frame").toString()).isEqualTo("[10, 25, 49]");
    assertThat(said.json().path("frames").asInt()).isEqualTo(FRAMES);
    assertThat(said.json().path("codec").asText()).isEqualTo("H.264");
    assertThat(Set.copyOf(Books.below(stills).keySet()))
        .containsExactlyInAnyOrder(
            "frame-000010.jpg", "frame-000025.jpg", "frame-000049.jpg", "results.list");
  }

  @Test
  void aStillThatCannotBeIsRefused() throws IOException {
    Path notes = Files.writeString(folder.resolve("notes.avi"), "only words");

    assertThat(Said.by("still", film, "--at", "0:09").code()).isEqualTo(ExitCode.USAGE);
    assertThat(Said.by("still", film, "--at", "noon").code()).isEqualTo(ExitCode.USAGE);
    assertThat(Said.by("still", film, "--frame", 50).err()).contains("0 to 49");
    assertThat(Said.by("still", notes).code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(Said.by("still", notes).err()).contains("not a video");
    assertThat(Said.by("still", folder.resolve("none.mp4")).err()).contains("no such recording");
  }

  /** A second of silence as a RIFF WAVE file (IBM and Microsoft, 1991). */
  private static byte[] sound() {
    int rate = 8000;
    ByteBuffer file = ByteBuffer.allocate(44 + rate).order(ByteOrder.LITTLE_ENDIAN);
    file.put(ascii("RIFF")).putInt(36 + rate).put(ascii("WAVEfmt ")).putInt(16);
    file.putShort((short) 1).putShort((short) 1).putInt(rate).putInt(rate);
    file.putShort((short) 1).putShort((short) 8).put(ascii("data")).putInt(rate);
    return file.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
