package daylight.line.course;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import daylight.line.book.Bend;
import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.survey.PlanPoint;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every line, whatever was measured. */
class EstimatorLawsTest {
  private static List<Station> stations(Line line) {
    return line.runs().stream().flatMap(run -> run.stations().stream()).toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 5, 6})
  void theOrderOfEntriesChangesNoBit(long seed) {
    FieldBook book = SimulatedProperty.of(seed).book();
    Line line = Flat.line(book);
    Line again = Flat.line(Reworked.shuffled(book, new SplitMix64(seed)));

    for (Run run : line.runs()) {
      Run other = again.findRun(run.reach().label()).orElseThrow();
      assertThat(other).isEqualTo(run);
    }
    assertThat(Set.copyOf(again.locates())).isEqualTo(Set.copyOf(line.locates()));
    assertThat(again.doubts()).isEqualTo(line.doubts());
  }

  @ParameterizedTest
  @ValueSource(longs = 5)
  void theSameBookGivesTheSameBits(long seed) {
    FieldBook book = SimulatedProperty.of(seed).book();

    assertThat(Flat.line(book).runs()).isEqualTo(Flat.line(book).runs());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 5, 6})
  void aMirroredPropertyHasTheMirroredLine(long seed) {
    FieldBook book = SimulatedProperty.of(seed).book();
    List<Station> line = stations(Flat.line(book));
    List<Station> mirrored = stations(Flat.line(Reworked.mirrored(book)));

    assertThat(mirrored).hasSameSizeAs(line);
    for (int i = 0; i < line.size(); i++) {
      PlanPoint spot = line.get(i).spot();
      assertThat(mirrored.get(i).spot().x()).isCloseTo(-spot.x(), within(1e-6));
      assertThat(mirrored.get(i).spot().y()).isCloseTo(spot.y(), within(1e-6));
      assertThat(mirrored.get(i).across()).isCloseTo(line.get(i).across(), within(1e-6));
    }
  }

  /**
   * The line is compared with its own start: how far the wall is long is the survey's affair, and
   * moves the whole of the line alike.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 5, 6})
  void aGridThatStartsAtTheOtherEndOfTheWallShowsTheSameLineTurned(long seed) {
    FieldBook book = SimulatedProperty.of(seed).book();
    Line line = Flat.line(book);
    Line turned = Flat.line(Reworked.otherBase(book));
    List<Station> here = stations(line);
    List<Station> there = stations(turned);
    PlanPoint start = here.getFirst().spot();
    PlanPoint turnedStart = there.getFirst().spot();
    for (int i = 0; i < here.size(); i++) {
      PlanPoint spot = here.get(i).spot();
      PlanPoint other = there.get(i).spot();
      assertThat(other.x() - turnedStart.x()).isCloseTo(start.x() - spot.x(), within(1e-6));
      assertThat(other.y() - turnedStart.y()).isCloseTo(start.y() - spot.y(), within(1e-6));
    }
    Place first = here.getFirst().place();
    Place last = here.getLast().place();
    assertThat(turned.fall(first, last).orElseThrow().value())
        .isCloseTo(line.fall(first, last).orElseThrow().value(), within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 5, 6})
  void everyFigureSharesItsVarianceOutAmongEntriesAndAssumptionsOfTheBook(long seed) {
    FieldBook book = SimulatedProperty.of(seed).book();
    Line line = Flat.line(book);
    Set<Source> sources = sources(book);
    List<Station> stations = stations(line);
    Place first = stations.getFirst().place();
    for (int i = 0; i < stations.size(); i += 7) {
      Place place = stations.get(i).place();
      shared(line, new Wanted.Across(place), sources);
      shared(line, new Wanted.Widest(place), sources);
      shared(line, new Wanted.Depth(place), sources);
      if (i > 0) {
        shared(line, new Wanted.Fall(first, place), sources);
      }
    }
  }

  private static void shared(Line line, Wanted figure, Set<Source> sources) {
    List<Contribution> why = line.why(figure);
    assertThat(why).isNotEmpty().allMatch(c -> c.share() > 0);
    assertThat(why.stream().mapToDouble(Contribution::share).sum()).isCloseTo(1, within(1e-9));
    assertThat(why).extracting(Contribution::source).doesNotHaveDuplicates();
    assertThat(why).extracting(Contribution::source).allMatch(sources::contains);
    // What is shared out is all of the variance: nothing of it goes unbooked, nothing twice.
    double variance = Math.pow(line.now(figure).orElseThrow().sd(), 2);
    assertThat(((JointOfLines) line.joint()).booked(figure))
        .isCloseTo(variance, withinPercentage(0.01));
  }

  private static Set<Source> sources(FieldBook book) {
    Set<Source> sources = new HashSet<>();
    for (Priors.Kind kind : Priors.Kind.values()) {
      sources.add(new Source.OfPrior(kind));
    }
    take(book.site().nodes(), Source.Sort.NODE, sources);
    take(book.site().reaches(), Source.Sort.REACH, sources);
    take(book.visits(), Source.Sort.VISIT, sources);
    for (Visit visit : book.visits()) {
      take(visit.passes(), Source.Sort.PASS, sources);
      take(visit.locates(), Source.Sort.LOCATE, sources);
      take(visit.exposures(), Source.Sort.EXPOSURE, sources);
      take(visit.ties(), Source.Sort.TIE, sources);
      take(visit.levels(), Source.Sort.LEVEL, sources);
      for (Pass pass : visit.passes()) {
        take(pass.findings(), Source.Sort.FINDING, sources);
        take(pass.bends(), Source.Sort.BEND, sources);
        take(pass.counterChecks(), Source.Sort.COUNTER_CHECK, sources);
      }
    }
    return sources;
  }

  private static void take(List<? extends Entry> entries, Source.Sort sort, Set<Source> sources) {
    for (Entry entry : entries) {
      for (Source.Part part : Source.Part.values()) {
        sources.add(new Source.OfEntry(entry.id(), sort, part));
      }
    }
  }

  /** One label in two sections: each entry answers for itself. */
  @Test
  void entriesOfOneLabelAreNotMixed() {
    Push bent = Flat.push().bend(9, 0.4, Bend.Sense.RIGHT);
    Line line = Flat.line(Flat.book(bent, d -> Flat.locate(d, "P1-B1", 12), 4, 9, 16));

    List<Contribution> why = line.why(new Wanted.Across(new Place("R1", 11)));

    assertThat(share(why, Source.Sort.BEND, "P1-B1")).isPositive();
    assertThat(share(why, Source.Sort.LOCATE, "P1-B1")).isPositive();
  }

  private static double share(List<Contribution> why, Source.Sort sort, String label) {
    return why.stream()
        .filter(
            c ->
                c.source() instanceof Source.OfEntry entry
                    && entry.sort() == sort
                    && entry.id().label().equals(label))
        .mapToDouble(Contribution::share)
        .sum();
  }

  /** A tape held against the counter takes its share from what is usual of counters. */
  @Test
  void aCounterCheckAnswersForTheScaleItPutRight() {
    Push checked = Flat.push().check(10, 10.05);
    Wanted length = new Wanted.Length("R1");

    List<Contribution> plain = Flat.line(Flat.book(Flat.push(), 4, 9)).why(length);
    List<Contribution> with = Flat.line(Flat.book(checked, 4, 9)).why(length);

    assertThat(share(plain, Source.Sort.COUNTER_CHECK, "P1-K1")).isZero();
    assertThat(share(with, Source.Sort.COUNTER_CHECK, "P1-K1")).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.5, 7, 11, 14, 18.5})
  void oneMoreLocateWidensNoRegion(double at) {
    Line few = Flat.line(Flat.book(Flat.push(), 4, 9, 16));
    Line more = Flat.line(Flat.book(Flat.push(), d -> Flat.locate(d, "L9", at), 4, 9, 16));

    List<Station> before = stations(few);
    List<Station> after = stations(more);
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      for (double bearing = 0; bearing < Math.PI; bearing += 0.3) {
        assertThat(after.get(i).along(bearing))
            .isLessThanOrEqualTo(before.get(i).along(bearing) * 1.001);
      }
      assertThat(sd(known(after.get(i).depth())))
          .isLessThanOrEqualTo(sd(known(before.get(i).depth())) * 1.001);
    }
  }

  private static double sd(Measured measured) {
    return measured.sd();
  }

  /**
   * The lens at each locate is as far from the one end as from the other, and the transmitter sits
   * at the lens; pulling, so that no slack tells which end was entered.
   */
  @Test
  void aPassFromTheOtherEndTellsTheSameCourse() {
    Line there = Flat.line(bent(false));
    Line back = Flat.line(bent(true));

    List<Station> here = stations(there);
    List<Station> other = stations(back);
    assertThat(other).hasSameSizeAs(here);
    for (int i = 0; i < here.size(); i++) {
      // The bend itself was seen while pushing, and its slack tells the ends apart by that much.
      assertThat(other.get(i).spot().distanceTo(here.get(i).spot())).isLessThan(0.04);
      // Right at the bend the pipe has two directions, and so a place along it two spreads.
      if (Math.abs(here.get(i).place().distance() - 8.1) < 0.3) {
        continue;
      }
      assertThat(other.get(i).spread().xx()).isCloseTo(here.get(i).spread().xx(), within(2e-4));
      assertThat(other.get(i).spread().yy()).isCloseTo(here.get(i).spread().yy(), within(2e-4));
      assertThat(known(other.get(i).depth()).value())
          .isCloseTo(known(here.get(i).depth()).value(), within(0.01));
    }
  }

  static FieldBook bent(boolean back) {
    Reading none = new Reading(0, 1e-6, "0");
    Draft draft = Flat.ground().kit(none, none).reach("R1", "N1", "N2");
    Push push = new Push("P1", back ? "N2" : "N1", "R1");
    push.node(20, back ? "N1" : "N2", Finding.Moving.PULLING);
    push.bend(back ? 20 - 8.1 : 8.1, Math.PI / 4, back ? Bend.Sense.LEFT : Bend.Sense.RIGHT);
    draft.pass(push);
    double[] at = {2, 6, 11, 15, 19};
    for (int i = 0; i < at.length; i++) {
      String label = "L" + (i + 1);
      double beyond = Math.max(0, at[i] - 8.1) * Math.sqrt(0.5);
      draft.locate(
          label,
          "P1",
          back ? 20 - at[i] : at[i],
          Flat.depth(at[i]),
          "yard",
          Finding.Moving.PULLING);
      draft.along(label, 3 + beyond, 2 + Math.min(at[i], 8.1) + beyond);
    }
    return draft.book();
  }
}
