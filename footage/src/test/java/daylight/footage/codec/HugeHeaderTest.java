package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.FootageTrouble;
import daylight.footage.Make;
import daylight.footage.Remark;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Headers that announce ten thousand hours before a recording of two seconds. */
class HugeHeaderTest {
  private static final int FRAMES = 50;
  private static final int SECONDS = 36_000_000;

  @TempDir Path folder = Path.of("");

  @Test
  void anMp4HasTheFramesThatAreThere() throws IOException {
    Path film = TestFilm.of(Make.H264_MP4).frames(FRAMES).write(folder.resolve("film.mp4"));
    byte[] bytes = Files.readAllBytes(film);
    ByteBuffer header = ByteBuffer.wrap(bytes);
    // ISO/IEC 14496-12, 8.4.2: a scale of a hundred a second, so that it fits its four bytes.
    header.putInt(place(bytes, "mdhd") + 16, 100);
    header.putInt(place(bytes, "mdhd") + 20, (int) (100L * SECONDS));
    // Its edit list would go by the old scale.
    header.put(place(bytes, "edts"), "free".getBytes(StandardCharsets.US_ASCII));

    // The table of its samples says what there is, so nothing is missing.
    hasItsFrames(Files.write(folder.resolve("huge.mp4"), bytes), 0);
  }

  @Test
  void anAviHasTheFramesThatAreThere() throws IOException {
    Path film = TestFilm.of(Make.MPEG4_AVI).frames(FRAMES).write(folder.resolve("film.avi"));
    byte[] bytes = Files.readAllBytes(film);
    ByteBuffer header = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    // Frames in all after the name and the length of the chunk (avih), and of the stream (strh).
    header.putInt(place(bytes, "avih") + 8 + 16, 25 * SECONDS);
    header.putInt(place(bytes, "strh") + 8 + 32, 25 * SECONDS);

    hasItsFrames(Files.write(folder.resolve("huge.avi"), bytes), 1);
  }

  private static int place(byte[] bytes, String name) {
    return new String(bytes, StandardCharsets.ISO_8859_1).indexOf(name);
  }

  private static void hasItsFrames(Path film, int missing) throws IOException {
    try (Footage footage = Films.opened(film)) {
      assertThat(footage.times().count()).isEqualTo(FRAMES);
      assertThat(footage.frame(FRAMES - 1)).isPresent();
      assertThat(footage.notes())
          .filteredOn(note -> note.trouble() == FootageTrouble.TRUNCATED_TAIL)
          .hasSize(missing)
          .allSatisfy(note -> assertThat(announced(note)).isGreaterThan(0.99 * SECONDS));
    }
  }

  private static double announced(Remark note) {
    return ((Argument.Quantity) note.arguments().getLast()).value();
  }
}
