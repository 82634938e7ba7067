package daylight.archive;

import daylight.archive.form.Desk;
import daylight.archive.form.Fields;
import daylight.archive.form.Mark;
import daylight.archive.form.Tree;
import daylight.line.book.BookFault;
import daylight.line.book.Catalogue;
import daylight.line.book.Entry;
import daylight.line.book.Fault;
import daylight.line.book.Id;
import daylight.line.measure.Argument;
import daylight.line.measure.FilePlace;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Names the entries of one book while it is read, remembers where each field of each stands, and
 * keeps the rows that are sound.
 */
final class Clerk {
  private final Desk desk;
  private final Catalogue catalogue;
  private final boolean lenient;
  private final Set<String> labels = new HashSet<>();
  private final Map<String, Integer> ordinals = new HashMap<>();
  private final Map<UUID, Map<String, FilePlace>> places = new HashMap<>();
  private final Map<UUID, Deque<Map<String, FilePlace>>> repeats = new HashMap<>();
  private final Set<String> dropped = new HashSet<>();
  private @Nullable UUID site;
  private @Nullable ZoneId zone;

  /**
   * @param lenient whether rows with something wrong in them are kept all the same, so that the
   *     rest of them can be checked too
   */
  Clerk(Desk desk, Tree.Keys root, Catalogue catalogue, boolean lenient) {
    this.desk = desk;
    this.catalogue = catalogue;
    this.lenient = lenient;
    collectLabels(root);
  }

  /** Labels that are written anywhere are not given to entries without one. */
  private void collectLabels(Tree tree) {
    switch (tree) {
      case Tree.Text text -> {}
      case Tree.Items(List<Tree> items, Mark at) -> items.forEach(this::collectLabels);
      case Tree.Keys(Map<String, Tree.Member> members, Mark at) ->
          members.forEach(
              (key, member) -> {
                if (key.equals("label") && member.value() instanceof Tree.Text label) {
                  labels.add(label.text());
                }
                collectLabels(member.value());
              });
    }
  }

  Catalogue catalogue() {
    return catalogue;
  }

  /** What is known of the site: from here on identities are derived and local times understood. */
  void on(UUID knownSite, @Nullable ZoneId knownZone) {
    this.site = knownSite;
    this.zone = knownZone;
  }

  @Nullable ZoneId zone() {
    return zone;
  }

  /**
   * The identity of a row: as written, else derived from its label; the label as written, else the
   * next ordinal after a prefix.
   */
  Id name(Fields row, String kind, String prefix) {
    String written = row.words("label");
    UUID uuid = row.uuid("id");
    String label = written == null ? nextLabel(prefix) : written;
    Id id = uuid == null ? derived(kind, label) : new Id(uuid, label);
    register(id, row.places());
    return id;
  }

  /** The identity of an entry that the book does not write as a row, told by its label. */
  Id name(String kind, String label, FilePlace place) {
    String free = label;
    for (int i = 2; labels.contains(free) || !labels.add(kind + "/" + free); i++) {
      free = label + " (" + i + ")";
    }
    Id id = derived(kind, free);
    register(id, Map.of("", place));
    return id;
  }

  /** The identity of an entry that the reader supplies, with the next label after a prefix. */
  Id supplied(String kind, String prefix, Map<String, FilePlace> standsAt) {
    Id id = derived(kind, nextLabel(prefix));
    register(id, standsAt);
    return id;
  }

  private String nextLabel(String prefix) {
    String label;
    do {
      label = prefix + ordinals.merge(prefix, 1, Integer::sum);
    } while (labels.contains(label));
    return label;
  }

  private Id derived(String kind, String label) {
    if (site == null) {
      throw new IllegalStateException("the site is named before its entries");
    }
    return Id.derived(site, kind, label);
  }

  /** Remembers where the fields of an entry stand; entries of one identity are kept apart. */
  void register(Id id, Map<String, FilePlace> standsAt) {
    if (places.putIfAbsent(id.uuid(), standsAt) != null) {
      repeats.computeIfAbsent(id.uuid(), again -> new ArrayDeque<>()).add(standsAt);
    }
  }

  /** Where each field of each entry stands. */
  Map<UUID, Map<String, FilePlace>> places() {
    return places;
  }

  /** Keeps a row that is sound; the label of another is remembered as left out. */
  <T extends Entry> boolean keep(List<T> kept, Fields row, T entry) {
    if (lenient || row.sound()) {
      kept.add(entry);
      return true;
    }
    dropped.add(entry.label());
    return false;
  }

  /**
   * Complains of a fault at the line and column of its field; not of a label that is only unknown
   * because its row was left out.
   */
  void complain(Fault fault) {
    boolean follows =
        fault.arguments().stream()
            .anyMatch(a -> a instanceof Argument.Label(String label) && dropped.contains(label));
    if (!follows) {
      desk.complain(fault.code(), place(fault), fault.arguments());
    }
  }

  private FilePlace place(Fault fault) {
    Id entry = fault.entry();
    Map<String, FilePlace> known = places.getOrDefault(entry.uuid(), Map.of());
    if (fault.code() == BookFault.DUPLICATE_LABEL || fault.code() == BookFault.DUPLICATE_ID) {
      Map<String, FilePlace> repeat = repeats.getOrDefault(entry.uuid(), new ArrayDeque<>()).poll();
      known = repeat == null ? known : repeat;
    }
    String within = fault.field();
    while (!known.containsKey(within) && !within.isEmpty()) {
      within = within.substring(0, Math.max(0, within.lastIndexOf('.')));
    }
    FilePlace place = known.get(within);
    return place == null ? desk.place(Mark.NOWHERE, entry.label()) : place;
  }
}
