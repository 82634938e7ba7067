package daylight.archive.store;

import daylight.archive.form.Desk;
import daylight.archive.form.Mark;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.archive.form.TreeWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A book taken apart into its entries and put together again. An entry is what has an identity of
 * its own; everything without one stays with the entry it stands in.
 */
final class BookTree {
  /** The place of what does not stand in a list. */
  static final double ALONE = -1;

  private static final String ID = "id";

  /** Between the keys that lead to an entry. */
  static final String STEP = "/";

  private BookTree() {}

  /** The entries of a book as it was written, each after the one it stands in. */
  static List<Leaf> apart(String written) {
    List<Leaf> leaves = new ArrayList<>();
    apart(keys(written), null, "", ALONE, leaves);
    return leaves;
  }

  /** The book that these entries make, as it would be written. */
  static String together(List<Leaf> leaves) {
    Leaf root = leaves.stream().filter(leaf -> leaf.parent() == null).findFirst().orElseThrow();
    return TreeWriter.write(grown(root, within(leaves)));
  }

  /** What stands in each, in the order of its places. */
  private static Map<UUID, List<Leaf>> within(List<Leaf> leaves) {
    Map<UUID, List<Leaf>> within = new HashMap<>();
    leaves.stream()
        .sorted(Comparator.comparingDouble(Leaf::place).thenComparing(Leaf::entry))
        .forEach(
            leaf -> {
              if (leaf.parent() != null) {
                within.computeIfAbsent(leaf.parent(), p -> new ArrayList<>()).add(leaf);
              }
            });
    return within;
  }

  private static void apart(
      Tree.Keys tree, @Nullable UUID parent, String section, double place, List<Leaf> leaves) {
    UUID entry = Objects.requireNonNull(identity(tree), "an entry has an identity");
    List<Leaf> below = new ArrayList<>();
    Tree.Keys own = own(tree, entry, "", below);
    leaves.add(new Leaf(entry, parent, section, place, TreeWriter.write(own)));
    leaves.addAll(below);
  }

  /** What stays when the entries within are taken out. */
  private static Tree.Keys own(Tree.Keys tree, UUID entry, String path, List<Leaf> below) {
    Map<String, Tree.Member> own = new LinkedHashMap<>();
    tree.members()
        .forEach(
            (key, member) -> {
              String section = path + key;
              switch (member.value()) {
                case Tree.Items items when holdsEntries(items) -> {
                  for (int i = 0; i < items.items().size(); i++) {
                    apart((Tree.Keys) items.items().get(i), entry, section, i + 1, below);
                  }
                }
                case Tree.Keys keys when identity(keys) != null ->
                    apart(keys, entry, section, ALONE, below);
                case Tree.Keys keys ->
                    own.put(key, member(own(keys, entry, section + STEP, below)));
                case Tree.Items items -> own.put(key, member);
                case Tree.Text text -> own.put(key, member);
              }
            });
    return new Tree.Keys(own, tree.at());
  }

  private static boolean holdsEntries(Tree.Items items) {
    return !items.items().isEmpty()
        && items.items().stream()
            .allMatch(item -> item instanceof Tree.Keys keys && identity(keys) != null);
  }

  /** Entries, each after the one it stands in, those of a section in the order of their places. */
  static List<KeptEntry> inOrder(List<Entries.Last> all) {
    Map<UUID, Entries.Last> found = new HashMap<>();
    all.forEach(last -> found.put(last.leaf().entry(), last));
    Map<UUID, List<Leaf>> within = within(all.stream().map(Entries.Last::leaf).toList());
    List<KeptEntry> ordered = new ArrayList<>();
    all.stream()
        .filter(last -> last.leaf().parent() == null)
        .forEach(root -> inOrder(root, found, within, ordered));
    return ordered;
  }

  private static void inOrder(
      Entries.Last last,
      Map<UUID, Entries.Last> found,
      Map<UUID, List<Leaf>> within,
      List<KeptEntry> ordered) {
    Leaf leaf = last.leaf();
    ordered.add(
        new KeptEntry(
            leaf.entry(),
            leaf.parent(),
            leaf.section(),
            leaf.place(),
            last.number(),
            leaf.content()));
    for (Leaf child : within.getOrDefault(leaf.entry(), List.of())) {
      inOrder(Objects.requireNonNull(found.get(child.entry())), found, within, ordered);
    }
  }

  /** Whether anything with an identity of its own stands within these keys. */
  static boolean holdsEntries(Tree.Keys tree) {
    return tree.members().values().stream().anyMatch(member -> isOrHoldsEntry(member.value()));
  }

  private static boolean isOrHoldsEntry(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> false;
      case Tree.Items items -> items.items().stream().anyMatch(BookTree::isOrHoldsEntry);
      case Tree.Keys keys -> identity(keys) != null || holdsEntries(keys);
    };
  }

  /** The entries of a book as it is written, by their paths in it. */
  static Map<String, UUID> paths(String written) {
    Map<String, UUID> paths = new HashMap<>();
    paths(keys(written), "", paths);
    return paths;
  }

  private static void paths(Tree tree, String path, Map<String, UUID> paths) {
    switch (tree) {
      case Tree.Text text -> {}
      case Tree.Items(List<Tree> items, Mark at) -> {
        for (int i = 0; i < items.size(); i++) {
          paths(items.get(i), path + "[" + i + "]", paths);
        }
      }
      case Tree.Keys keys -> {
        UUID identity = identity(keys);
        if (identity != null) {
          paths.put(path, identity);
        }
        keys.members()
            .forEach(
                (key, member) ->
                    paths(member.value(), path.isEmpty() ? key : path + "." + key, paths));
      }
    }
  }

  /** The identity that keys say; null where they say none. */
  static @Nullable UUID identity(Tree.Keys tree) {
    Tree.Member member = tree.members().get(ID);
    if (member == null || !(member.value() instanceof Tree.Text text)) {
      return null;
    }
    try {
      return UUID.fromString(text.text());
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private static Tree.Member member(Tree value) {
    return new Tree.Member(Mark.NOWHERE, value);
  }

  /**
   * Keys that can still grow.
   *
   * @param members a {@link Tree}, or more keys that can
   */
  private record Branch(Map<String, Object> members) {
    static Branch of(Tree.Keys tree) {
      Branch branch = new Branch(new LinkedHashMap<>());
      tree.members().forEach((key, member) -> branch.members.put(key, of(member.value())));
      return branch;
    }

    private static Object of(Tree value) {
      return value instanceof Tree.Keys keys ? of(keys) : value;
    }

    /** The branch at a key; a new one where there is none. */
    Branch step(String key) {
      Object there = members.computeIfAbsent(key, k -> new Branch(new LinkedHashMap<>()));
      return there instanceof Branch branch ? branch : new Branch(new LinkedHashMap<>());
    }

    void add(String key, Tree item) {
      List<Tree> items = new ArrayList<>();
      if (members.get(key) instanceof Tree.Items(List<Tree> before, Mark where)) {
        items.addAll(before);
      }
      items.add(item);
      members.put(key, new Tree.Items(items, Mark.NOWHERE));
    }

    Tree.Keys tree() {
      Map<String, Tree.Member> frozen = new LinkedHashMap<>();
      members.forEach(
          (key, value) -> {
            if (value instanceof Tree tree) {
              frozen.put(key, member(tree));
            } else if (value instanceof Branch branch) {
              frozen.put(key, member(branch.tree()));
            }
          });
      return new Tree.Keys(frozen, Mark.NOWHERE);
    }
  }

  private static Tree.Keys grown(Leaf leaf, Map<UUID, List<Leaf>> within) {
    Branch branch = Branch.of(keys(leaf.content()));
    for (Leaf child : within.getOrDefault(leaf.entry(), List.of())) {
      List<String> path = List.of(child.section().split(STEP, -1));
      Branch at = branch;
      for (String key : path.subList(0, path.size() - 1)) {
        at = at.step(key);
      }
      Tree.Keys value = grown(child, within);
      if (child.place() == ALONE) {
        at.members().put(path.getLast(), value);
      } else {
        at.add(path.getLast(), value);
      }
    }
    return branch.tree();
  }

  private static Tree.Keys keys(String written) {
    Desk desk = new Desk("entry");
    Tree tree = TreeReader.read(written.getBytes(StandardCharsets.UTF_8), desk);
    if (!(tree instanceof Tree.Keys keys) || !desk.complaints().isEmpty()) {
      throw new IllegalArgumentException("not what was written: " + desk.complaints());
    }
    return keys;
  }
}
