package daylight.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Codes by which phones join, and how many may be tried. */
class CodesTest {
  private static final String PHONE = "10.77.0.2";
  private final Ticking clock = new Ticking(Instant.parse("2026-11-27T15:00:00Z"));
  private final Codes codes = new Codes(clock);

  @Test
  void aCodeIsEightLettersThatAreNotMixedUpAndNeverTheSame() {
    Set<String> all = new HashSet<>();
    for (int i = 0; i < 2000; i++) {
      String code = codes.fresh().text();
      assertThat(code).matches("[BCDFGHJKMNPQRSTVWXYZ]{8}");
      all.add(code);
    }
    assertThat(all).hasSize(2000);
  }

  @Test
  void aCodeIsGoodOnceHoweverItIsTyped() {
    Codes.Code code = codes.fresh();
    String typed = " " + code.spaced().toLowerCase(Locale.ROOT).replace(" ", " - ");

    assertThat(codes.use(typed, PHONE)).isEqualTo(new Tried.Good());
    assertThat(codes.use(code.text(), PHONE)).isEqualTo(new Tried.Refused(Tried.Why.USED));
    assertThat(codes.good()).isEmpty();
  }

  @Test
  void aCodeThatCameTooLateSaysSo() {
    Codes.Code code = codes.fresh();
    clock.passes(Codes.GOOD.minusSeconds(1));
    assertThat(codes.good()).contains(code);
    clock.passes(Duration.ofSeconds(1));

    assertThat(codes.good()).isEmpty();
    assertThat(codes.use(code.text(), PHONE)).isEqualTo(new Tried.Refused(Tried.Why.LATE));
    clock.passes(Duration.ofHours(2));
    codes.fresh();
    assertThat(codes.use(code.text(), PHONE)).isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
  }

  @Test
  void whoGuessesWaits() {
    Codes.Code code = codes.fresh();
    for (int i = 0; i < Codes.WRONG_FROM_ONE; i++) {
      clock.passes(Duration.ofSeconds(2));
      assertThat(codes.use("BBBBBBB" + i, PHONE)).isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
    }

    // The first of the five was eight seconds ago; even the right code waits.
    assertThat(codes.use(code.text(), PHONE))
        .isEqualTo(new Tried.TooMany(Duration.ofSeconds(60 - 8)));
    assertThat(codes.use(code.text(), "10.77.0.3")).as("others do not").isEqualTo(new Tried.Good());
    clock.passes(Duration.ofSeconds(52));
    assertThat(codes.use("x", PHONE)).isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
    assertThat(codes.use("x", PHONE)).isInstanceOf(Tried.TooMany.class);
  }

  @Test
  void manyWhoGuessTogetherWaitTogether() {
    Codes.Code code = codes.fresh();
    for (int i = 0; i < Codes.WRONG_IN_ALL; i++) {
      codes.use("x", "10.77.0." + (10 + i));
    }

    assertThat(codes.use(code.text(), PHONE)).isInstanceOf(Tried.TooMany.class);
    clock.passes(Duration.ofMinutes(1));
    assertThat(codes.use(code.text(), PHONE)).isEqualTo(new Tried.Good());
  }

  @Test
  void aShutDoorEndsAllCodesAndOneUsedInVainIsGoodAgain() {
    Codes.Code code = codes.fresh();
    codes.use(code.text(), PHONE);
    codes.giveBack(code.text());
    assertThat(codes.use(code.text(), PHONE)).isEqualTo(new Tried.Good());
    Codes.Code other = codes.fresh();
    codes.end();

    assertThat(codes.use(other.text(), PHONE)).isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
  }

  @Test
  void whatIsNoCodeIsOnlyUnknown() {
    codes.fresh();
    assertThat(codes.use("", PHONE)).isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
    assertThat(codes.use("é".repeat(100_000), PHONE))
        .isEqualTo(new Tried.Refused(Tried.Why.UNKNOWN));
  }
}
