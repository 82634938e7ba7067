package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.Surveyor;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every derivative that the adjustment uses, against central differences. */
class DerivativesTest {
  private static final Priors PRIORS = TestPriors.shipped();
  private static final double H = 1e-6;
  private static final Offset<Double> NEAR = Offset.offset(3e-6);

  private static SimulatedProperty property(int seed, boolean fromOutlet) {
    return SimulatedProperty.of(
        seed, new SimulatedProperty.Traits(true, seed % 2 == 0, true, fromOutlet, 2, 4));
  }

  private static Model model(FieldBook book, boolean heights) {
    Tree tree = Tree.grow(book, "main").getFirst();
    LevelAdjusted levels =
        Surveyor.survey(book, PRIORS).levels() instanceof LevelAdjusted a ? a : null;
    Adjusted plan = (Adjusted) Surveyor.survey(book, PRIORS).plan();
    Gathered gathered = Gathered.of(book, tree, heights, true, plan, levels, PRIORS);
    return new Model(
        gathered, 1.0, Start.shared(gathered, book, PRIORS), SetAside.NOTHING, Wander.none());
  }

  private static int[] hands(Model model) {
    return new int[model.gathered().freeTurns().size()];
  }

  /** Unknowns off their first guess by what they might well be off, so that nothing is zero. */
  private static double[] shaken(Model model, SplitMix64 random) {
    double[] shared = Start.shared(model.gathered(), model.book(), PRIORS);
    double[] x = Start.values(model, shared, hands(model));
    for (int k = 0; k < x.length; k++) {
      x[k] += 0.02 * random.normal();
    }
    return x;
  }

  private static double[] moved(double[] x, int k, double by) {
    double[] moved = x.clone();
    moved[k] += by;
    return moved;
  }

  private static double by(Gradient gradient, int unknown) {
    for (int i = 0; i < gradient.count(); i++) {
      if (gradient.unknown(i) == unknown) {
        return gradient.value(i);
      }
    }
    return 0;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void aPlaceMovesWithEveryUnknownAsItsDerivativesSay(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    for (boolean heights : new boolean[] {true, false}) {
      Model model = model(property(seed, seed == 3).book(), heights);
      double[] x = shaken(model, random);
      for (int limb = 0; limb < model.layout().tree().limbs().size(); limb++) {
        double length = model.layout().length(x, limb);
        for (double t : new double[] {random.between(0.05, 0.9) * length, -0.3, length + 0.7}) {
          place(model, x, limb, t);
        }
      }
    }
  }

  private static void place(Model model, double[] x, int limb, double t) {
    Shape.Spot spot = new Shape(model.knots(), x).spot(limb, t, new Gradient());
    for (int k = 0; k < x.length; k++) {
      Shape.Point ahead = new Shape(model.knots(), moved(x, k, H)).at(limb, t);
      Shape.Point back = new Shape(model.knots(), moved(x, k, -H)).at(limb, t);
      String where = "limb " + limb + " at " + t + ", unknown " + k;
      assertThat(by(spot.east(), k))
          .as(where)
          .isCloseTo((ahead.east() - back.east()) / (2 * H), NEAR);
      assertThat(by(spot.north(), k))
          .as(where)
          .isCloseTo((ahead.north() - back.north()) / (2 * H), NEAR);
      assertThat(by(spot.up(), k)).as(where).isCloseTo((ahead.up() - back.up()) / (2 * H), NEAR);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void aReadingIsPlacedAsItsDerivativesSay(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    Model model = model(property(seed, seed == 3).book(), true);
    double[] x = shaken(model, random);
    int behind = model.layout().named("behind/V1");
    for (Walk walk : model.walks().all()) {
      for (Finding.Moving moving : Finding.Moving.values()) {
        for (double reading : new double[] {0.2, 2.5, 7.5, 40}) {
          Walk.Reached at = walk.at(x, reading, moving, behind);
          for (int k = 0; k < model.layout().shared(); k++) {
            double ahead = walk.at(moved(x, k, H), reading, moving, behind).t();
            double back = walk.at(moved(x, k, -H), reading, moving, behind).t();
            assertThat(by(at.dt(), k))
                .as("reading %s, unknown %d", reading, k)
                .isCloseTo((ahead - back) / (2 * H), NEAR);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void everyEquationFollowsItsDerivatives(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    for (boolean heights : new boolean[] {true, false}) {
      Model model = model(property(seed, seed == 3).book(), heights);
      followed(model, random);
    }
  }

  private static void followed(Model model, SplitMix64 random) {
    double[] x = shaken(model, random);
    Shape reference = new Shape(model.knots(), x);
    List<Equations.Row> rows = model.equations(x, hands(model), reference).rows();
    for (int k = 0; k < x.length; k++) {
      var ahead = model.equations(moved(x, k, H), hands(model), reference).rows();
      var back = model.equations(moved(x, k, -H), hands(model), reference).rows();
      for (int row = 0; row < rows.size(); row++) {
        // A misfit is observed less modelled, so it falls as the modelled value grows.
        assertThat(by(rows.get(row).gradient(), k))
            .as("row %d (%s), unknown %d", row, rows.get(row).origin(), k)
            .isCloseTo(-(ahead.get(row).misfit() - back.get(row).misfit()) / (2 * H), NEAR);
      }
    }
  }

  /** With still water, and with bends that passes from both ends saw. */
  @ParameterizedTest
  @EnumSource(names = {"WET", "TWICE"})
  void soDoThoseOfWaterAndOfBendsSeenTwice(LineSort.Way way) {
    LineSort sort = LineSort.of(2, 2, 3, LineSort.Way.FLEXIBLE, way);
    KnownProperty property =
        KnownProperty.of(Nature.SUPPOSED, sort, way == LineSort.Way.WET ? 5 : 1);
    Model model = model(property.book(), true);
    boolean wet = way == LineSort.Way.WET;

    assertThat(wet ? model.gathered().ponds() : model.turns().getFirst().again()).isNotEmpty();
    followed(model, new SplitMix64(7));
  }

  @Test
  void aSimulatedBookHasEveryPartOfTheModel() {
    Model model = model(property(2, false).book(), true);

    assertThat(model.turns()).isNotEmpty();
    assertThat(model.layout().tree().limbs()).hasSize(3);
    assertThat(model.levels()).isNotNull();
    assertThat(model.marks()).anyMatch(mark -> mark.depth() instanceof Mark.DepthRead.ByReceiver);
  }

  /** To first order a step carried out on the pipe is the step itself. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void aStepIsWhatItSaysToFirstOrder(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    Model model = model(property(seed, seed == 3).book(), true);
    double[] x = shaken(model, random);
    double[] move = new double[x.length];
    for (int k = 0; k < move.length; k++) {
      move[k] = random.normal();
    }
    double[] ahead = Step.take(model.knots(), x, move, H);
    double[] back = Step.take(model.knots(), x, move, -H);
    for (int k = 0; k < x.length; k++) {
      assertThat((ahead[k] - back[k]) / (2 * H))
          .as("unknown %d", k)
          .isCloseTo(move[k], Offset.offset(1e-5));
    }
  }
}
