package daylight.line.book;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Gravity;
import daylight.line.measure.Reading;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Each fault by itself in a book that otherwise makes sense: code, entry and field. */
class BookCheckTest {
  private static final UUID SITE = new UUID(1, 2);
  private static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(
              new Catalogue.Kind(
                  "standing-water",
                  Catalogue.Bears.OPERATION,
                  Catalogue.Hazard.NONE,
                  true,
                  Map.of("depth", Dimension.LENGTH),
                  List.of(),
                  "water",
                  null)));

  private final List<Landmark> landmarks = new ArrayList<>(List.of(landmark("A"), landmark("B")));
  private final List<Boundary> boundaries = new ArrayList<>();
  private final List<Node> nodes =
      new ArrayList<>(
          List.of(
              node("C1", Node.Kind.ACCESS),
              node("J1", Node.Kind.JUNCTION),
              node("O1", Node.Kind.OUTLET)));
  private final List<Reach> reaches =
      new ArrayList<>(List.of(reach("R1", "C1", "J1", 0.1), reach("R2", "J1", "O1", 0.1)));
  private final List<Pass> passes = new ArrayList<>();
  private final List<Pass.Anchor> anchors = new ArrayList<>();
  private final List<Pass.Reset> resets = new ArrayList<>();
  private final List<Locate> locates = new ArrayList<>();
  private final List<Tie> ties = new ArrayList<>();
  private final List<Level> levels = new ArrayList<>();
  private final List<Papers.Ticket> tickets = new ArrayList<>();
  private Kit kit = Kit.UNRECORDED;

  private static Id id(String label) {
    return Id.derived(SITE, "entry", label);
  }

  private static Reading reading(double metres) {
    return new Reading(metres, null, metres + " m");
  }

  private static Landmark landmark(String label) {
    return new Landmark(id(label), null, Landmark.Kind.CORNER, true);
  }

  private static Node node(String label, Node.Kind kind) {
    return new Node(id(label), kind, null);
  }

  private static Reach reach(String label, String from, String to, double bore) {
    return new Reach(
        id(label),
        "line",
        from,
        to,
        new Reach.Water.Forward(),
        Reach.Use.STORM,
        Material.CLAY,
        reading(bore),
        null);
  }

  private static Locate locate(
      String label, @Nullable Double cable, double depth, Locate.Lift... lifts) {
    return new Locate(
        id(label),
        null,
        cable == null ? null : reading(cable),
        Finding.Moving.PUSHING,
        reading(depth),
        null,
        "yard",
        null,
        Locate.Signal.GOOD,
        List.of(lifts),
        Locate.OffOn.NO,
        null,
        null);
  }

  private static Finding water(String kind, Where where, Map<String, Reading> sizes) {
    return new Finding(
        id("F1"),
        kind,
        where,
        Finding.Moving.PUSHING,
        null,
        new TreeMap<>(sizes),
        new TreeMap<>(),
        null,
        List.of(),
        List.of(),
        null);
  }

  private Pass pass(
      String label, String entry, List<String> walk, List<Finding> findings, Bend... bends) {
    return new Pass(
        id(label),
        entry,
        walk.stream().map(reach -> new Pass.Leg(reach, true)).toList(),
        new Pass.Zero.Reads(reading(0)),
        Pass.Head.UNKNOWN,
        new Pass.End(reading(20), Pass.Why.ENOUGH, null),
        List.of(),
        findings,
        List.of(bends),
        List.of(),
        resets,
        anchors,
        List.of(),
        null,
        null,
        null);
  }

  private void place(String label) {
    ties.add(new Tie.Tape(id("A–" + label), "A", label, reading(3)));
  }

  private Visit visit(String label, @Nullable LocalDate date) {
    return new Visit(
        id(label),
        date,
        List.of(),
        null,
        kit,
        passes,
        locates,
        List.of(),
        ties,
        levels,
        List.of(),
        List.of(),
        new Papers(List.of(), List.of(), tickets, List.of(), List.of()));
  }

  private FieldBook book(Visit... visits) {
    Site site =
        new Site(
            id("site"),
            "site",
            null,
            ZoneId.of("UTC"),
            true,
            landmarks,
            boundaries,
            nodes,
            reaches,
            Surroundings.UNRECORDED);
    return new FieldBook(id("book"), Units.UNSTATED, site, List.of(visits));
  }

  /** Every fault as "code entry.field". */
  private List<String> faults() {
    return faults(visit("V1", LocalDate.of(2026, 4, 18)));
  }

  private List<String> faults(Visit... visits) {
    return BookCheck.faults(book(visits), CATALOGUE).stream()
        .map(fault -> fault.code().key() + " " + fault.entry().label() + "." + fault.field())
        .toList();
  }

  @Test
  void aBookThatMakesSenseHasNone() {
    passes.add(
        pass(
            "P1",
            "C1",
            List.of("R1", "R2"),
            List.of(
                water(
                    "standing-water",
                    new Where.FromTo(reading(2), reading(3)),
                    Map.of("depth", reading(0.04)))),
            new Bend(id("D1"), reading(5), reading(StrictMath.PI / 4), Bend.Sense.LEFT)));
    locates.add(locate("L1", 4.0, 1.2, new Locate.Lift(reading(0.3), reading(1.5))));
    place("L1");
    assertThat(faults()).isEmpty();
  }

  @Test
  void unknownLabelsComeWithTheNearestKnown() {
    ties.add(new Tie.Tape(id("T1"), "A", "C11", reading(3)));
    List<Fault> faults = BookCheck.faults(book(visit("V1", null)), CATALOGUE);
    assertThat(faults)
        .containsExactly(
            new Fault(
                BookFault.UNKNOWN_POINT,
                id("T1"),
                "to",
                List.of(new Argument.Label("C11"), new Argument.Choices(List.of("C1")))));
  }

  @Test
  void unknownNodesReachesAndPasses() {
    passes.add(pass("P1", "C9", List.of("R9"), List.of()));
    reaches.add(reach("R3", "O1", "X", 0.1));
    assertThat(faults())
        .containsExactly(
            "book.unknown-node R3.to",
            "book.unknown-node P1.entry",
            "book.unknown-reach P1.walk[0]");
  }

  @Test
  void pointsOfEveryKindShareTheirLabels() {
    landmarks.add(landmark("C1"));
    assertThat(faults()).containsExactly("book.duplicate-label C1.label");
  }

  @Test
  void anIdentityBelongsToOneEntry() {
    landmarks.add(new Landmark(new Id(id("A").uuid(), "E"), null, Landmark.Kind.POST, false));
    assertThat(faults()).containsExactly("book.duplicate-id E.id");
  }

  @Test
  void aTieRunsBetweenTwoPoints() {
    ties.add(new Tie.Tape(id("T1"), "A", "A", reading(3)));
    ties.add(new Tie.Angle(id("T2"), "A", "A", "B", reading(1)));
    assertThat(faults()).containsExactly("book.tie-to-itself T1.to", "book.tie-to-itself T2.from");
  }

  @Test
  void lengthsThatCannotBe() {
    locates.add(locate("L1", null, -1));
    place("L1");
    ties.add(new Tie.Tape(id("T1"), "A", "B", reading(0)));
    reaches.add(reach("R3", "O1", "J1", 0));
    assertThat(faults())
        .containsExactly(
            "book.not-positive R3.bore",
            "book.loop R3.to",
            "book.not-positive T1.tape",
            "book.negative L1.depth");
  }

  @Test
  void reachesOfOneLineAreATree() {
    reaches.add(reach("R3", "O1", "C1", 0.1));
    assertThat(faults()).containsExactly("book.loop R3.to");
    reaches.set(2, reach("R3", "O1", "O1", 0.1));
    assertThat(faults()).containsExactly("book.reach-to-itself R3.to");
  }

  @Test
  void reachesOfOneLineHangTogether() {
    nodes.add(node("P", Node.Kind.PIT));
    nodes.add(node("Q", Node.Kind.OUTLET));
    reaches.add(reach("R3", "P", "Q", 0.1));
    assertThat(faults()).containsExactly("book.not-connected R3.line");
    assertThat(BookFault.NOT_CONNECTED.gravity()).isEqualTo(Gravity.DOUBT);
  }

  @Test
  void aWalkGoesOnFromWhereItWas() {
    passes.add(pass("P1", "C1", List.of("R2"), List.of()));
    passes.add(pass("P2", "O1", List.of("R2", "R1"), List.of()));
    passes.add(pass("P3", "C1", List.of(), List.of()));
    assertThat(faults()).containsExactly("book.walk-broken P1.walk[0]", "book.empty-walk P3.walk");
  }

  @Test
  void nothingLiesPastTheEndOfAPassOrBeforeItsBeginning() {
    passes.add(
        pass(
            "P1",
            "C1",
            List.of("R1"),
            List.of(water("standing-water", new Where.FromTo(reading(21), reading(19)), Map.of())),
            new Bend(id("D1"), reading(-1), reading(4), Bend.Sense.LEFT)));
    locates.add(locate("L1", 20.5, 1));
    place("L1");
    assertThat(faults())
        .containsExactly(
            "book.negative D1.cable",
            "book.bend-angle D1.angle",
            "book.beyond-end F1.from",
            "book.from-after-to F1.to",
            "book.beyond-end L1.cable");
  }

  @Test
  void aCounterSetBackIsAPassOfItsOwn() {
    resets.add(new Pass.Reset(id("N1"), reading(9), reading(9.3)));
    resets.add(new Pass.Reset(id("N2"), reading(9), reading(0)));
    passes.add(pass("P1", "C1", List.of("R1"), List.of()));
    assertThat(BookCheck.faults(book(visit("V1", null)), CATALOGUE))
        .containsExactly(
            new Fault(
                BookFault.RESET_BACKWARDS,
                id("N2"),
                "after",
                List.of(new Argument.Length(9), new Argument.Length(0), new Argument.Length(9))));
  }

  @Test
  void anAnchorIsAMomentOfKnownFootageAndOneReading() {
    anchors.add(new Pass.Anchor(id("A1"), "M1", 4, reading(1)));
    anchors.add(new Pass.Anchor(id("A2"), "M1", 4, reading(2)));
    anchors.add(new Pass.Anchor(id("A3"), "M1", -1, reading(0)));
    anchors.add(new Pass.Anchor(id("A4"), "M9", 5, reading(99)));
    passes.add(pass("P1", "C1", List.of("R1"), List.of()));
    assertThat(faults())
        .contains(
            "book.anchor-twice A2.counter",
            "book.negative-moment A3.at",
            "book.unknown-media A4.media",
            "book.beyond-end A4.counter");
  }

  @Test
  void waterFitsInThePipe() {
    passes.add(
        pass(
            "P1",
            "C1",
            List.of("R1"),
            List.of(
                water(
                    "standing-water",
                    new Where.AtCable(reading(2)),
                    Map.of("depth", reading(0.12), "width", reading(0.1))))));
    assertThat(faults())
        .containsExactlyInAnyOrder(
            "book.deeper-than-bore F1.depth", "book.quantity-of-other-kind F1.width");
  }

  @Test
  void aKindThatTheCatalogueDoesNotKnowIsNoted() {
    passes.add(
        pass(
            "P1",
            "C1",
            List.of("R1"),
            List.of(water("standing-watr", new Where.AtCable(reading(2)), Map.of()))));
    assertThat(faults()).containsExactly("book.unknown-kind F1.kind");
    assertThat(BookFault.UNKNOWN_KIND.gravity()).isEqualTo(Gravity.NOTE);
  }

  @Test
  void aCounterReadingBelongsToOnePass() {
    locates.add(locate("L1", 4.0, 1));
    place("L1");
    assertThat(faults()).containsExactly("book.which-pass L1.cable");
    passes.add(pass("P1", "C1", List.of("R1"), List.of()));
    assertThat(faults()).isEmpty();
    passes.add(pass("P2", "C1", List.of("R1"), List.of()));
    assertThat(faults()).containsExactly("book.which-pass L1.cable");
  }

  @Test
  void silentPlacesAreNotCrossed() {
    for (double after : new double[] {0.6, 1.9}) {
      Locate plain = locate("L1", null, 1);
      locates.clear();
      locates.add(
          new Locate(
              plain.id(),
              plain.pass(),
              plain.cable(),
              plain.moving(),
              plain.depth(),
              plain.receiverHeight(),
              plain.surface(),
              plain.cover(),
              plain.signal(),
              plain.lifts(),
              Locate.OffOn.STAYED,
              plain.time(),
              plain.remark(),
              new Locate.Nulls(reading(-0.7), reading(after), null, null, null)));
      List<String> crossed = List.of("book.no-spot L1.", "book.nulls-crossed L1.nulls.after");
      assertThat(faults()).isEqualTo(after < 0.7 ? crossed : crossed.subList(0, 1));
    }
  }

  @Test
  void aLocateHasASpotAndItsLiftsGrow() {
    locates.add(locate("L1", null, 1, new Locate.Lift(reading(0.3), reading(0.9))));
    assertThat(faults()).containsExactly("book.no-spot L1.", "book.lift-shrinks L1.lifts[0].depth");
  }

  @Test
  void levelsNameTwoMarks() {
    Level.Mark mark = new Level.Mark("A", Level.Part.GROUND);
    levels.add(new Level.Rise(id("H1"), mark, mark, reading(0)));
    levels.add(new Level.Height(id("H2"), new Level.Mark("Z9", Level.Part.CROWN), reading(1)));
    assertThat(faults()).containsExactly("book.tie-to-itself H1.to.of", "book.unknown-point H2.of");
  }

  @Test
  void visitsTicketsAndKit() {
    boundaries.add(new Boundary(id("B1"), Boundary.Kind.ROAD, List.of("A"), null, null));
    kit = new Kit(null, reading(4), null, null, null);
    tickets.add(new Papers.Ticket(id("K1"), "1", null, LocalDate.of(2026, 4, 17)));
    Visit first = visit("V1", LocalDate.of(2026, 4, 18));
    kit = Kit.UNRECORDED;
    tickets.clear();
    assertThat(faults(first, visit("V2", LocalDate.of(2026, 4, 1))))
        .containsExactly(
            "book.boundary-too-short B1.points",
            "book.visits-out-of-order V2.date",
            "book.sonde-far V1.kit.sonde-behind-lens",
            "book.ticket-expired K1.expires");
  }
}
