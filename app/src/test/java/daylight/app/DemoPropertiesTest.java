package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FileTrouble;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.sonde.Trap;
import daylight.line.survey.Covariance2;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The invented properties that come along: what is answered holds what was so when their readings
 * were made up, and says what the scenario means.
 */
class DemoPropertiesTest {
  /** Chi-squared of two degrees of freedom at 95 %, −2 ln 0.05. */
  private static final double ELLIPSE_95 = 5.991;

  private static final Path FOLDER =
      SourceTree.ofThisProject().file("app/src/main/resources/daylight/app/demo");

  static List<DemoTruth> properties() {
    return DemoTruth.ALL;
  }

  @Test
  void ofEveryPropertyItIsKnownWhatIsSo() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              DemoTruth.ALL.stream().map(truth -> truth.name() + ".yaml").toList());
    }
  }

  @ParameterizedTest
  @MethodSource("properties")
  void isInventedAndSaysSoInItsFirstLine(DemoTruth truth) throws IOException {
    assertThat(Files.readString(file(truth))).startsWith("# An invented scenario: nobody");
    Handout handout = answered(truth);
    assertThat(handout.book().site().invented()).isTrue();
    assertThat(handout.answers().opening().words()).isNotBlank();
    assertThat(visit(truth).papers().tickets()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("properties")
  void nothingContradictsAndOnlyFootageIsNotThere(DemoTruth truth) {
    Handout handout = answered(truth);
    // A sewer of cast iron weakens what a receiver hears; nothing in its book contradicts anything.
    assertThat(handout.line().doubts()).allMatch(doubt -> doubt.key() == Trap.IRON_PIPE);
    assertThat(handout.complaints()).allMatch(c -> c.code() == FileTrouble.FILE_MISSING);
  }

  @ParameterizedTest
  @MethodSource("properties")
  void theAnswerIsWhatTheScenarioMeans(DemoTruth truth) {
    Handout handout = answered(truth);
    assertThat(
            CorpusLine.of(new Job.Outcome.Answered(handout, new TreeMap<>(), List.of(), Map.of())))
        .isEqualTo(truth.answer());
    assertThat(handout.answers().lines().getFirst().to(Question.WHAT_NOW).state())
        .isEqualTo(State.ANSWERED);
  }

  @ParameterizedTest
  @MethodSource("properties")
  void everySpotLiesInItsRegionAndEveryDepthInItsInterval(DemoTruth truth) {
    for (DemoTruth.Spot spot : truth.spots()) {
      Station station = station(run(truth, spot.reach()), spot.distance() * truth.unit());
      double east = -spot.out() * truth.unit() - station.spot().x();
      double north = spot.along() * truth.unit() - station.spot().y();
      assertThat(inEllipse(station.spread(), east, north)).as("%s", spot).isLessThan(ELLIPSE_95);
      Measured depth = Objects.requireNonNull(station.depth());
      assertThat(spot.depth() * truth.unit())
          .as("depth at %s", spot)
          .isBetween(depth.lower95(), depth.upper95());
    }
  }

  /** How far off a spot is, in squared standard uncertainties. */
  private static double inEllipse(Covariance2 c, double east, double north) {
    double determinant = c.xx() * c.yy() - c.xy() * c.yx();
    return (c.yy() * east * east - (c.xy() + c.yx()) * east * north + c.xx() * north * north)
        / determinant;
  }

  /** The pipe at a distance, by the two stations on either side of it. */
  private static Station station(Run run, double distance) {
    List<Station> all = run.stations();
    int next = 1;
    while (next < all.size() - 1 && all.get(next).place().distance() < distance) {
      next++;
    }
    Station a = all.get(next - 1);
    Station b = all.get(next);
    double share =
        (distance - a.place().distance()) / (b.place().distance() - a.place().distance());
    Station near = share < 0.5 ? a : b;
    return new Station(
        run.at(distance),
        new daylight.line.survey.PlanPoint(
            a.spot().x() + share * (b.spot().x() - a.spot().x()),
            a.spot().y() + share * (b.spot().y() - a.spot().y())),
        near.spread(),
        near.bearing(),
        near.bearingSd(),
        near.invert(),
        near.ground(),
        near.depth());
  }

  @ParameterizedTest
  @MethodSource("properties")
  void everyLengthAndEveryFindingIsWhereItIs(DemoTruth truth) {
    for (DemoTruth.Seen length : truth.lengths()) {
      Measured said = Objects.requireNonNull(run(truth, length.reach()).length());
      assertThat(length.distance() * truth.unit())
          .as("%s", length)
          .isBetween(said.lower95(), said.upper95());
    }
    for (DemoTruth.Seen seen : truth.seen()) {
      PlacedFinding placed =
          answered(truth).line().findings().stream()
              .filter(p -> p.finding().label().equals(seen.label()))
              .findFirst()
              .orElseThrow();
      assertThat(placed.from().reach()).as("%s", seen).isEqualTo(seen.reach());
      Measured said = new Measured(placed.from().distance(), placed.sd());
      assertThat(seen.distance() * truth.unit())
          .as("%s", seen)
          .isBetween(said.lower95(), said.upper95());
    }
  }

  @ParameterizedTest
  @MethodSource("properties")
  void everyPassHasFootageThatRunsFromItsZeroToItsEnd(DemoTruth truth) {
    List<Papers.Media> media = visit(truth).papers().media();
    for (Pass pass : visit(truth).passes()) {
      List<Pass.Anchor> anchors = pass.anchors();
      assertThat(media)
          .filteredOn(each -> pass.label().equals(each.pass()))
          .singleElement()
          .satisfies(each -> assertThat(anchors).allMatch(a -> a.media().equals(each.label())));
      assertThat(anchors).extracting(Pass.Anchor::seconds).isSorted().doesNotHaveDuplicates();
      assertThat(anchors).extracting(a -> a.counter().value()).isSorted();
      assertThat(anchors.getFirst().counter().value()).isZero();
      assertThat(anchors.getFirst().seconds()).isEqualTo(2);
      Pass.End end = Objects.requireNonNull(pass.end());
      assertThat(anchors.getLast().counter().value()).isEqualTo(end.cable().value());
    }
  }

  /** So that there is a still picture of each, taken while nothing moved. */
  @ParameterizedTest
  @MethodSource("properties")
  void theFootageRestsAtEveryFindingAndBend(DemoTruth truth) {
    for (Pass pass : visit(truth).passes()) {
      TreeSet<Double> looked = new TreeSet<>();
      pass.findings().forEach(finding -> looked.add(cable(finding, pass)));
      pass.bends().stream().map(Bend::cable).forEach(cable -> looked.add(cable.value()));
      for (double cable : looked) {
        List<Double> at =
            pass.anchors().stream()
                .filter(anchor -> Math.abs(anchor.counter().value() - cable) < 1e-9)
                .map(Pass.Anchor::seconds)
                .toList();
        assertThat(at).as("%s at %s m", pass.label(), cable).hasSize(2);
        assertThat(at.getLast() - at.getFirst()).isBetween(1.9, 3.1);
      }
    }
  }

  private static double cable(Finding finding, Pass pass) {
    return switch (finding.where()) {
      case Where.AtCable(var cable) -> cable.value();
      case Where.FromTo(var from, var to) -> from.value();
      case Where.AtMoment(String media, double seconds) ->
          Track.ofAnchors(pass, media).orElseThrow().counterAt(seconds).orElseThrow().value();
    };
  }

  private static Path file(DemoTruth truth) {
    return FOLDER.resolve(truth.name() + ".yaml");
  }

  private static Handout answered(DemoTruth truth) {
    if (Job.answer(file(truth), Job.Settings.USUAL)
        instanceof Job.Outcome.Answered(var handout, var _, var _, var _, var _)) {
      return handout;
    }
    throw new AssertionError(truth.name() + " is refused");
  }

  private static Visit visit(DemoTruth truth) {
    FieldBook book = answered(truth).book();
    return book.visits().getLast();
  }

  private static Run run(DemoTruth truth, String reach) {
    return answered(truth).line().findRun(reach).orElseThrow();
  }
}
