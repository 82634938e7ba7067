package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Priors;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.Surveyor;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every derivative that the adjustment uses, against central differences. */
class DerivativesTest {
  private static final Priors PRIORS = TestPriors.shipped();
  private static final double H = 1e-6;
  private static final Offset<Double> NEAR = Offset.offset(2e-6);

  private static SimulatedProperty property(int seed, boolean fromOutlet) {
    return SimulatedProperty.of(
        seed, new SimulatedProperty.Traits(true, seed % 2 == 0, true, fromOutlet, 2, 4));
  }

  private static Model model(FieldBook book, boolean heights) {
    Tree tree = Tree.grow(book, "main").getFirst();
    Lengths lengths = Lengths.guess(book, tree, PRIORS);
    Layout layout = new Layout(tree, lengths.metres(), heights);
    Walks walks = new Walks(book, layout, PRIORS);
    LevelAdjusted levels =
        Surveyor.survey(book, PRIORS).levels() instanceof LevelAdjusted a ? a : null;
    Adjusted plan = (Adjusted) Surveyor.survey(book, PRIORS).plan();
    List<Mark> marks = Marks.gather(book, layout, lengths, walks, PRIORS, levels);
    Model bare = new Model(book, layout, lengths, walks, marks, List.of(), plan, levels, PRIORS);
    List<Turn> turns = Turn.of(book, layout, walks, PRIORS, Start.values(bare));
    return new Model(book, layout, lengths, walks, marks, turns, plan, levels, PRIORS);
  }

  /** Unknowns off their first guess by what they might well be off, so that nothing is zero. */
  private static double[] shaken(Model model, SplitMix64 random) {
    double[] x = Start.values(model);
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

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void aPlaceMovesWithEveryUnknownAsItsDerivativesSay(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    for (boolean heights : new boolean[] {true, false}) {
      Model model = model(property(seed, seed == 3).book(), heights);
      double[] x = shaken(model, random);
      Layout layout = model.layout();
      for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
        double step = layout.length0(limb) / layout.steps(limb);
        double inner = Math.floor(random.between(0.05, 0.9) * layout.steps(limb)) + 0.4;
        for (double t : new double[] {inner * step, -0.3, layout.length0(limb) + 0.7}) {
          place(layout, x, limb, t);
        }
      }
    }
  }

  private static void place(Layout layout, double[] x, int limb, double t) {
    int n = x.length;
    double[][] d = new double[3][n];
    new Shape(layout, x).differentiate(limb, t, new double[n], d[0], d[1], d[2]);
    for (int k = 0; k < n; k++) {
      Shape.Point ahead = new Shape(layout, moved(x, k, H)).at(limb, t);
      Shape.Point back = new Shape(layout, moved(x, k, -H)).at(limb, t);
      String where = "limb " + limb + " at " + t + ", unknown " + k;
      assertThat(d[0][k]).as(where).isCloseTo((ahead.east() - back.east()) / (2 * H), NEAR);
      assertThat(d[1][k]).as(where).isCloseTo((ahead.north() - back.north()) / (2 * H), NEAR);
      assertThat(d[2][k]).as(where).isCloseTo((ahead.up() - back.up()) / (2 * H), NEAR);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void aReadingIsPlacedAsItsDerivativesSay(int seed) {
    SplitMix64 random = new SplitMix64(seed);
    Model model = model(property(seed, seed == 3).book(), true);
    double[] x = shaken(model, random);
    int noise = model.marks().getFirst().noise();
    int behind = model.layout().named("behind/V1");
    for (Walk walk : model.walks().all()) {
      for (Finding.Moving moving : Finding.Moving.values()) {
        for (double reading : new double[] {0.2, 2.5, 7.5, 40}) {
          Walk.Reached at = walk.at(x, reading, moving, noise, behind);
          for (int k = 0; k < x.length; k++) {
            double ahead = walk.at(moved(x, k, H), reading, moving, noise, behind).t();
            double back = walk.at(moved(x, k, -H), reading, moving, noise, behind).t();
            assertThat(at.dt()[k])
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
      double[] x = shaken(model, random);
      int[] hands = new int[model.freeTurns().size()];
      double[][] derivatives = derivatives(model.equations(x, hands));
      for (int k = 0; k < x.length; k++) {
        double[] ahead = misfits(model.equations(moved(x, k, H), hands));
        double[] back = misfits(model.equations(moved(x, k, -H), hands));
        for (int row = 0; row < ahead.length; row++) {
          // A misfit is observed less modelled, so it falls as the modelled value grows.
          assertThat(derivatives[row][k])
              .as("row %d, unknown %d", row, k)
              .isCloseTo(-(ahead[row] - back[row]) / (2 * H), NEAR);
        }
      }
    }
  }

  /** What is assumed or observed of one unknown has the derivative one and is left out. */
  private static double[] misfits(Equations equations) {
    return DoubleStream.concat(
            equations.rows().stream().mapToDouble(Equations.Row::misfit),
            equations.blocks().stream().flatMapToDouble(b -> DoubleStream.of(b.misfits())))
        .toArray();
  }

  private static double[][] derivatives(Equations equations) {
    return Stream.concat(
            equations.rows().stream().map(Equations.Row::derivative),
            equations.blocks().stream().flatMap(b -> Stream.of(b.derivatives())))
        .toArray(double[][]::new);
  }

  @Test
  void aSimulatedBookHasEveryPartOfTheModel() {
    Model model = model(property(2, false).book(), true);

    assertThat(model.turns()).isNotEmpty();
    assertThat(model.layout().tree().limbs()).hasSize(3);
    assertThat(model.levels()).isNotNull();
    assertThat(model.marks()).anyMatch(mark -> mark.depth() instanceof Mark.DepthRead.ByReceiver);
  }
}
