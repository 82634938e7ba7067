package daylight.line.flow;

import static daylight.line.flow.GravityTest.sure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Measured;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The pit, what comes in, and how the pump comes and goes; by hand. */
class CyclesTest {
  private static Propagated in(double flow) {
    return Propagated.measured(FlowInput.INFLOW, "", sure(flow));
  }

  /** 0.64 m² × 0.35 m = 224 L; 25 L/min in and 125 L/min out: 8.96 min rest, 2.24 min run. */
  @Test
  void runAndRest() {
    Pit pit = new Pit(sure(0.64), sure(0.35), 0);
    assertThat(Cycles.of(pit, in(0.025 / 60), in(0.125 / 60)))
        .isInstanceOfSatisfying(
            Cycle.Turns.class,
            turns -> {
              assertThat(turns.rest().value().value() / 60).isCloseTo(8.96, within(1e-9));
              assertThat(turns.run().value().value() / 60).isCloseTo(2.24, within(1e-9));
              assertThat(turns.starts().value()).isCloseTo(60 / 11.2, within(1e-9));
              assertThat(turns.load()).isCloseTo(0.2, within(1e-9));
            });
  }

  /** 24 L run back: it rests only until 200 L have come. */
  @Test
  void whatRunsBackShortensTheRest() {
    Pit pit = new Pit(sure(0.64), sure(0.35), 0.024);
    assertThat(Cycles.of(pit, in(0.025 / 60), in(0.125 / 60)))
        .isInstanceOfSatisfying(
            Cycle.Turns.class,
            turns -> assertThat(turns.rest().value().value() / 60).isCloseTo(8, within(1e-9)));
    assertThat(Cycles.of(new Pit(sure(0.1), sure(0.2), 0.03), in(0.0004), in(0.002)))
        .isEqualTo(new Cycle.PumpsItsOwnWater(0.03, 0.1 * 0.2));
  }

  @Test
  void itsLimitsAreResults() {
    Pit pit = new Pit(sure(0.64), sure(0.35), 0);
    assertThat(Cycles.of(pit, in(0), in(0.002))).isEqualTo(new Cycle.Rests());
    assertThat(Cycles.of(pit, in(0.003), in(0.002)))
        .isInstanceOfSatisfying(
            Cycle.CannotKeepUp.class,
            never -> assertThat(never.more()).isCloseTo(0.001, within(1e-12)));
    assertThatIllegalArgumentException().isThrownBy(() -> new Pit(sure(0.64), sure(-0.1), 0));
  }

  /** 0.20 m in 300 s over 0.64 m² are 0.427 L/s; relative doubts 5 %, 1 % and 10 % add up. */
  @Test
  void whatATimedRiseTells() {
    Propagated flow =
        Cycles.inflow(
            "Q1", new Measured(0.64, 0.032), new Measured(0.2, 0.002), new Measured(300, 30));
    assertThat(flow.value().value()).isCloseTo(0.64 * 0.2 / 300, within(1e-12));
    assertThat(flow.value().sd() / flow.value().value())
        .isCloseTo(Math.sqrt(0.05 * 0.05 + 0.01 * 0.01 + 0.1 * 0.1), within(5e-4));
    assertThat(flow.decides().what()).isEqualTo(FlowInput.TIME);
  }

  /** Rational method: 0.9 × 50 mm/h × 100 m² = 1.25 L/s, by hand. */
  @Test
  void rainOffARoof() {
    Measured intensity = new Measured(0.05 / 3600, 0.01 / 3600);
    Propagated flow =
        Rain.of(
            List.of(new Rain.Catch("roof", new Measured(100, 5), new Measured(0.9, 0.05))),
            intensity);
    assertThat(flow.value().value()).isCloseTo(0.00125, within(1e-12));
    assertThat(flow.decides().what()).isEqualTo(FlowInput.RAIN);
    // Two roofs under one rain err together: the relative doubt of the rain does not average out.
    Rain.Catch half = new Rain.Catch("half", sure(50), sure(0.9));
    Propagated both = Rain.of(List.of(half, half), intensity);
    assertThat(both.value().sd() / both.value().value()).isCloseTo(0.2, within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Rain.Catch("roof", new Measured(-1, 1), sure(0.9)));
  }

  @Test
  void flowsThatShareNoErrorAddUp() {
    Propagated sum =
        Propagated.sum(
            List.of(
                Propagated.measured(FlowInput.FIXTURES, "tub", new Measured(3, 0.3)),
                Propagated.measured(FlowInput.RAIN, "", new Measured(4, 0.4))));
    assertThat(sum.value().value()).isEqualTo(7);
    assertThat(sum.value().sd()).isCloseTo(0.5, within(1e-12));
    assertThat(sum.decides().share()).isCloseTo(0.64, within(1e-12));
  }
}
