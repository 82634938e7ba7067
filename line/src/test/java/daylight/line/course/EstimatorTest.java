package daylight.line.course;

import static daylight.line.course.Draft.metres;
import static daylight.line.course.Flat.line;
import static daylight.line.course.Flat.nearest;
import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Tie;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.counter.Tracks;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the estimate makes of things that happen on site. */
class EstimatorTest {
  private static final double EIGHTH_TURN = Math.PI / 4;

  private static Statement missing(Line line, String reach) {
    return ((Run.Path.NotFound) line.findRun(reach).orElseThrow().path()).missing();
  }

  private static void spot(Station station, double out, double along, double tolerance) {
    assertThat(station.spot().x()).isCloseTo(-out, within(tolerance));
    assertThat(station.spot().y()).isCloseTo(along, within(tolerance));
  }

  @Test
  void aStraightPipeLiesWhereItWasFound() {
    Line line = line(Flat.book(Flat.push(), 3, 8, 13, 18));

    Station middle = nearest(line, "R1", 10);
    spot(middle, 2 + middle.place().distance(), 3, 0.12);
    assertThat(known(middle.depth()).value()).isCloseTo(Flat.depth(10), within(0.03));
    assertThat(line.doubts()).isEmpty();
  }

  @Test
  void aBendSeenTurnsTheLineTheWayItWasSeen() {
    for (Bend.Sense sense : List.of(Bend.Sense.RIGHT, Bend.Sense.LEFT)) {
      Line line = line(Flat.book(Flat.push().bend(10, EIGHTH_TURN, sense), 2, 5, 8));
      double turned = sense == Bend.Sense.RIGHT ? 1 : -1;

      // Going west, right is north.
      Station end = nearest(line, "R1", 20);
      double beyond = 10 * Math.sqrt(0.5);
      spot(end, 12 + beyond, 3 + turned * beyond, 0.5);
    }
  }

  @Test
  void twoBendsOfOnePassCloseTogetherBothTurnIt() {
    Push push =
        Flat.push()
            .bend(10, EIGHTH_TURN, Bend.Sense.RIGHT)
            .bend(10.6, EIGHTH_TURN, Bend.Sense.RIGHT);

    Station end = nearest(line(Flat.book(push, 2, 5, 8)), "R1", 20);

    assertThat(end.bearing()).isCloseTo(0, within(0.1));
  }

  @Test
  void aBendOfUnknownPlaneGoesWhereTheLocatesBeyondItLie() {
    Push push = Flat.push().head(Pass.Head.UNKNOWN).bend(10, EIGHTH_TURN, Bend.Sense.LEFT);
    double beyond = 8 * Math.sqrt(0.5);
    FieldBook book =
        Flat.book(
            push,
            draft ->
                draft.locate("L8", "P1", 18, Flat.depth(18)).along("L8", 3 + beyond, 12 + beyond),
            3,
            8);

    Line line = line(book);

    spot(nearest(line, "R1", 18), 12 + beyond, 3 + beyond, 0.25);
    assertThat(line.doubts()).isEmpty();
  }

  @Test
  void aBendOfUnknownPlaneBeyondTheLastLocateLeavesBothSidesOpen() {
    Push push = Flat.push().head(Pass.Head.UNKNOWN).bend(10, EIGHTH_TURN, Bend.Sense.LEFT);

    Station end = nearest(line(Flat.book(push, 2, 5, 8)), "R1", 20);

    for (double side : new double[] {-1, 1}) {
      double off = end.spot().y() - (3 + side * 10 * Math.sqrt(0.5));
      assertThat(Math.abs(off)).isLessThan(Measured.Z95 * end.along(0));
    }
  }

  @Test
  void aMissedBendIsFoundBetweenTheRightTwo() {
    double beyond = Math.sqrt(0.5);
    FieldBook book =
        Flat.book(
            Flat.push(),
            draft -> {
              for (int i = 0; i < 2; i++) {
                double after = (3 + 6 * i) * beyond;
                taped(draft, "M" + (i + 1), 13 + 6 * i, 3 + after, 12 + after);
                taped(draft, "K" + (i + 1), 1 + 6 * i, 3, 3 + 6 * i);
              }
            });

    Line line = line(book);

    List<Statement> doubts =
        line.doubts().stream().filter(d -> d.key() == CourseKey.UNSEEN_BEND).toList();
    assertThat(doubts).hasSize(1);
    assertThat(doubts.getFirst().arguments().subList(0, 2))
        .containsExactly(new Argument.Label("K2"), new Argument.Label("M1"));
  }

  /** A locate tied by tapes from both ends of the wall. */
  private static void taped(Draft draft, String label, double cable, double along, double out) {
    draft.locate(label, "P1", cable, 0.6);
    draft.tape("A", label, Math.hypot(along, out));
    draft.tape("B", label, Math.hypot(10 - along, out));
    draft.tie(new Tie.Side(draft.tieId(), label, "A", "B", true));
  }

  @Test
  void aCounterThatSlippedForwardIsPutRight() {
    Push push =
        new Push("P1", "N1", "R1")
            .reset(10, 12)
            .end(22, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 22, Pass.Clarity.CLEAR);
    Draft draft = Flat.ground().reach("R1", "N1", "N2").pass(push);
    for (double at : new double[] {4, 9, 14, 18}) {
      String label = "L" + (int) at;
      draft.locate(label, "P1", at > 10 ? at + 2 : at, Flat.depth(at)).along(label, 3, 2 + at);
    }

    Line line = line(draft.book());

    assertThat(known(line.findRun("R1").orElseThrow().length()).value())
        .isCloseTo(20, within(0.15));
    assertThat(line.doubts()).isEmpty();
  }

  @Test
  void aPulledCableHasNoSlackAndAPushedOneHas() {
    Push push = Flat.push();
    for (Finding.Moving moving : Finding.Moving.values()) {
      push.finding("roots", new Where.AtCable(metres(15)), moving, Map.of(), Map.of(), null);
    }

    List<PlacedFinding> placed = line(Flat.book(push, 3, 18)).findings();

    assertThat(placed.get(0).from().distance()).isLessThan(placed.get(1).from().distance());
    assertThat(placed.get(1).from().distance() - placed.get(0).from().distance())
        .isCloseTo(15 * 0.004, within(0.02));
  }

  @Test
  void theTransmitterTrailsTheLens() {
    Draft draft = Flat.ground().kit(0.5, 0.0).reach("R1", "N1", "N2").pass(Flat.push());
    for (double at : new double[] {4, 9, 14}) {
      draft.locate("L" + (int) at, "P1", at + 0.5, Flat.depth(at)).along("L" + (int) at, 3, 2 + at);
    }

    Line line = line(draft.book());

    assertThat(line.locates())
        .allSatisfy(
            fit ->
                assertThat(fit.place().distance())
                    .isCloseTo(Double.parseDouble(fit.entry().label().substring(1)), within(0.1)));
    spot(nearest(line, "R1", 9), 11, 3, 0.2);
  }

  @Test
  void withoutLocatesTheCourseIsNotFoundAndSaysWhatIsMissing() {
    Line line = line(Flat.book(Flat.push()));

    assertThat(missing(line, "R1"))
        .isEqualTo(Statement.of(CourseKey.NO_SPOTS, new Argument.Label("main")));
    assertThat(known(line.findRun("R1").orElseThrow().length()).value()).isCloseTo(20, within(0.2));
  }

  @Test
  void oneLocateGivesNoDirection() {
    Line line = line(Flat.book(Flat.push(), 8));

    assertThat(missing(line, "R1").key()).isEqualTo(CourseKey.ONE_SPOT);
  }

  @Test
  void twoSpotsOfOnePlaceInThePipeGiveNoDirectionEither() {
    FieldBook book =
        Flat.book(Flat.push(), draft -> draft.locate("L2", "P1", 8, 1.0).along("L2", 5, 10), 8);

    assertThat(missing(line(book), "R1").key()).isEqualTo(CourseKey.ONE_SPOT);
  }

  @Test
  void passesFromBothEndsMeet() {
    Draft draft = Flat.ground().reach("R1", "N1", "N2");
    draft.pass(new Push("P1", "N1", "R1").end(12, Pass.Why.FRICTION, null));
    draft.pass(new Push("P2", "N2", "R1").end(13, Pass.Why.FRICTION, null));
    for (double at : new double[] {2, 6, 10}) {
      draft.locate("L" + (int) at, "P1", at, Flat.depth(at)).along("L" + (int) at, 3, 2 + at);
    }
    for (double at : new double[] {9, 14, 18}) {
      draft.locate("M" + (int) at, "P2", 20 - at, Flat.depth(at)).along("M" + (int) at, 3, 2 + at);
    }

    Line line = line(draft.book());

    assertThat(line.doubts()).isEmpty();
    Run run = line.findRun("R1").orElseThrow();
    for (Station station : run.stations()) {
      assertThat(station.spot().y()).isCloseTo(3, within(0.1));
    }
    for (LocateFit fit : line.locates()) {
      double from = nearest(line, "R1", fit.place().distance()).spot().x();
      assertThat(-from - 2)
          .isCloseTo(Double.parseDouble(fit.entry().label().substring(1)), within(0.3));
    }
  }

  @Test
  void aBranchThatNobodyLocatedIsNotFoundThoughTheMainIs() {
    Draft draft = junction();
    draft.pass(new Push("P2", "N3", "R3").end(6, Pass.Why.MAIN_REACHED, "J"));

    Line line = line(draft.book());

    assertThat(missing(line, "R3"))
        .isEqualTo(Statement.of(CourseKey.REACH_NOT_LOCATED, new Argument.Label("R3")));
    assertThat(line.findRun("R1").orElseThrow().stations()).isNotEmpty();
    assertThat(line.findRun("R2").orElseThrow().stations()).isNotEmpty();
  }

  /** The straight pipe with a junction at 12 m and a branch there. */
  private static Draft junction() {
    Draft draft =
        Flat.ground()
            .node("J", Node.Kind.JUNCTION)
            .node("N3", Node.Kind.ACCESS)
            .reach("R1", "N1", "J")
            .reach("R2", "J", "N2")
            .reach("R3", "N3", "J")
            .pass(
                new Push("P1", "N1", "R1", "R2")
                    .node(12, "J", Finding.Moving.PUSHING)
                    .end(20, Pass.Why.OUTLET_REACHED, "N2")
                    .sight(2, 17, Pass.Clarity.CLEAR)
                    .seen("roots", 11.5, Map.of())
                    .seen("crack", 14, Map.of())
                    .stretch("standing-water", 11, 13, Map.of()));
    for (double at : new double[] {3, 8, 15, 19}) {
      draft.locate("L" + (int) at, "P1", at, Flat.depth(at)).along("L" + (int) at, 3, 2 + at);
    }
    return draft;
  }

  @Test
  void findingsAndSightAreCutAtAJunction() {
    Line line = line(junction().book());

    Map<String, Place> from = new java.util.TreeMap<>();
    line.findings().forEach(p -> from.put(p.finding().kind(), p.from()));
    assertThat(known(from.get("roots")).reach()).isEqualTo("R1");
    assertThat(known(from.get("roots")).distance()).isCloseTo(11.5, within(0.1));
    assertThat(known(from.get("crack")).reach()).isEqualTo("R2");
    assertThat(known(from.get("crack")).distance()).isCloseTo(2, within(0.1));
    assertThat(line.sights()).extracting(s -> s.from().reach()).containsExactly("R1", "R2");
    double seen =
        line.sights().stream().mapToDouble(s -> s.to().distance() - s.from().distance()).sum();
    assertThat(seen).isCloseTo(15, within(0.2));
  }

  @Test
  void aStretchSeenAgainstTheWaterAcrossAJunctionStillStartsUpstream() {
    Draft draft = junction();
    draft.pass(
        new Push("P3", "N2", "R2", "R1")
            .node(8, "J", Finding.Moving.PUSHING)
            .stretch("grease", 7, 10, Map.of()));

    PlacedFinding grease =
        line(draft.book()).findings().stream()
            .filter(p -> p.finding().kind().equals("grease"))
            .findFirst()
            .orElseThrow();

    assertThat(grease.from().reach()).isEqualTo("R1");
    assertThat(known(grease.to()).reach()).isEqualTo("R2");
  }

  @Test
  void reachesThatDoNotHangTogetherAreEachOnTheirOwn() {
    FieldBook book =
        Flat.book(
            Flat.push(),
            draft ->
                draft
                    .node("N8", Node.Kind.ACCESS)
                    .node("N9", Node.Kind.OUTLET)
                    .reach("R9", "N8", "N9"),
            3,
            15);

    Line line = line(book);

    assertThat(line.findRun("R1").orElseThrow().stations()).isNotEmpty();
    assertThat(missing(line, "R9").key()).isEqualTo(CourseKey.NO_SPOTS);
  }

  @Test
  void twoReachesFromOneEntryAreFoundOnlyAsFarAsTheyWereLocated() {
    FieldBook book =
        Flat.book(
            Flat.push(),
            draft -> draft.node("N3", Node.Kind.ACCESS).reach("R2", "N3", "N1"),
            3,
            17);

    Line line = line(book);

    assertThat(line.findRun("R1").orElseThrow().stations()).isNotEmpty();
    assertThat(missing(line, "R2").key()).isEqualTo(CourseKey.REACH_NOT_LOCATED);
  }

  @Test
  void aFindingAtAMomentIsPlacedByTheTrackAndLeftOutWithoutOne() {
    Push push =
        Flat.push()
            .finding(
                "crack",
                new Where.AtMoment("F1", 30),
                Finding.Moving.PUSHING,
                Map.of(),
                Map.of(),
                null);
    FieldBook book = Flat.book(push, 3, 17);
    Track track =
        new Track(
            "F1",
            List.of(
                new Track.Sample(0, 0, Track.State.READ),
                new Track.Sample(60, 12, Track.State.READ)));

    Line line = Estimator.estimate(book, new Tracks(List.of(track)), TestPriors.shipped());

    assertThat(line(book).findings()).isEmpty();
    assertThat(line(book).doubts()).extracting(Statement::key).contains(CourseKey.MOMENT_UNPLACED);
    assertThat(line.doubts()).extracting(Statement::key).doesNotContain(CourseKey.MOMENT_UNPLACED);
    assertThat(line.findings()).hasSize(1);
    // Halfway between two readings 12 m apart: anywhere between them.
    assertThat(line.findings().getFirst().sd()).isGreaterThan(12 / Math.sqrt(12));
    assertThat(line.findings().getFirst().from().distance()).isCloseTo(6, within(0.1));
  }
}
