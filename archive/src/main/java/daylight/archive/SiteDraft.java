package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.Tree;
import daylight.line.book.Boundary;
import daylight.line.book.Entry;
import daylight.line.book.Id;
import daylight.line.book.Landmark;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.measure.Argument;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A site while its book is read: what the book says of it, and what is supplied where it says
 * nothing, which is one wall and one pipe.
 */
final class SiteDraft {
  /** What a reach's water does where the book does not say. */
  static final Reach.Water WATER_UNRECORDED = new Reach.Water.Unknown("not recorded");

  /** The line of a reach where the book names none. */
  static final String LINE = "line";

  private final Id id;
  private final String name;
  private final @Nullable String address;
  private final @Nullable ZoneId zone;
  private final boolean invented;
  final List<Landmark> landmarks = new ArrayList<>();
  final List<Boundary> boundaries = new ArrayList<>();
  final List<Node> nodes = new ArrayList<>();
  final List<Reach> reaches = new ArrayList<>();
  Surroundings surroundings = Surroundings.UNRECORDED;

  SiteDraft(Id id, String name, @Nullable String address, @Nullable ZoneId zone, boolean invented) {
    this.id = id;
    this.name = name;
    this.address = address;
    this.zone = zone;
    this.invented = invented;
  }

  Id id() {
    return id;
  }

  /** The two ends of a wall, the zero corner first. */
  record Wall(String zero, String toward) {}

  /**
   * The wall at a key: two landmarks as {@code [A, B]} or {@code A-B}; where none is written, the
   * two that fix the site grid, and a wall is supplied where the book has no landmarks.
   */
  Wall wall(Fields fields, String key) {
    if (!fields.has(key)) {
      return defaultWall(fields, key);
    }
    if (fields.tree(key) instanceof Tree.Items) {
      List<String> ends = fields.texts(key);
      return ends.size() == 2 ? new Wall(ends.get(0), ends.get(1)) : noWall(fields, key, "");
    }
    String text = fields.wantedWords(key);
    for (int i = 1; i < text.length() - 1; i++) {
      if (text.charAt(i) == '-' || text.charAt(i) == '–') {
        String zero = text.substring(0, i).strip();
        String toward = text.substring(i + 1).strip();
        if (isLandmark(zero) && isLandmark(toward)) {
          return new Wall(zero, toward);
        }
      }
    }
    return noWall(fields, key, text);
  }

  private boolean isLandmark(String label) {
    return landmarks.stream().anyMatch(landmark -> landmark.label().equals(label));
  }

  private static Wall noWall(Fields fields, String key, String text) {
    fields.complain(FileTrouble.NOT_A_WALL, key, new Argument.Text(text));
    return new Wall("?", "?");
  }

  private Wall defaultWall(Fields fields, String key) {
    if (landmarks.isEmpty()) {
      landmarks.add(suppliedCorner("wall-0"));
      landmarks.add(suppliedCorner("wall-1"));
    }
    List<String> ends =
        Stream.concat(landmarks.stream().filter(Landmark::base), landmarks.stream())
            .map(Entry::label)
            .distinct()
            .limit(2)
            .toList();
    return ends.size() == 2 ? new Wall(ends.get(0), ends.get(1)) : noWall(fields, key, "");
  }

  private Landmark suppliedCorner(String label) {
    return new Landmark(Id.derived(id.uuid(), "landmark", label), null, Landmark.Kind.CORNER, true);
  }

  /** The single pipe of this site, supplied where the book says nothing of pipes; else null. */
  @Nullable Reach onlyReach() {
    if (nodes.isEmpty() && reaches.isEmpty()) {
      nodes.add(new Node(Id.derived(id.uuid(), "node", "entry"), Node.Kind.ACCESS, null));
      nodes.add(new Node(Id.derived(id.uuid(), "node", "end"), Node.Kind.END, null));
      reaches.add(suppliedReach());
    }
    return reaches.size() == 1 ? reaches.getFirst() : null;
  }

  private Reach suppliedReach() {
    return new Reach(
        Id.derived(id.uuid(), "reach", "R1"),
        LINE,
        "entry",
        "end",
        WATER_UNRECORDED,
        Reach.Use.UNKNOWN,
        Material.UNKNOWN,
        null,
        null);
  }

  /** Where cameras go in, when there is only one such place; else null. */
  @Nullable String onlyAccess() {
    List<String> access =
        nodes.stream()
            .filter(node -> node.kind() == Node.Kind.ACCESS)
            .map(Entry::label)
            .distinct()
            .toList();
    return access.size() == 1 ? access.getFirst() : null;
  }

  /** The site as it stands. */
  Site finished() {
    return new Site(
        id,
        name,
        address,
        zone == null ? ZoneId.of("UTC") : zone,
        invented,
        landmarks,
        boundaries,
        nodes,
        reaches,
        surroundings);
  }
}
