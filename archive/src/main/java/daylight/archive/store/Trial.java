package daylight.archive.store;

import daylight.archive.BookShape;
import daylight.archive.form.Section;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Entries put into a book one after the other, without asking its reader: which are new, which were
 * there, which clash, and how the book would be then.
 */
final class Trial {
  /** Deeper than any entry stands in another. */
  private static final int DEEPEST = 50;

  /**
   * A revision to write.
   *
   * @param index of what was entered
   */
  record Step(int index, Leaf leaf, boolean withdrawn) {}

  /** The entries of one section of another. */
  private record Spot(@Nullable UUID parent, String section) {
    static Spot of(Leaf leaf) {
      return new Spot(leaf.parent(), leaf.section());
    }
  }

  private final Handle handle;
  private final UUID book;
  private final Map<UUID, Entries.Last> now;
  private final Map<Spot, Double> ends = new HashMap<>();
  private final List<Entering> outcomes = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  /**
   * @param before the book as it is, and what was in it and is entered again
   */
  Trial(Handle handle, UUID book, Map<UUID, Entries.Last> before) {
    this.handle = handle;
    this.book = book;
    this.now = new HashMap<>(before);
    before.values().forEach(last -> reach(last.leaf()));
  }

  private void reach(Leaf leaf) {
    ends.merge(Spot.of(leaf), leaf.place(), Math::max);
  }

  /** What became of each that was put in or refused, in that order. */
  List<Entering> outcomes() {
    return Collections.unmodifiableList(outcomes);
  }

  /** What is to be written. */
  List<Step> steps() {
    return Collections.unmodifiableList(steps);
  }

  /** The book as it would be. */
  List<Leaf> leaves() {
    return now.values().stream().filter(Entries.Last::holds).map(Entries.Last::leaf).toList();
  }

  /** Leaves one out. */
  void refuse(List<Complaint> complaints) {
    outcomes.add(new Entering.Wrong(complaints));
  }

  /** Puts one in. */
  void put(int index, Entered one, OwnKeys own) {
    Entries.Last known = now.get(one.entry());
    outcomes.add(
        one.content() == null ? withdraw(index, one, known) : write(index, one, own, known));
  }

  private Entering withdraw(int index, Entered one, Entries.@Nullable Last known) {
    if (known == null || known.withdrawn()) {
      return new Entering.Same(known == null ? 0 : known.number());
    }
    return one.base() == known.number()
        ? take(index, known.leaf(), known.number(), true)
        : behind(one, known, Entries.Last::withdrawn);
  }

  private Entering write(int index, Entered one, OwnKeys own, Entries.@Nullable Last known) {
    Optional<Standing> standing = standing(one);
    Optional<Complaint> wrong = wrong(one, standing);
    if (wrong.isPresent()) {
      return new Entering.Wrong(List.of(wrong.get()));
    }
    Section table = standing.orElseThrow().keys();
    Leaf leaf = new Leaf(one.entry(), one.parent(), one.section(), 0, own.kept(table));
    Predicate<Entries.Last> says = last -> last.holds() && isSame(last.leaf(), leaf, table);
    int number = known == null ? 0 : known.number();
    if (known != null && says.test(known)) {
      return new Entering.Same(number);
    }
    if (one.base() != number) {
      return behind(one, known, says);
    }
    double place = place(leaf, known, standing.get().several());
    return take(index, leaf.at(place), number, false);
  }

  /** The one that it had there; else behind all others. */
  private double place(Leaf leaf, Entries.@Nullable Last known, boolean several) {
    if (known != null && Spot.of(known.leaf()).equals(Spot.of(leaf))) {
      return known.leaf().place();
    }
    return several ? ends.getOrDefault(Spot.of(leaf), 0.0) + 1 : BookTree.ALONE;
  }

  private Entering take(int index, Leaf leaf, int number, boolean withdrawn) {
    now.put(leaf.entry(), new Entries.Last(leaf, number + 1, withdrawn));
    reach(leaf);
    steps.add(new Step(index, leaf, withdrawn));
    return new Entering.Kept(number + 1);
  }

  /** What was kept before and then written upon was sent twice; anything else clashes. */
  private Entering behind(Entered one, Entries.@Nullable Last known, Predicate<Entries.Last> says) {
    Optional<Entries.Last> next =
        Entries.revision(handle, book, one.entry(), one.base() + 1).filter(says);
    if (next.isPresent()) {
      return new Entering.Same(next.get().number());
    }
    return known == null
        ? new Entering.Clash(0, null)
        : new Entering.Clash(known.number(), known.holds() ? known.leaf().content() : null);
  }

  private static boolean isSame(Leaf one, Leaf other, Section table) {
    return Spot.of(one).equals(Spot.of(other))
        && (one.content().equals(other.content())
            || new OwnKeys(one.entry(), one.content()).kept(table).equals(other.content()));
  }

  private Optional<Standing> standing(Entered one) {
    if (one.parent() == null) {
      return Optional.of(new Standing(BookShape.book(), false));
    }
    return table(one.parent(), DEEPEST).flatMap(table -> Standing.of(table, one.section()));
  }

  /** The keys that an entry may have; empty where it does not hold, or stands in none that does. */
  private Optional<Section> table(UUID entry, int depth) {
    Entries.Last last = now.get(entry);
    if (last == null || last.withdrawn() || depth == 0) {
      return Optional.empty();
    }
    UUID parent = last.leaf().parent();
    return parent == null
        ? Optional.of(BookShape.book())
        : table(parent, depth - 1)
            .flatMap(table -> Standing.of(table, last.leaf().section()))
            .map(Standing::keys);
  }

  private Optional<Complaint> wrong(Entered one, Optional<Standing> standing) {
    UUID parent = one.parent();
    boolean stands =
        parent == null
            ? one.entry().equals(book)
            : !one.entry().equals(book)
                && !isWithin(parent, one.entry())
                && table(parent, DEEPEST).isPresent();
    if (!stands) {
      return Optional.of(complaint(EntryTrouble.NO_PARENT));
    }
    Argument section = new Argument.Text(one.section());
    if (standing.isEmpty() || (parent == null && !one.section().isEmpty())) {
      return Optional.of(complaint(EntryTrouble.NO_SECTION, section));
    }
    boolean taken =
        !standing.get().several()
            && leaves().stream()
                .anyMatch(
                    leaf ->
                        Objects.equals(leaf.parent(), parent)
                            && leaf.section().equals(one.section())
                            && !leaf.entry().equals(one.entry()));
    return taken ? Optional.of(complaint(EntryTrouble.ONE_ALREADY, section)) : Optional.empty();
  }

  /** Whether an entry is another, or stands in it. */
  private boolean isWithin(UUID entry, UUID other) {
    UUID at = entry;
    for (int depth = 0; at != null && depth < DEEPEST; depth++) {
      if (at.equals(other)) {
        return true;
      }
      Entries.Last last = now.get(at);
      at = last == null ? null : last.leaf().parent();
    }
    return false;
  }

  private static Complaint complaint(EntryTrouble code, Argument... arguments) {
    return new Complaint(code, FilePlace.at(""), List.of(arguments));
  }

  /** Those that should be withdrawn while others stand in them, which would be gone unseen. */
  Map<Integer, List<Complaint>> leavingOthers() {
    Map<Integer, List<Complaint>> wrong = new HashMap<>();
    for (Step step : steps) {
      UUID entry = step.leaf().entry();
      if (step.withdrawn() && Objects.requireNonNull(now.get(entry)).withdrawn()) {
        long others = leaves().stream().filter(leaf -> entry.equals(leaf.parent())).count();
        if (others > 0) {
          Argument count = new Argument.Count(others);
          wrong.put(step.index(), List.of(complaint(EntryTrouble.HOLDS_OTHERS, count)));
        }
      }
    }
    return wrong;
  }
}
