package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SaidTest {
  @Test
  void figuresAreReadWithTheirUnits() {
    assertSaid("12.4 ft", 124, 1, "12.4", " ft");
    assertSaid("052.8 FT", 528, 1, "052.8", " FT");
    assertSaid("14.2m", 142, 1, "14.2", "m");
    assertSaid("+0012.3", 123, 1, "+0012.3", "");
    assertSaid("-0.4 m", -4, 1, "-0.4", " m");
  }

  @Test
  void feetAndInchesAreInches() {
    assertSaid("12' 07''", 151, Said.INCHES, "12' 07\"", "");
    assertThat(Said.in("12' 12''")).isEmpty();
    // In letters of one width a mark seems to stand apart.
    assertSaid("14 ' 04''", 172, Said.INCHES, "14' 04\"", "");
    assertSaid("14' 4 ''", 172, Said.INCHES, "14' 4\"", "");
  }

  @Test
  void clocksAndDatesHoldNoFigures() {
    assertThat(Said.in("10:02:37")).isEmpty();
    assertThat(Said.in("10: 02: 37")).isEmpty();
    assertThat(Said.in("10 : 02 : 37")).isEmpty();
    assertThat(Said.in("2026-04-18")).isEmpty();
    assertThat(Said.in("04/18/26")).isEmpty();
  }

  @Test
  void zerosThatFillUpFixHowManyDigitsThereAre() {
    assertThat(Said.in("02.78 m").getFirst().fits(2, false)).isTrue();
    assertThat(Said.in("102.78 m").getFirst().fits(2, false)).isTrue();
    assertThat(Said.in("023.78 m").getFirst().fits(2, false)).isFalse();
    assertThat(Said.in("2.7 m").getFirst().fits(2, false)).isFalse();
  }

  private static void assertSaid(String line, long steps, int places, String shown, String unit) {
    assertThat(Said.in(line))
        .singleElement()
        .satisfies(
            said -> {
              assertThat(said.steps()).isEqualTo(steps);
              assertThat(said.places()).isEqualTo(places);
              assertThat(said.shown()).isEqualTo(shown);
              assertThat(said.unit()).isEqualTo(unit);
            });
  }
}
