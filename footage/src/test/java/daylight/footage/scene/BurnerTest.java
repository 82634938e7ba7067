package daylight.footage.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.footage.Raster;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Characters burned into a picture. */
class BurnerTest {
  private static final int GREY = 0x606060;
  private static final String ALL = "0123456789.:'\"+-/ABCDEFGHIJKLMNOPQRSTUVWXYZftmicn";

  private static Lettering lettering(Typeface face, int height, int border, double across) {
    Lettering.Place place = new Lettering.Place(across, 0.5);
    return new Lettering(face, height, 0xFFFFFF, 1, border, 0x000000, place);
  }

  private static Raster grey() {
    Raster raster = new Raster(640, 200);
    Arrays.fill(raster.pixels(), GREY);
    return raster;
  }

  @ParameterizedTest
  @EnumSource(Typeface.class)
  void theRegionIsTheSmallestThatHoldsAllThatWasInkedAndNothingElseIsTouched(Typeface face) {
    for (int border = 0; border <= 2; border++) {
      Raster raster = grey();
      Region region = new Burner(lettering(face, 28, border, 0.4)).burn("052.8 FT", raster);
      int left = raster.width();
      int right = 0;
      int top = raster.height();
      int bottom = 0;
      for (int y = 0; y < raster.height(); y++) {
        for (int x = 0; x < raster.width(); x++) {
          if (raster.pixels()[y * raster.width() + x] != GREY) {
            left = Math.min(left, x);
            right = Math.max(right, x);
            top = Math.min(top, y);
            bottom = Math.max(bottom, y);
          }
        }
      }
      assertThat(region).isEqualTo(new Region(left, top, right - left + 1, bottom - top + 1));
    }
  }

  @ParameterizedTest
  @EnumSource(Typeface.class)
  void noTwoCharactersLookAlikeInAnySizeButTheLetterAndTheFigureZero(Typeface face) {
    for (int height : new int[] {14, 22, 40}) {
      for (int i = 0; i < ALL.length(); i++) {
        assertThat(ink(face, ALL.charAt(i), height)).isGreaterThan(1);
        for (int j = 0; j < i; j++) {
          if (ALL.charAt(i) == 'O' && ALL.charAt(j) == '0') {
            continue;
          }
          assertThat(apart(face, ALL.charAt(i), ALL.charAt(j), height))
              .as("%s %d px: %s and %s", face, height, ALL.charAt(i), ALL.charAt(j))
              .isGreaterThan(0.02 * height);
        }
      }
    }
  }

  private static double ink(Typeface face, char character, int height) {
    return apart(face, character, ' ', height);
  }

  private static double apart(Typeface face, char one, char other, int height) {
    Stamp a = face.stamp(one, height);
    Stamp b = face.stamp(other, height);
    double sum = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < Math.max(a.width, b.width); x++) {
        sum += Math.abs(a.at(x, y) - b.at(x, y));
      }
    }
    return sum;
  }

  @Test
  void aSlashSetsTheZeroApartFromTheLetter() {
    assertThat(apart(Typeface.MATRIX_SLASHED, '0', 'O', 28)).isGreaterThan(40);
    assertThat(apart(Typeface.MATRIX, '0', '0', 28)).isZero();
  }

  @Test
  void aFigureKeepsItsPlaceWhileOthersChange() {
    Burner burner = new Burner(lettering(Typeface.SMOOTH, 28, 0, 0));
    Raster one = grey();
    Raster other = grey();
    burner.burn("1.8", one);
    burner.burn("7.8", other);
    Region last = new Burner(lettering(Typeface.SMOOTH, 28, 0, 0)).burn("  8", grey());
    for (int y = last.top(); y < last.top() + last.height(); y++) {
      for (int x = last.left(); x < last.left() + last.width(); x++) {
        assertThat(one.pixels()[y * 640 + x]).isEqualTo(other.pixels()[y * 640 + x]);
      }
    }
  }

  @Test
  void littleInkIsLowContrast() {
    Raster raster = grey();
    Lettering.Place place = new Lettering.Place(0, 0);
    new Burner(new Lettering(Typeface.BOLD, 40, 0xFFFFFF, 0.25, 0, 0, place)).burn("8", raster);
    int brightest = Arrays.stream(raster.pixels()).map(pixel -> pixel & 255).max().orElse(0);
    assertThat(brightest).isBetween(0x60 + 30, 0x60 + 45);
  }

  @Test
  void refusesWhatNobodyCouldRead() {
    assertThatThrownBy(() -> lettering(Typeface.BOLD, 6, 0, 0))
        .hasMessageContaining("height in pixels from 7 to 120, was 6");
    assertThatThrownBy(() -> lettering(Typeface.BOLD, 20, 0, 1.5))
        .hasMessageContaining("place from 0 to 1, was 1.5");
  }
}
