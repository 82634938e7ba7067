package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Boundary;
import daylight.line.book.Id;
import daylight.line.book.Landmark;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Reach;
import daylight.line.measure.Argument;
import java.time.ZoneId;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads what a book says of its site. */
final class SiteReader {
  /** What a site is called whose book does not name it. */
  private static final String UNNAMED = "site";

  private final Clerk clerk;

  private SiteReader(Clerk clerk) {
    this.clerk = clerk;
  }

  static SiteDraft read(Fields book, Clerk clerk) {
    Fields site = book.part("site");
    if (site == null) {
      Id id = Id.ofSite(UNNAMED, "");
      clerk.on(id.uuid(), null);
      return new SiteDraft(id, UNNAMED, null, null, false);
    }
    return new SiteReader(clerk).site(site);
  }

  private SiteDraft site(Fields site) {
    String address = site.words("address");
    ZoneId zone = Scalars.zone(site, "zone");
    String name = site.words("name", UNNAMED);
    Id id = identity(site, name, address == null ? "" : address);
    clerk.on(id.uuid(), zone);
    clerk.register(id, site.places());
    SiteDraft draft = new SiteDraft(id, name, address, zone, site.yes("invented", false));
    site.rows("landmarks").forEach(row -> draft.landmarks.add(landmark(row)));
    site.rows("nodes").forEach(row -> clerk.keep(draft.nodes, row, node(row)));
    site.rows("reaches").forEach(row -> clerk.keep(draft.reaches, row, reach(row)));
    site.rows("boundaries").forEach(row -> clerk.keep(draft.boundaries, row, boundary(row)));
    Fields surroundings = site.part("surroundings");
    if (surroundings != null) {
      draft.surroundings = new SurroundingsReader(clerk).read(surroundings);
    }
    return draft;
  }

  private static Id identity(Fields site, String name, String address) {
    UUID uuid = site.uuid("id");
    UUID known = uuid == null ? Id.ofSite(name, address).uuid() : uuid;
    return new Id(known, site.words("label", name));
  }

  private Landmark landmark(Fields row) {
    return new Landmark(
        clerk.name(row, "landmark", "A"),
        row.words("what"),
        row.choice("kind", Landmark.Kind.class, Landmark.Kind.OTHER),
        row.yes("base", false));
  }

  private Node node(Fields row) {
    return new Node(
        clerk.name(row, "node", "N"), row.wantedChoice("kind", Node.Kind.class), row.words("what"));
  }

  private Reach reach(Fields row) {
    return new Reach(
        clerk.name(row, "reach", "R"),
        row.words("line", SiteDraft.LINE),
        row.wantedWords("from"),
        row.wantedWords("to"),
        water(row),
        row.choice("use", Reach.Use.class, Reach.Use.UNKNOWN),
        row.choice("material", Material.class, Material.UNKNOWN),
        row.reading("bore"),
        row.reading("length"));
  }

  private static Reach.Water water(Fields row) {
    if (!row.has("water")) {
      return SiteDraft.WATER_UNRECORDED;
    }
    if (row.hasKeys("water")) {
      return new Reach.Water.Unknown(unknown(row.part("water")));
    }
    return switch (row.choice("water", BookShape.Flows.class)) {
      case FORWARD -> new Reach.Water.Forward();
      case BACKWARD -> new Reach.Water.Backward();
      case null -> SiteDraft.WATER_UNRECORDED;
    };
  }

  /** The reason that stands at {@code unknown}. */
  static String unknown(@Nullable Fields part) {
    if (part == null) {
      return "";
    }
    if (!part.has("unknown")) {
      part.complain(FormTrouble.MISSING, "unknown", new Argument.Text("unknown"));
    }
    return part.words("unknown", "not recorded");
  }

  private Boundary boundary(Fields row) {
    return new Boundary(
        clerk.name(row, "boundary", "B"),
        row.choice("kind", Boundary.Kind.class, Boundary.Kind.OTHER),
        row.texts("points"),
        row.words("left"),
        row.words("right"));
  }
}
