package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the process holds of memory, by what the system tells; nothing is told but on Linux. */
class BoundsTest {
  private static final Path STATUS = Path.of("/proc/self/status");
  private static final int WARM = 25;
  private static final int TIMES = 100;

  @TempDir Path folder = Path.of("");

  /**
   * A frame of 640 × 480 is 460 kB as decoded and 1.2 MB as shown; a hundred rounds that lost one
   * of either would hold 46 MB more.
   */
  @Test
  void openingLookingAndWritingAgainAndAgainHoldsNoMore() throws IOException {
    Path film =
        TestFilm.of(Make.MPEG4_B_AVI).frames(6).size(640, 480).write(folder.resolve("film"));
    for (int i = 0; i < WARM; i++) {
      look(film);
    }
    long before = residentBytes();
    for (int i = 0; i < TIMES; i++) {
      look(film);
    }

    long more = residentBytes() - before;
    System.out.println("MORE " + more);
    assertThat(more).isLessThan(30_000_000);
  }

  @Tag("long")
  @ParameterizedTest
  @EnumSource(names = {"H264_MP4", "MPEG4_B_AVI", "MPEG2_TS", "VP8_WEBM"})
  void aFilmTenTimesAsLongNeedsNoMore(Make make) throws IOException {
    Path brief = TestFilm.of(make).frames(600).size(640, 480).write(folder.resolve("brief"));
    Path tenfold = TestFilm.of(make).frames(6000).size(640, 480).write(folder.resolve("tenfold"));
    look(brief);
    look(brief);
    long before = residentBytes();
    look(tenfold);

    assertThat(residentBytes() - before).isLessThan(30_000_000);
  }

  private void look(Path film) throws IOException {
    try (Footage footage = Films.opened(film)) {
      int last = footage.times().count() - 1;
      footage.sweep(List.of(0, last / 3, last / 2, last), Watch.NOBODY, frame -> {});
      Jpeg.of(footage.frame(1).orElseThrow().raster());
    }
    try (Film half = Film.begin(folder.resolve("half"), Make.MPEG4_AVI, 64, 48, Rate.of(25))) {
      half.add(new Raster(64, 48));
    }
  }

  private static long residentBytes() throws IOException {
    if (!Files.exists(STATUS)) {
      return 0;
    }
    // The heap's own ups and downs are taken away by emptying it first.
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return Files.readAllLines(STATUS).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) * 1024)
        .sum();
  }
}
