package daylight.line.course;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.counter.Tracks;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of the course over generated lines of both natures. */
class CourseLawsTest {
  private static final LineSort BRANCHED =
      LineSort.of(1, 3, 5, LineSort.Way.BRANCH, LineSort.Way.LEVELLED);
  private static final LineSort PLAIN = LineSort.of(2, 4, 6);

  /** Regions are linearised about an estimate that moves a little with what it rests on. */
  private static final double SAME = 1e-2;

  private static List<Station> stations(Line line) {
    return line.runs().stream().flatMap(run -> run.stations().stream()).toList();
  }

  private static Nature nature(long seed) {
    return seed % 2 == 0 ? Nature.SUPPOSED : Nature.OTHERWISE;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void theOrderOfEntriesChangesNoBitAndNeitherDoesAskingTwice(long seed) {
    FieldBook book = KnownProperty.of(nature(seed), BRANCHED, seed).book();
    Line line = Flat.line(book);

    assertThat(Flat.line(book).runs()).isEqualTo(line.runs());
    assertThat(Flat.line(book).doubts()).isEqualTo(line.doubts());
    Line shuffled = Flat.line(Reworked.shuffled(book, new SplitMix64(seed)));
    for (Run run : line.runs()) {
      assertThat(shuffled.findRun(run.reach().label())).contains(run);
    }
    assertThat(shuffled.doubts()).isEqualTo(line.doubts());
  }

  /**
   * All spots are dropped on a sketch whose paper is shifted and turned: the line is shifted and
   * turned with them, and so is every region.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aPropertyThatIsMovedAndTurnedHasTheLineMovedAndTurned(long seed) {
    FieldBook book = KnownProperty.of(nature(seed), PLAIN, seed).book();
    SortedMap<String, PlanPoint> spots = new TreeMap<>();
    ((Adjusted) Flat.line(book).survey())
        .points()
        .forEach(
            (label, at) -> {
              if (label.startsWith("L") || label.startsWith("N")) {
                spots.put(label, at);
              }
            });
    SplitMix64 random = new SplitMix64(seed);
    Motion motion =
        new Motion(
            random.between(-40, 40), random.between(-40, 40), random.between(-Math.PI, Math.PI));
    SortedMap<String, PlanPoint> moved = new TreeMap<>();
    spots.forEach((label, at) -> moved.put(label, motion.of(at)));
    List<Station> here = stations(Flat.line(Reworked.sketched(book, spots)));
    List<Station> there = stations(Flat.line(Reworked.sketched(book, moved)));

    assertThat(there).hasSameSizeAs(here);
    for (int i = 0; i < here.size(); i++) {
      Station a = here.get(i);
      Station b = there.get(i);
      assertThat(b.spot().distanceTo(motion.of(a.spot()))).isLessThan(1e-4);
      for (double bearing = 0; bearing < Math.PI; bearing += 0.5) {
        assertThat(b.along(bearing + motion.turn()))
            .isCloseTo(a.along(bearing), within(1e-3 * a.along(bearing)));
      }
      assertThat(known(b.depth()).value()).isCloseTo(known(a.depth()).value(), within(1e-5));
      assertThat(known(b.depth()).sd()).isCloseTo(known(a.depth()).sd(), within(1e-4));
    }
  }

  private record Motion(double east, double north, double turn) {
    PlanPoint of(PlanPoint p) {
      double sine = StrictMath.sin(turn);
      double cosine = StrictMath.cos(turn);
      return new PlanPoint(
          east + cosine * p.x() + sine * p.y(), north - sine * p.x() + cosine * p.y());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aMirroredPropertyHasTheMirroredLine(long seed) {
    FieldBook book = KnownProperty.of(nature(seed), BRANCHED, seed).book();
    List<Station> here = stations(Flat.line(book));
    List<Station> there = stations(Flat.line(Reworked.mirrored(book)));

    assertThat(there).hasSameSizeAs(here);
    for (int i = 0; i < here.size(); i++) {
      PlanPoint spot = here.get(i).spot();
      assertThat(there.get(i).spot().distanceTo(new PlanPoint(-spot.x(), spot.y())))
          .isLessThan(1e-4);
      assertThat(there.get(i).across()).isCloseTo(here.get(i).across(), within(1e-4));
    }
  }

  /**
   * The same readings, taken by a camera that came in at the other end: a tape laid along the pipe
   * in place of a counter, and a pipe that may fall as it likes, so that neither end is special.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aPassFromTheOtherEndTellsTheSameCourse(long seed) {
    KnownProperty property = KnownProperty.of(nature(seed), PLAIN, seed);
    Priors fair =
        with(
            Map.of(
                Priors.Kind.COUNTER_SCALE, 1e-6,
                Priors.Kind.COUNTER_ZERO, 1e-6,
                Priors.Kind.SLACK, 1e-9,
                Priors.Kind.FALL, 10.0));
    FieldBook there = Reworked.taped(property.book(), property.mainLength(), false);
    FieldBook back = Reworked.taped(property.book(), property.mainLength(), true);
    List<Station> here = stations(Estimator.estimate(there, Tracks.NONE, fair));
    List<Station> other = stations(Estimator.estimate(back, Tracks.NONE, fair));

    assertThat(other).hasSameSizeAs(here);
    for (int i = 0; i < here.size(); i++) {
      assertThat(other.get(i).place().distance())
          .isCloseTo(here.get(i).place().distance(), within(1e-4));
      assertThat(other.get(i).spot().distanceTo(here.get(i).spot())).isLessThan(0.03);
      assertThat(known(other.get(i).depth()).value())
          .isCloseTo(known(here.get(i).depth()).value(), within(0.01));
      assertThat(known(other.get(i).depth()).sd())
          .isCloseTo(known(here.get(i).depth()).sd(), within(0.02));
    }
  }

  private static Priors with(Map<Priors.Kind, Double> other) {
    Map<Priors.Kind, Priors.Prior> rows = new EnumMap<>(Priors.Kind.class);
    for (Priors.Prior row : KnownProperty.PRIORS.rows()) {
      Double a = other.get(row.kind());
      rows.put(
          row.kind(),
          a == null
              ? row
              : new Priors.Prior(
                  row.kind(),
                  row.kind() == Priors.Kind.SLACK ? 0 : a,
                  row.kind() == Priors.Kind.SLACK ? a : 0,
                  0,
                  1,
                  1,
                  null,
                  row.source(),
                  row.mark(),
                  null));
    }
    return new Priors(rows);
  }

  /**
   * On a property without errors everything fits, so that nothing loses weight: whatever is left
   * out of its book, no region is smaller for it.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void whatIsLeftOutOfABookMakesNoRegionSmaller(long seed) {
    LineSort sort =
        seed % 2 == 0
            ? LineSort.of(1, 4, 4, LineSort.Way.LEVELLED)
            : LineSort.of(1, 4, 4, LineSort.Way.FLEXIBLE, LineSort.Way.BRANCH);
    KnownProperty property = KnownProperty.of(KnownProperty.Plan.exact(sort), seed);
    FieldBook book = property.book();
    List<Station> all = stations(Flat.line(book));
    String locate = "L" + (1 + seed % 4);
    for (FieldBook less :
        List.of(
            Reworked.withVagueDepth(book, locate),
            Reworked.withoutTies(book, locate),
            Reworked.withVagueBends(book),
            Reworked.levels(book, List.of()))) {
      List<Station> few = stations(Flat.line(less));
      assertThat(few).hasSameSizeAs(all);
      for (int i = 0; i < all.size(); i++) {
        // Right at a bend the pipe has two directions, and so a place along it two spreads.
        if (!atBend(property, all.get(i))) {
          notSmaller(few.get(i), all.get(i));
        }
      }
    }
  }

  private static boolean atBend(KnownProperty property, Station station) {
    Tools.Spot spot = property.spot(station.place());
    return property.noted().stream()
        .anyMatch(bend -> spot.awayFrom(new Tools.Spot(0, bend.at())) < 0.6);
  }

  private static void notSmaller(Station few, Station all) {
    Covariance2 c = few.spread();
    // A flexible pipe that lies dead straight is a rare one: with less to go by, it is thought to
    // wander and to fall short of its length.
    double size = Math.sqrt(c.xx() + c.yy());
    assertThat(few.spot().distanceTo(all.spot())).as("nothing errs").isLessThan(1.2 * size + 0.05);
    for (double bearing = 0; bearing < Math.PI; bearing += 0.3) {
      assertThat(few.along(bearing))
          .as("%s, bearing %s", few.place(), bearing)
          .isGreaterThanOrEqualTo(all.along(bearing) * (1 - SAME));
    }
    assertThat(known(few.depth()).sd())
        .as("depth at %s", few.place())
        .isGreaterThanOrEqualTo(known(all.depth()).sd() * (1 - SAME));
  }
}
