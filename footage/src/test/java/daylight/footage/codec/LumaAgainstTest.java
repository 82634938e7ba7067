package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Watch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What stands out by its colour, against the planes that FFmpeg's own program writes of the same
 * frame.
 */
class LumaAgainstTest {
  private static final int WIDE = 64;
  private static final int HIGH = 48;
  private static final Tint AGAINST = new Tint(100, 150);

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @CsvSource({"yuv420p, 2, 2", "yuv422p, 2, 1", "yuv444p, 1, 1"})
  void pixelsOfColourAreAddedWhereTheyStand(String format, int across, int down) throws Exception {
    Path film = film(format);
    byte[] planes = planes(film, format);
    int wide = WIDE / across;
    int size = WIDE * HIGH;
    int part = wide * (HIGH / down);

    byte[] seen = new byte[size];
    List<Tint> tints = new ArrayList<>();
    look(film, seen, tints);

    for (int y = 0; y < HIGH; y += down) {
      for (int x = 0; x < WIDE; x += across) {
        int at = y / down * wide + x / across;
        int blue = Math.abs((planes[size + at] & 255) - AGAINST.blue());
        int red = Math.abs((planes[size + part + at] & 255) - AGAINST.red());
        int expected = Math.min(255, (planes[y * WIDE + x] & 255) / 2 + blue + red);
        assertThat(seen[y * WIDE + x] & 255).as("%d, %d", x, y).isEqualTo(expected);
      }
    }
    assertThat(tints)
        .containsExactly(new Tint(mean(planes, size, part), mean(planes, size + part, part)));
  }

  private static int mean(byte[] planes, int from, int count) {
    return (int)
        IntStream.range(from, from + count).map(i -> planes[i] & 255).average().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"gray"})
  void withoutColoursThereIsHalfTheBrightness(String format) throws Exception {
    Path film = film(format);
    byte[] planes = planes(film, format);

    byte[] seen = new byte[WIDE * HIGH];
    List<Tint> tints = new ArrayList<>();
    look(film, seen, tints);

    assertThat(tints).containsExactly(Tint.GREY);
    for (int i = 0; i < seen.length; i++) {
      assertThat(seen[i] & 255).isEqualTo((planes[i] & 255) / 2);
    }
  }

  private Path film(String format) throws Exception {
    Path film = folder.resolve(format + ".mkv");
    String source = "testsrc2=size=" + WIDE + "x" + HIGH + ":rate=5:duration=1";
    Program.ffmpeg(
        "-f", "lavfi", "-i", source, "-pix_fmt", format, "-c:v", "ffv1", film.toString());
    return film;
  }

  private static byte[] planes(Path film, String format) throws Exception {
    return Program.ffmpeg(
        "-i", film.toString(), "-frames:v", "1", "-pix_fmt", format, "-f", "rawvideo", "-");
  }

  private static void look(Path film, byte[] seen, List<Tint> tints) throws Exception {
    try (Footage footage = Films.opened(film)) {
      footage.glance(
          IntStream.of(0),
          1,
          Watch.NOBODY,
          luma -> {
            tints.add(luma.tint());
            luma.copyAgainst(AGAINST, 0, 0, WIDE, HIGH, seen);
          });
    }
  }
}
