package daylight.line.dig;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Material;
import daylight.line.book.Papers;
import daylight.line.book.Place;
import daylight.line.course.Draft;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.TestPriors;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.PlanPoint;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a crew is told before it digs. */
class DiggerTest {
  private static Papers.Ticket ticket(String number, @Nullable String expires) {
    return new Papers.Ticket(
        Draft.id("ticket", number),
        number,
        null,
        expires == null ? null : LocalDate.parse(expires));
  }

  private static DigTicket ticket(List<Papers.Ticket> tickets) {
    FieldBook book = Yard.with(Yard.book(draft -> {}), Yard.papers(tickets, List.of()));
    return Yard.target(book, 9).ticket();
  }

  @Test
  void theTicketIsHeldAgainstTheDay() {
    assertThat(ticket(List.of())).isEqualTo(new DigTicket.None());
    assertThat(ticket(List.of(ticket("X-1", "2026-04-20"))))
        .isEqualTo(new DigTicket.Good("X-1", Yard.DAY));
    assertThat(ticket(List.of(ticket("X-1", "2026-04-19"))))
        .isEqualTo(new DigTicket.Expired("X-1", LocalDate.of(2026, 4, 19)));
    assertThat(ticket(List.of(ticket("X-1", null)))).isEqualTo(new DigTicket.Undated("X-1"));
    assertThat(
            ticket(
                List.of(
                    ticket("X-1", "2026-04-19"), ticket("X-2", "2026-05-01"), ticket("X-3", null))))
        .isEqualTo(new DigTicket.Good("X-2", LocalDate.of(2026, 5, 1)));
    assertThat(ticket(List.of(ticket("X-1", "2026-04-19"), ticket("X-3", null))))
        .isEqualTo(new DigTicket.Undated("X-3"));
  }

  @Test
  void theSpotIsOverThePipeAndFoundFromTheWall() {
    DigTarget target = Yard.target(Yard.book(draft -> {}), 5);
    TapeTies ties = known(target.ties());

    assertThat(target.spot().distanceTo(new PlanPoint(-7, 3))).isLessThan(0.2);
    assertThat(ties.first().landmark()).isEqualTo("A");
    assertThat(ties.second().landmark()).isEqualTo("B");
    assertThat(ties.first().length().value())
        .isCloseTo(target.spot().distanceTo(new PlanPoint(0, 0)), within(1e-9));
    assertThat(ties.left()).as("the yard is left of the wall from A to B").isTrue();
    TurnedTie turned = known(target.turned());
    double right = turned.right().value();
    double off = turned.distance().value();
    assertThat(turned.from()).isEqualTo("A");
    assertThat(off * Math.sin(right)).isCloseTo(target.spot().x(), within(1e-9));
    assertThat(off * Math.cos(right)).isCloseTo(target.spot().y(), within(1e-9));
  }

  @Test
  void aSpotFarFromAWallItAlonesHangsOnHasTapesThatMeetTooFlat() {
    DigTarget target = Yard.target(Yard.book(draft -> {}), 18.5);

    assertThat(target.ties()).isNull();
    assertThat(target.turned()).isNotNull();
    assertThat(target.told()).extracting(Statement::key).contains(DigKey.FLAT_TIES);
  }

  @Test
  void withoutASecondLandmarkNothingFindsTheSpotAgain() {
    FieldBook book = Yard.book(draft -> {});
    List<Landmark> one = book.site().landmarks().subList(0, 1);
    Line line = Yard.line(book);
    Dig dig =
        Digger.target(
            Yard.with(book, one, book.site().reaches()),
            line,
            TestPriors.shipped(),
            Yard.LIMITS,
            new Place("R1", 9),
            Yard.DAY);

    assertThat(dig).isInstanceOf(DigTarget.class);
    DigTarget target = (DigTarget) dig;
    assertThat(target.ties()).isNull();
    assertThat(target.turned()).isNull();
    assertThat(target.told()).extracting(Statement::key).contains(DigKey.FEW_LANDMARKS);
  }

  @Test
  void depthIsToldToTheTopOfTheBoreAndToItsBottom() {
    DigTarget target = Yard.target(Yard.book(draft -> {}), 9);
    Measured invert = known(target.invert());
    Measured crown = known(target.crown());

    assertThat(crown.value()).isCloseTo(invert.value() - 0.1, within(1e-9));
    assertThat(crown.sd()).isGreaterThan(invert.sd());
    assertThat(Yard.target(boreless(), 9).crown()).isNull();
    assertThat(Yard.target(boreless(), 9).told())
        .extracting(Statement::key)
        .contains(DigKey.NO_BORE);
  }

  private static FieldBook boreless() {
    FieldBook book = Yard.book(draft -> {});
    return Yard.with(
        book,
        book.site().landmarks(),
        List.of(Draft.pipe("R1", "N1", "N2", "main", Material.PVC, null)));
  }

  /** The limits are 1.219 m and 1.524 m; what counts is the deepest that it may well be. */
  @ParameterizedTest
  @CsvSource({"0.6, SHALLOW", "1.15, WAY_OUT", "1.25, WAY_OUT", "1.5, PROTECT", "2.5, PROTECT"})
  void wallsAreJudgedByTheDeepestThatItMayBe(double deep, DigTarget.Trench trench) {
    DigTarget target = Yard.target(Yard.book(deep, draft -> {}), 9);

    assertThat(known(target.invert()).value()).isCloseTo(deep, within(0.05));
    assertThat(target.trench()).isEqualTo(trench);
  }

  @Test
  void theBoxHoldsThePipeWithRoomToWork() {
    FieldBook book = Yard.book(draft -> {});
    DigTarget target = Yard.target(book, 5);
    DigTarget roomy =
        (DigTarget)
            Digger.target(
                book,
                Yard.line(book),
                TestPriors.shipped(),
                Yard.LIMITS.withMargin(0.5),
                new Place("R1", 5),
                Yard.DAY);

    assertThat(target.box().along()).isGreaterThan(0.6);
    assertThat(target.box().across()).isGreaterThan(0.6);
    assertThat(roomy.box().along()).isCloseTo(target.box().along() + 0.4, within(1e-9));
    assertThat(roomy.box().across()).isCloseTo(target.box().across() + 0.4, within(1e-9));
    assertThat(target.box().holds(target.spot())).isTrue();
    assertThat(Math.abs(Math.sin(target.box().bearing()))).isCloseTo(1, within(0.05));
  }

  @Test
  void aFindingIsAsUnsureAlongThePipeAsItsReading() {
    FieldBook book = Yard.book(draft -> {});
    Line line = Yard.line(book);
    PlacedFinding roots = line.findings().getFirst();
    DigTarget finding =
        (DigTarget) Digger.target(book, line, TestPriors.shipped(), Yard.LIMITS, roots, Yard.DAY);
    DigTarget place = Yard.target(book, roots.from().distance());

    assertThat(finding.box().along()).isGreaterThan(place.box().along());
    assertThat(finding.box().across()).isCloseTo(place.box().across(), within(0.01));
  }

  @Test
  void whatHasNoCourseOrLiesBeyondItIsNotDugFor() {
    FieldBook book = Yard.book(draft -> {});

    assertThat(Yard.dig(book, new Place("R1", 25)))
        .isInstanceOfSatisfying(
            Dig.Unknown.class, u -> assertThat(u.missing().key()).isEqualTo(DigKey.BEYOND));
    assertThat(Yard.dig(book, new Place("R9", 1)))
        .isInstanceOfSatisfying(
            Dig.Unknown.class, u -> assertThat(u.missing().key()).isEqualTo(DigKey.NO_COURSE));
  }

  private static Papers.ServiceMark mark(String label, Papers.Service service, String... points) {
    return new Papers.ServiceMark(Draft.id("service", label), service, List.of(points));
  }

  @Test
  void marksOfOthersAreToldNearestFirstAndThoseOfUnknownPlaceBeforeAll() {
    FieldBook book =
        Yard.with(
            Yard.book(
                draft ->
                    draft
                        .along("G1", 0, 7)
                        .along("G2", 8, 7)
                        .along("W1", 0, 8.2)
                        .along("W2", 8, 8.2)
                        .along("E1", 0, 15)
                        .along("E2", 8, 15)),
            Yard.papers(
                List.of(),
                List.of(
                    mark("power", Papers.Service.ELECTRIC, "E1", "E2"),
                    mark("water", Papers.Service.WATER, "W1", "W2"),
                    mark("gas", Papers.Service.GAS, "G1", "G2"),
                    mark("phone", Papers.Service.COMMUNICATION, "Q1"))));
    List<MarkNear> marks = Yard.target(book, 5).marks();

    assertThat(marks).extracting(MarkNear::label).containsExactly("phone", "gas", "water", "power");
    assertThat(marks.get(0).away()).isNull();
    assertThat(known(marks.get(1).away())).isEqualTo(0);
    assertThat(known(marks.get(2).away())).isBetween(0.3, 0.9);
    assertThat(known(marks.get(3).away())).isBetween(6.5, 7.7);
    assertThat(marks)
        .extracting(MarkNear::byHand)
        .containsExactly(true, true, near(marks.get(2)), false);
  }

  private static boolean near(MarkNear mark) {
    return known(mark.away()) <= Yard.LIMITS.nearMark();
  }

  /** The pipe runs west along 3 m; the fence runs from the wall outward along 3.4 m. */
  @Test
  void whoseGroundItIsHasAChance() {
    FieldBook book =
        Yard.book(
            draft ->
                Yard.fence(
                    draft,
                    "F",
                    Boundary.Kind.PROPERTY_LINE,
                    new double[] {3.25, 1},
                    new double[] {3.25, 22}));
    Line line = Yard.line(book);
    GroundSide side = Digger.sides(line, book.site(), new Place("R1", 9)).getFirst();
    Overlap overlap =
        Digger.overlap(line, line.runs().getFirst(), book.site().boundaries().getFirst())
            .orElseThrow();

    assertThat(side.left()).as("walking west, what is south is left").isBetween(0.8, 0.9999);
    assertThat(side.left() + side.right()).isEqualTo(1);
    assertThat(overlap.left()).isFalse();
    assertThat(overlap.beyond()).isBetween(1 - side.left(), 0.5);
  }

  @Test
  void clearanceIsToldWithItsIntervalAndTheChanceOfTooLittle() {
    FieldBook book =
        Yard.book(
            draft ->
                Yard.fence(
                    draft,
                    "W",
                    Boundary.Kind.FOUNDATION,
                    new double[] {5, 8},
                    new double[] {5, 14}));
    Clearance clearance =
        Digger.clearances(Yard.line(book), book.site(), new Place("R1", 9), 2).getFirst();

    assertThat(clearance.estimate()).isCloseTo(2, within(0.1));
    assertThat(clearance.least()).isLessThan(clearance.estimate());
    assertThat(clearance.most()).isGreaterThan(clearance.estimate());
    assertThat(clearance.nearer()).isBetween(0.2, 0.8);
    assertThatThrownBy(() -> Digger.clearances(Yard.line(book), book.site(), new Place("R1", 9), 0))
        .hasMessageContaining("limit");
  }

  @Test
  void aLocateThatHangsOnTheHouseAloneIsOfNoBetterLetterThanC() {
    FieldBook book = Yard.book(draft -> {});

    assertThat(Yard.target(book, 9).quality()).isEqualTo(LocatedQuality.C);
    assertThat(Yard.target(book, 19.8).quality()).isEqualTo(LocatedQuality.D);
  }

  @Test
  void limitsRefuseWhatIsNotPositive() {
    assertThatThrownBy(() -> Yard.LIMITS.withMargin(0)).hasMessageContaining("margin");
    assertThatThrownBy(() -> Yard.LIMITS.withClearance(Double.NaN))
        .hasMessageContaining("clearance");
  }
}
