package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Priors;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Properties are drawn as they say they are: what is proved on them rests on it. */
class KnownPropertyTest {
  private static final Priors PRIORS = KnownProperty.PRIORS;
  private static final int MANY = 4000;

  @ParameterizedTest
  @EnumSource
  void errorsHaveTheSizeThatIsAskedFor(Nature nature) {
    Errors errors = new Errors(new SplitMix64(1), nature, 1);
    double squares = 0;
    int far = 0;
    int n = 200_000;
    for (int i = 0; i < n; i++) {
      double error = errors.of(0.1);
      squares += error * error;
      far += Math.abs(error) > 0.4 ? 1 : 0;
    }

    assertThat(Math.sqrt(squares / n)).isCloseTo(0.1, within(0.003));
    // Beyond four standard deviations: 6.3e-5 of a normal, 4.8e-3 of a scaled t with four degrees
    // of freedom (tables of the distributions, from memory).
    double beyond = nature == Nature.SUPPOSED ? 6.3e-5 : 4.8e-3;
    assertThat((double) far / n).isBetween(beyond / 2, beyond * 1.5);
  }

  @ParameterizedTest
  @EnumSource
  void pipesTurnAsMuchPerRootMetreWhateverTheyAreMadeOf(Nature nature) {
    double turned = 0;
    double tipped = 0;
    double length = 24;
    SplitMix64 random = new SplitMix64(2);
    for (int i = 0; i < MANY; i++) {
      LaidPipe pipe = pipe(random, nature, length);
      TruePipe.At end = pipe.at(length - 1e-6);
      turned += square(end.bearing());
      tipped += square(end.pitch());
    }

    double sd = Math.sqrt(turned / MANY / length);
    assertThat(sd).isCloseTo(PRIORS.of(Priors.Kind.STRAIGHT_RIGID).a(), within(0.0013));
    assertThat(Math.sqrt(tipped / MANY / length))
        .isCloseTo(PRIORS.of(Priors.Kind.GRADE_RIGID).a(), within(0.0005));
  }

  private static LaidPipe pipe(SplitMix64 random, Nature nature, double length) {
    Priors.Prior yard = PRIORS.of(Priors.Kind.GROUND_YARD);
    TruePipe.At start = new TruePipe.At(0, 0, -1, yard.a() * random.normal(), 0, 0);
    return new LaidPipe(
        random, nature, yard, LaidPipe.Wander.of(PRIORS, true), start, length, List.of());
  }

  @Test
  void groundFadesAlongThePipeAboutItsLevel() {
    SplitMix64 random = new SplitMix64(3);
    double here = 0;
    double both = 0;
    for (int i = 0; i < MANY; i++) {
      LaidPipe pipe = pipe(random, Nature.SUPPOSED, 12);
      here += square(pipe.at(11).ground());
      both += pipe.at(1).ground() * pipe.at(11).ground();
    }
    double variance = square(PRIORS.of(Priors.Kind.GROUND_YARD).a());

    assertThat(here / MANY).isCloseTo(variance, within(0.08 * variance));
    assertThat(both / MANY).isCloseTo(variance * Math.exp(-1), within(0.06 * variance));
  }

  /** Over 3 m the one fades to e⁻¹, the other, a mean over 6 m of noise, to a half. */
  @ParameterizedTest
  @EnumSource
  void neighboursShareDistortion(Nature nature) {
    double size = 0;
    double shared = 0;
    SplitMix64 random = new SplitMix64(4);
    Errors errors = new Errors(random, nature, 1);
    for (int i = 0; i < MANY; i++) {
      Tools tools = new Tools(random, nature, errors, PRIORS, 20);
      double a = tools.distortion(new Tools.Spot(0, 4));
      double b = tools.distortion(new Tools.Spot(0, 7));
      double other = tools.distortion(new Tools.Spot(6, 1));
      size += (a * a + b * b + other * other) / 3;
      shared += a * b;
    }

    assertThat(size / MANY).isCloseTo(1, within(0.08));
    assertThat(shared / MANY)
        .isCloseTo(nature == Nature.SUPPOSED ? Math.exp(-1) : 0.5, within(0.06));
  }

  @Test
  void distancesRunAlongThePipes() {
    Tools.Spot main = new Tools.Spot(0, 4);
    Tools.Spot branch = new Tools.Spot(10, 3);

    assertThat(main.awayFrom(branch)).isEqualTo(9);
    assertThat(branch.awayFrom(main)).isEqualTo(9);
    assertThat(branch.awayFrom(new Tools.Spot(10, 5))).isEqualTo(2);
    assertThat(main.awayFrom(new Tools.Spot(0, 1))).isEqualTo(3);
  }

  @Test
  void aPropertyWithoutErrorsIsFoundWhereItIs() {
    KnownProperty property =
        KnownProperty.of(
            KnownProperty.Plan.exact(
                LineSort.of(2, 5, 5, LineSort.Way.BRANCH, LineSort.Way.LEVELLED)),
            7);
    Line line = Flat.line(property.book());
    List<Station> stations = line.runs().stream().flatMap(r -> r.stations().stream()).toList();

    assertThat(stations).hasSizeGreaterThan(30);
    for (Station station : stations) {
      TruePipe.At truth = property.truth(station.place());
      assertThat(station.spot().distanceTo(KnownProperty.plan(truth)))
          .as("%s", station.place())
          .isLessThan(0.2);
      assertThat(Known.known(station.depth()).value())
          .isCloseTo(truth.ground() - truth.up(), within(0.02));
    }
  }

  @Test
  void placesAreDrawnOnEveryReach() {
    KnownProperty property =
        KnownProperty.of(Nature.OTHERWISE, LineSort.of(0, 2, 3, LineSort.Way.BRANCH), 1);
    SplitMix64 random = new SplitMix64(1);

    assertThat(
            java.util.stream.IntStream.range(0, 100)
                .mapToObj(i -> property.drawnPlace(random))
                .filter(place -> property.truth(place).up() < 10)
                .map(place -> place.reach())
                .distinct())
        .containsExactlyInAnyOrder("R1", "R2", "R3");
  }

  private static double square(double v) {
    return v * v;
  }
}
