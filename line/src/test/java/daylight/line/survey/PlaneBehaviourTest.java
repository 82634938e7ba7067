package daylight.line.survey;

import static daylight.line.survey.Networks.adjusted;
import static daylight.line.survey.Networks.and;
import static daylight.line.survey.Networks.assertAt;
import static daylight.line.survey.Networks.fixed;
import static daylight.line.survey.Networks.network;
import static daylight.line.survey.Networks.side;
import static daylight.line.survey.Networks.tape;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Behaviour: what a technician would expect of simple networks. Distances in metres. */
class PlaneBehaviourTest {
  private static final double SD = 0.015;

  /** A house corner at the zero, the next corner 8 m north of it. */
  private static final List<Sighting> WALL = List.of(tape("A", "B", 8, SD));

  @Test
  void originIsTheFirstBaseLandmarkAndNorthTowardTheSecond() {
    Adjusted adjusted = adjusted(WALL, "A", "B");
    assertAt(adjusted, "A", 0, 0, 1e-12);
    assertAt(adjusted, "B", 0, 8, 1e-9);
    assertThat(adjusted.covariance("B", "B").yy()).isCloseTo(SD * SD, within(1e-12));
    assertThat(adjusted.covariance("B", "B").xx()).isZero();
    assertThat(adjusted.fit().unchecked()).containsExactly("A–B");
    assertThat(adjusted.fit().sigma0Ratio()).isEmpty();
  }

  @Test
  void oneWallSoFarAlongAndSoFarOutNeedsNothingElse() {
    Adjusted adjusted =
        adjusted(List.of(new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, 0.02, 0.03)), "A", "B");
    assertAt(adjusted, "L1", -2, 3, 1e-9);
    Covariance2 covariance = adjusted.covariance("L1", "L1");
    assertThat(covariance.xx()).isCloseTo(0.03 * 0.03, within(1e-12));
    assertThat(covariance.yy()).isCloseTo(0.02 * 0.02, within(1e-12));
    assertThat(adjusted.undetermined())
        .containsExactly(
            new Undetermined.Untied("B", Undetermined.Reason.DISTANCE_UNKNOWN, List.of("L1")));
  }

  @Test
  void standingWithTheBackToTheWallAlongRunsToTheRight() {
    // The wall runs east from its zero corner and is looked at from the north.
    Adjusted adjusted =
        adjusted(
            List.of(
                fixed("W", 10, 20),
                fixed("V", 18, 20),
                new Sighting.AlongOut("P", "W", "V", "P", 3, 2, SD, SD)));
    assertAt(adjusted, "P", 13, 22, 1e-9);
  }

  @Test
  void aTwoTiePointHasTwoMirrorPositionsAndIsAskedAbout() {
    Adjusted adjusted =
        adjusted(and(WALL, tape("A", "L1", 5, SD), tape("B", "L1", 5, SD)), "A", "B");
    assertThat(adjusted.points()).containsOnlyKeys("A", "B");
    assertThat(adjusted.undetermined()).hasSize(1);
    var mirror = (Undetermined.Mirror) adjusted.undetermined().getFirst();
    assertThat(mirror.point()).isEqualTo("L1");
    assertThat(mirror.entries()).containsExactly("A–L1", "B–L1");
    assertThat(mirror.candidates()).hasSize(2);
    assertThat(mirror.candidates().get(0).distanceTo(new PlanPoint(-3, 4))).isLessThan(1e-6);
    assertThat(mirror.candidates().get(1).distanceTo(new PlanPoint(3, 4))).isLessThan(1e-6);
  }

  @Test
  void aSideDecidesBetweenMirrorPositions() {
    List<Sighting> ties = and(WALL, tape("A", "L1", 5, SD), tape("B", "L1", 5, SD));
    assertAt(adjusted(and(ties, side("L1", "A", "B", Hand.RIGHT)), "A", "B"), "L1", 3, 4, 1e-9);
    Adjusted left = adjusted(and(ties, side("L1", "A", "B", Hand.LEFT)), "A", "B");
    assertAt(left, "L1", -3, 4, 1e-9);
    assertThat(left.contradictedSides()).isEmpty();
  }

  @Test
  void aThirdTieDecidesBetweenMirrorPositions() {
    List<Sighting> ties =
        and(
            WALL,
            new Sighting.AlongOut("C", "A", "B", "C", 2, 6, SD, SD),
            tape("A", "L1", 5, SD),
            tape("B", "L1", 5, SD),
            tape("C", "L1", Math.hypot(3, 2), SD));
    assertAt(adjusted(ties, "A", "B"), "L1", -3, 4, 1e-6);
  }

  @Test
  void aTieBetweenTwoMirrorPointsLeavesTheNetworkItsOwnMirror() {
    List<Sighting> ties =
        and(
            WALL,
            tape("A", "L1", 5, SD),
            tape("B", "L1", 5, SD),
            tape("A", "L2", 10, SD),
            tape("B", "L2", Math.hypot(6, 0), SD),
            tape("L1", "L2", 5, SD));
    Adjusted asked = adjusted(ties, "A", "B");
    assertThat(asked.undetermined()).extracting(Undetermined::point).containsExactly("L1", "L2");
    assertThat(asked.undetermined()).allMatch(Undetermined.Mirror.class::isInstance);
    Adjusted told = adjusted(and(ties, side("L2", "A", "B", Hand.RIGHT)), "A", "B");
    assertAt(told, "L1", 3, 4, 1e-6);
    assertAt(told, "L2", 6, 8, 1e-6);
  }

  @Test
  void aSideThatTheTiesContradictIsReported() {
    Adjusted adjusted =
        adjusted(
            and(
                WALL,
                new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, SD, SD),
                side("L1", "A", "B", Hand.RIGHT)),
            "A",
            "B");
    assertAt(adjusted, "L1", -2, 3, 1e-9);
    assertThat(adjusted.contradictedSides()).containsExactly("side of L1");
  }

  @Test
  void aSideThatIsContradictedDoesNotSilenceTheOthers() {
    Adjusted adjusted =
        adjusted(
            and(
                WALL,
                new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, SD, SD),
                side("L1", "A", "B", Hand.RIGHT),
                tape("A", "L2", 5, SD),
                tape("B", "L2", 5, SD),
                side("L2", "A", "B", Hand.RIGHT)),
            "A",
            "B");
    assertThat(adjusted.contradictedSides()).containsExactly("side of L1");
    assertAt(adjusted, "L2", 3, 4, 1e-9);
  }

  @Test
  void anApproximatePlaceDecidesBetweenMirrorPositionsAndIsNoObservation() {
    List<Sighting> ties = and(WALL, tape("A", "L1", 5, SD), tape("B", "L1", 5, SD));
    Adjusted adjusted =
        adjusted(
            new PlaneNetwork(
                ties,
                List.of("A", "B"),
                List.of(),
                Map.of("L1", new PlanPoint(7, 0)),
                Snooping.USUAL));
    assertAt(adjusted, "L1", 3, 4, 1e-9);
    assertThat(adjusted.fit().dof()).isZero();
  }

  /** Two points that only reach each other and one landmark each: a rigid figure, but no start. */
  @Test
  void anApproximatePlaceIsAStartWhereNothingElseGivesOne() {
    var p = new PlanPoint(5, 3);
    var q = new PlanPoint(9, 4);
    var r = new PlanPoint(6, 7);
    List<Sighting> ties =
        List.of(
            fixed("A", 0, 0),
            fixed("B", 12, 1),
            fixed("C", 4, 12),
            tape("A", "P", p.distanceTo(new PlanPoint(0, 0)), SD),
            tape("B", "Q", q.distanceTo(new PlanPoint(12, 1)), SD),
            tape("C", "R", r.distanceTo(new PlanPoint(4, 12)), SD),
            tape("P", "Q", p.distanceTo(q), SD),
            tape("Q", "R", q.distanceTo(r), SD),
            tape("R", "P", r.distanceTo(p), SD));
    assertThat(Surveyor.adjust(network(ties))).isInstanceOf(Unadjustable.class);
    Adjusted adjusted =
        adjusted(
            new PlaneNetwork(
                ties,
                List.of(),
                List.of(),
                Map.of(
                    "P", new PlanPoint(4.6, 3.3),
                    "Q", new PlanPoint(9.3, 4.4),
                    "R", new PlanPoint(6.2, 6.5)),
                Snooping.USUAL));
    assertAt(adjusted, "P", 5, 3, 1e-6);
    assertAt(adjusted, "R", 6, 7, 1e-6);
  }

  @Test
  void landmarksAllInARowCannotTellOneSideFromTheOther() {
    Adjusted adjusted =
        adjusted(
            and(
                WALL,
                new Sighting.AlongOut("C", "A", "B", "C", 14, 0, SD, SD),
                tape("A", "L1", 5, SD),
                tape("B", "L1", 5, SD),
                tape("C", "L1", Math.hypot(3, 10), SD)),
            "A",
            "B");
    assertAt(adjusted, "C", 0, 14, 1e-6);
    assertThat(adjusted.undetermined()).singleElement().isInstanceOf(Undetermined.Mirror.class);
  }

  @Test
  void aPointTapedInLineWithItsLandmarksIsTooFlat() {
    Adjusted adjusted =
        adjusted(and(WALL, tape("A", "C", 3, SD), tape("B", "C", 5.01, SD)), "A", "B");
    assertThat(adjusted.undetermined())
        .singleElement()
        .isEqualTo(
            new Undetermined.Untied("C", Undetermined.Reason.TOO_FLAT, List.of("A–C", "B–C")));
  }

  @Test
  void undeterminedPointsDoNotSinkTheRest() {
    Adjusted adjusted =
        adjusted(
            and(
                WALL,
                new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, SD, SD),
                tape("L1", "L2", 4, SD),
                tape("L8", "L9", 4, SD),
                new Sighting.Gnss("G", "L7", 0.7, 0.1, 1, 1, 0)),
            "A",
            "B");
    assertThat(adjusted.points()).containsOnlyKeys("A", "B", "L1");
    assertThat(adjusted.undetermined())
        .containsExactly(
            new Undetermined.Untied("L2", Undetermined.Reason.ONE_TIE_ONLY, List.of("L1–L2")),
            new Undetermined.Untied("L7", Undetermined.Reason.FIX_NOT_TIED, List.of("G")),
            new Undetermined.Untied("L8", Undetermined.Reason.NOT_REACHED, List.of("L8–L9")),
            new Undetermined.Untied("L9", Undetermined.Reason.NOT_REACHED, List.of("L8–L9")));
  }

  @Test
  void oneFixedPointAndABearingGiveTheGrid() {
    Adjusted adjusted =
        adjusted(
            List.of(
                fixed("F", 100, 200),
                new Sighting.Bearing("F>B", "F", "B", Math.toRadians(90), 1e-4),
                tape("F", "B", 10, SD)));
    assertAt(adjusted, "B", 110, 200, 1e-9);
    assertThat(adjusted.covariance("B", "B").yy()).isCloseTo(1e-6, within(1e-12));
  }

  @Test
  void oneFixedPointWithoutABearingLooksNorthToABaseLandmark() {
    Adjusted adjusted = adjusted(List.of(fixed("F", 100, 200), tape("F", "B", 10, SD)), "F", "B");
    assertAt(adjusted, "B", 100, 210, 1e-9);
  }

  @Test
  void anglesAndResectionPlaceAPoint() {
    double x = 4;
    double y = 3;
    var point = new PlanPoint(x, y);
    var a = new PlanPoint(0, 0);
    var b = new PlanPoint(0, 8);
    var c = new PlanPoint(12, 9);
    Adjusted adjusted =
        adjusted(
            List.of(
                fixed("A", 0, 0),
                fixed("B", 0, 8),
                fixed("C", 12, 9),
                new Sighting.Angle(
                    "a1", "P", "A", "B", point.bearingTo(b) - point.bearingTo(a), 1e-4),
                new Sighting.Angle(
                    "a2", "P", "B", "C", point.bearingTo(c) - point.bearingTo(b), 1e-4)));
    assertAt(adjusted, "P", x, y, 1e-6);
  }

  @Test
  void aDropOnASketchDecidesTheSide() {
    Adjusted adjusted =
        adjusted(
            and(
                WALL,
                tape("A", "L1", 5, SD),
                tape("B", "L1", 5, SD),
                new Sighting.Sketched("sketch", "L1", 2, 5, 1)),
            "A",
            "B");
    assertAt(adjusted, "L1", 3, 4, 0.01);
  }

  @Test
  void theCornerOfAWallFollowsFromAPointBesideIt() {
    Adjusted adjusted =
        adjusted(
            List.of(
                fixed("A", 0, 0),
                fixed("P", -2, 3),
                new Sighting.AlongOut("P", "A", "B", "P", 3, 2, SD, SD),
                tape("A", "B", 8, SD)));
    assertAt(adjusted, "B", 0, 8, 1e-6);
  }

  @Test
  void aBaseNobodyTapedIsAskedForByName() {
    Adjusted adjusted =
        adjusted(
            List.of(
                new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, SD, SD),
                tape("A", "L2", 5, SD),
                tape("B", "L2", 5, SD)),
            "A",
            "B");
    assertAt(adjusted, "L1", -2, 3, 1e-9);
    assertThat(adjusted.undetermined())
        .containsExactly(
            new Undetermined.Untied(
                "B", Undetermined.Reason.DISTANCE_UNKNOWN, List.of("B–L2", "L1")),
            new Undetermined.Untied(
                "L2", Undetermined.Reason.ONE_TIE_ONLY, List.of("A–L2", "B–L2")));
  }

  @Test
  void oneDirectionSetOverTwoLandmarksAndATapePlaceAPoint() {
    var p = new PlanPoint(4, 3);
    Adjusted adjusted =
        adjusted(
            List.of(
                fixed("A", 0, 0),
                fixed("B", 0, 8),
                new Sighting.Direction("d1", "s", "P", "A", 1, 1e-4),
                new Sighting.Direction(
                    "d2",
                    "s",
                    "P",
                    "B",
                    1 + p.bearingTo(new PlanPoint(0, 8)) - p.bearingTo(new PlanPoint(0, 0)),
                    1e-4),
                tape("A", "P", 5, SD)));
    // The circles meet once more, but from there the angle is read half a turn off.
    assertThat(adjusted.undetermined()).isEmpty();
    assertAt(adjusted, "P", 4, 3, 1e-6);
  }

  @Test
  void baseLandmarksOnOneSpotAreRefused() {
    assertThat(Surveyor.adjust(network(List.of(tape("A", "B", 0, SD)), "A", "B")))
        .isEqualTo(new Unadjustable(Unadjustable.Reason.BASE_COINCIDENT, List.of()));
  }

  @Test
  void withoutADatumNothingIsAdjusted() {
    assertThat(Surveyor.adjust(network(WALL)))
        .isEqualTo(new Unadjustable(Unadjustable.Reason.DATUM_MISSING, List.of()));
    assertThat(Surveyor.adjust(network(List.of(), "A", "B")))
        .isEqualTo(new Unadjustable(Unadjustable.Reason.NOTHING_TO_ADJUST, List.of()));
  }

  @Test
  void nothingReachedAndNothingButMirrorsAreToldApart() {
    assertThat(Surveyor.adjust(network(List.of(tape("C", "D", 3, SD)), "A", "B")))
        .isInstanceOfSatisfying(
            Unadjustable.class,
            u -> assertThat(u.reason()).isEqualTo(Unadjustable.Reason.POINT_NOT_REACHED));
    List<Sighting> mirrored =
        List.of(fixed("A", 0, 0), fixed("B", 0, 8), tape("A", "L1", 5, SD), tape("B", "L1", 5, SD));
    assertThat(Surveyor.adjust(network(mirrored)))
        .isInstanceOfSatisfying(
            Unadjustable.class,
            u -> {
              assertThat(u.reason()).isEqualTo(Unadjustable.Reason.MIRROR_UNRESOLVED);
              assertThat(u.undetermined()).singleElement().isInstanceOf(Undetermined.Mirror.class);
            });
  }
}
