package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a process holds of memory, by what the system tells; nothing is told but on Linux. */
class BoundsTest {
  private static final int SPARE = 12_000_000;

  @TempDir Path folder = Path.of("");

  /**
   * A frame of 640 × 480 is 460 kB as decoded and 1.2 MB as shown; fifty rounds that lost one of
   * either would hold 23 MB more.
   */
  @Test
  void openingLookingAndWritingAgainAndAgainHoldsNoMore() throws IOException {
    Path film =
        TestFilm.of(Make.MPEG4_B_AVI).frames(6).size(640, 480).write(folder.resolve("film.avi"));

    assertThat(Rounds.growth(film, 20, film, 50)).isLessThan(SPARE);
  }

  /** Frames of 29 kB: 2700 more of them would be 78 MB. */
  @ParameterizedTest
  @EnumSource(names = {"H264_MP4", "MPEG2_TS"})
  void aFilmTenTimesAsLongNeedsNoMore(Make make) throws IOException {
    Path brief = TestFilm.of(make).frames(300).write(folder.resolve("brief." + make.extension()));
    Path tenfold =
        TestFilm.of(make).frames(3000).write(folder.resolve("tenfold." + make.extension()));

    assertThat(Rounds.growth(brief, 5, tenfold, 1)).isLessThan(SPARE);
  }
}
