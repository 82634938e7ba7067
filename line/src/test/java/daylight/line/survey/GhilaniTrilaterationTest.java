package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Reference: C. D. Ghilani, Adjustment Computations, ch. 14, trilateration of one station from
 * three. Inputs from memory, outputs derived independently with another numeric library; feet.
 */
class GhilaniTrilaterationTest {
  private static final List<Sighting> SIGHTINGS =
      List.of(
          Networks.fixed("A", 865.40, 4527.15),
          Networks.fixed("B", 2432.55, 2047.25),
          Networks.fixed("C", 2865.22, 27.15),
          Networks.tape("A", "U", 6049.00, 1),
          Networks.tape("B", "U", 4736.83, 1),
          Networks.tape("C", "U", 5446.49, 1));

  @Test
  void positionResidualsAndEllipse() {
    Adjusted adjusted = Networks.adjusted(SIGHTINGS);
    Networks.assertAt(adjusted, "U", 6861.317, 3727.819, 1e-3);
    double s0 = adjusted.fit().sigma0Ratio().orElseThrow();
    assertThat(s0).isCloseTo(0.0977, within(5e-5));
    Covariance2 q = adjusted.covariance("U", "U");
    assertThat(q.xx()).isCloseTo(0.630189, within(2e-6));
    assertThat(q.xy()).isCloseTo(-0.728354, within(2e-6));
    assertThat(q.yy()).isCloseTo(2.494689, within(2e-6));
    ErrorEllipse ellipse = adjusted.ellipse("U", 1 - Math.exp(-0.5));
    assertThat(s0 * ellipse.semiMajor()).isCloseTo(0.1618, within(6e-5));
    assertThat(s0 * ellipse.semiMinor()).isCloseTo(0.0602, within(6e-5));
    assertThat(Math.toDegrees(ellipse.azimuth())).isCloseTo(161.0, within(0.05));
    Map.of("A–U", -0.037, "B–U", 0.077, "C–U", -0.047)
        .forEach(
            (entry, v) ->
                assertThat(
                        adjusted.fit().residuals().stream()
                            .filter(r -> r.entry().equals(entry))
                            .mapToDouble(Residual::residual)
                            .sum())
                    .isCloseTo(v, within(6e-4)));
  }

  /** The printed way of the iteration from a start some 530 ft off. */
  @Test
  void iterationStepsAreTheTextbooks() {
    Map<String, PlanPoint> known =
        Map.of(
            "A", new PlanPoint(865.40, 4527.15),
            "B", new PlanPoint(2432.55, 2047.25),
            "C", new PlanPoint(2865.22, 27.15));
    Datum datum = Datum.of(SIGHTINGS, List.of()).orElseThrow();
    Scene scene = new Scene(datum, known).with("U", new PlanPoint(6531.28, 4150.06));
    var unknowns = new Unknowns(scene, List.of("U"));
    var equations = new PlaneEquations(unknowns, Optional.empty()).of(SIGHTINGS);
    double[] state = unknowns.start();
    double[][] steps = {{346.658, -399.263}, {-16.575, -23.024}, {-0.046, 0.046}, {0, 0}};
    for (double[] expected : steps) {
      Linearised here = Linearised.of(equations, state);
      double[] step = Factored.of(here.design()).step(here.misfit());
      assertThat(step[0]).isCloseTo(expected[0], within(1e-3));
      assertThat(step[1]).isCloseTo(expected[1], within(1e-3));
      state[0] += step[0];
      state[1] += step[1];
    }
  }
}
