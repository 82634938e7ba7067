package daylight.report;

import static daylight.report.Example.id;
import static daylight.report.Example.reading;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Kit;
import daylight.line.book.Landmark;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Reported;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;

/** The field book of {@link Example}. */
final class ExampleBook {
  private ExampleBook() {}

  static FieldBook book() {
    return new FieldBook(id("book"), Units.UNSTATED, site(), List.of(visit()));
  }

  static Site site() {
    return new Site(
        id("site"),
        "Millrace Workshop",
        "12 Example Lane",
        ZoneId.of("America/Chicago"),
        true,
        List.of(
            landmark("A", "south corner of the shop", Landmark.Kind.CORNER, true),
            landmark("B", "north corner of the shop", Landmark.Kind.CORNER, true),
            landmark("C", "west corner of the shop", Landmark.Kind.CORNER, false),
            landmark("P1", "fence post", Landmark.Kind.POST, false),
            landmark("P2", "corner post", Landmark.Kind.POST, false),
            landmark("OAK", "oak", Landmark.Kind.TREE, false)),
        List.of(
            new Boundary(
                id("wall"), Boundary.Kind.FOUNDATION, List.of("C", "A", "B"), "shop", null),
            new Boundary(
                id("fence"), Boundary.Kind.PROPERTY_LINE, List.of("P1", "P2"), "yard", "lane")),
        List.of(
            new Node(id("CO1"), Node.Kind.ACCESS, "cleanout by the door"),
            new Node(id("J1"), Node.Kind.JUNCTION, null),
            new Node(id("OUT"), Node.Kind.OUTLET, "end in the ditch"),
            new Node(id("DL1"), Node.Kind.INLET, "roof leader")),
        List.of(
            reach("R1", "CO1", "J1", Material.CLAY),
            reach("R2", "J1", "OUT", Material.CLAY),
            reach("R3", "DL1", "J1", Material.PVC)),
        Surroundings.UNRECORDED);
  }

  private static Visit visit() {
    return new Visit(
        id("V1"),
        LocalDate.of(2026, 4, 14),
        List.of("technician"),
        Reported.inWords("The floor drain in the shop backs up when it rains hard, and it smells."),
        Kit.UNRECORDED,
        List.of(pass()),
        Stream.of("L1", "L2", "L3", "L4", "L5", "L6").map(ExampleBook::locate).toList(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Papers.NONE);
  }

  private static Pass pass() {
    return new Pass(
        id("PUSH1"),
        "CO1",
        List.of(new Pass.Leg("R1", true), new Pass.Leg("R2", true)),
        new Pass.Zero.Reads(reading(0)),
        Pass.Head.SELF_RIGHTING,
        new Pass.End(reading(26.1), Pass.Why.OUTLET_REACHED, "OUT"),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        null,
        null,
        null);
  }

  static Locate locate(String label) {
    return new Locate(
        id(label),
        "PUSH1",
        reading(3),
        Finding.Moving.PUSHING,
        reading(1.0),
        null,
        "yard",
        null,
        Locate.Signal.GOOD,
        List.of(),
        Locate.OffOn.YES,
        null,
        null);
  }

  static Reach reach(String label, String from, String to, Material material) {
    return new Reach(
        id(label),
        "storm line",
        from,
        to,
        new Reach.Water.Forward(),
        Reach.Use.STORM,
        material,
        reading(0.1016),
        null);
  }

  private static Landmark landmark(String label, String what, Landmark.Kind kind, boolean base) {
    return new Landmark(id(label), what, kind, base);
  }
}
