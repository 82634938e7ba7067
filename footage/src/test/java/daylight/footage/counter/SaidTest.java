package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SaidTest {
  @Test
  void figuresAreReadWithTheirUnits() {
    assertThat(Said.in("12.4 ft")).containsExactly(new Said(124, 1, "12.4", " ft"));
    assertThat(Said.in("052.8 FT")).containsExactly(new Said(528, 1, "052.8", " FT"));
    assertThat(Said.in("14.2m")).containsExactly(new Said(142, 1, "14.2", "m"));
    assertThat(Said.in("+0012.3")).containsExactly(new Said(123, 1, "+0012.3", ""));
    assertThat(Said.in("-0.4 m")).containsExactly(new Said(-4, 1, "-0.4", " m"));
  }

  @Test
  void feetAndInchesAreInches() {
    assertThat(Said.in("12' 07''")).containsExactly(new Said(151, Said.INCHES, "12' 07\"", ""));
    assertThat(Said.in("12' 12''")).isEmpty();
    // In letters of one width a mark seems to stand apart.
    assertThat(Said.in("14 ' 04''")).containsExactly(new Said(172, Said.INCHES, "14' 04\"", ""));
    assertThat(Said.in("14' 4 ''")).containsExactly(new Said(172, Said.INCHES, "14' 4\"", ""));
  }

  @Test
  void clocksAndDatesHoldNoFigures() {
    assertThat(Said.in("10:02:37")).isEmpty();
    assertThat(Said.in("2026-04-18")).isEmpty();
    assertThat(Said.in("04/18/26")).isEmpty();
  }

  @Test
  void zerosThatFillUpFixHowManyDigitsThereAre() {
    assertThat(Said.in("02.78 m").getFirst().fits(2)).isTrue();
    assertThat(Said.in("102.78 m").getFirst().fits(2)).isTrue();
    assertThat(Said.in("023.78 m").getFirst().fits(2)).isFalse();
    assertThat(Said.in("2.7 m").getFirst().fits(2)).isFalse();
  }
}
