package daylight.line.flow;

import static daylight.line.flow.GravityTest.sure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How high water backs up along pipes. */
class BackwaterTest {
  private static final Roughness WALL = new Roughness(FrictionLaw.MANNING, sure(0.011));
  private static final double NU = 1.3e-6;

  /** Forty pieces of half a metre of 100 mm pipe at a slope, from the outlet at height 0 up. */
  private static List<Backwater.Piece> line(double slope, double flow) {
    List<Backwater.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double low = i * 0.5 * slope;
      pieces.add(new Backwater.Piece(low + 0.5 * slope, low, 0.5, 0.1, WALL, flow, i - 1));
    }
    return pieces;
  }

  private static double full(double slope) {
    GravityPipe pipe = GravityPipe.of(sure(0.1), sure(slope), WALL);
    if (Gravity.capacity(pipe) instanceof Capacity.Carries carries) {
      return carries.flow().value().value();
    }
    throw new AssertionError("it falls");
  }

  /** Twice the flow needs four times the slope: over 20 m the head gains 20 × 3 × 0.01. */
  @Test
  void twiceItsCapacityRisesByFriction() {
    List<Backwater.Level> levels = Backwater.of(line(0.01, 2 * full(0.01)), -1, NU);
    assertThat(levels.getLast().aboveCrown()).isCloseTo(20 * 0.03, within(1e-6));
    assertThat(levels.getFirst().aboveCrown()).isCloseTo(0.5 * 0.03, within(1e-6));
  }

  @Test
  void whatItCarriesDoesNotBackUp() {
    List<Backwater.Level> levels = Backwater.of(line(0.01, 0.5 * full(0.01)), -1, NU);
    // Half of the full flow fills half of the pipe.
    assertThat(levels)
        .allSatisfy(one -> assertThat(one.aboveCrown()).isCloseTo(-0.05, within(1e-6)));
  }

  /** One flat metre in the middle presses water up above itself, and no further down. */
  @Test
  void aFlatStretchBacksUpAboveItself() {
    double flow = 0.7 * full(0.01);
    List<Backwater.Piece> pieces = new ArrayList<>(line(0.01, flow));
    for (int i : new int[] {20, 21}) {
      Backwater.Piece old = pieces.get(i);
      double at = pieces.get(19).top();
      pieces.set(i, new Backwater.Piece(at, at, 0.5, 0.1, WALL, flow, old.below()));
    }
    List<Backwater.Level> levels = Backwater.of(pieces, -1, NU);
    assertThat(levels.get(19).aboveCrown()).isNegative();
    assertThat(levels.get(21).aboveCrown()).isCloseTo(0.49 * 0.01, within(1e-6));
    assertThat(levels.get(39).aboveCrown()).isNegative();
  }

  /** Under water at the outlet the full pipe adds friction to that water's height. */
  @Test
  void aDrownedOutletHoldsItUp() {
    double flow = 0.5 * full(0.01);
    List<Backwater.Level> levels = Backwater.of(line(0.01, flow), 0.15, NU);
    // A quarter of the slope is lost to friction; the water is level but for that.
    assertThat(levels.get(9).head()).isCloseTo(0.15 + 5 * 0.0025, within(1e-6));
    assertThat(levels.get(39).aboveCrown()).isNegative();
    assertThat(Backwater.of(line(0.01, 0), 0.15, NU).getFirst().head()).isEqualTo(0.15);
  }

  @Test
  void aBranchStandsAsHighAsWhereItComesIn() {
    List<Backwater.Piece> pieces = new ArrayList<>(line(0.01, 2 * full(0.01)));
    pieces.add(new Backwater.Piece(0.12, 0.105, 1, 0.1, WALL, 0, 20));
    List<Backwater.Level> levels = Backwater.of(pieces, -1, NU);
    assertThat(levels.getLast().head()).isEqualTo(levels.get(20).head());
  }

  @Test
  void whatIsUpstreamComesLater() {
    List<Backwater.Piece> upsideDown = List.of(new Backwater.Piece(0.1, 0, 1, 0.1, WALL, 0.001, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Backwater.of(upsideDown, 0, NU));
  }
}
