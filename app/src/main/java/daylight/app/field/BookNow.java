package daylight.app.field;

import daylight.archive.form.Desk;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.archive.store.Archive;
import daylight.archive.store.KeptEntry;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A book as its entries are now: their keys as they were written, nothing understood. */
record BookNow(UUID book, List<Row> rows) {
  static Optional<BookNow> of(Archive archive, UUID book) {
    List<Row> rows = archive.entries(book).stream().map(BookNow::row).toList();
    return rows.isEmpty() ? Optional.empty() : Optional.of(new BookNow(book, rows));
  }

  private static Row row(KeptEntry entry) {
    return new Row(
        entry.entry(), entry.parent(), entry.section(), entry.number(), keys(entry.content()));
  }

  /** The keys of an entry as they were kept. */
  static Tree.Keys keys(String content) {
    Tree tree = TreeReader.read(content.getBytes(StandardCharsets.UTF_8), new Desk("entry"));
    if (tree instanceof Tree.Keys keys) {
      return keys;
    }
    throw new IllegalStateException("an entry is kept that has no keys");
  }

  /** What stands at a key, or step by step within it; empty where no text does. */
  static Optional<String> text(Tree.Keys keys, String... path) {
    Tree at = keys;
    for (String key : path) {
      Tree.Member member = at instanceof Tree.Keys within ? within.members().get(key) : null;
      if (member == null) {
        return Optional.empty();
      }
      at = member.value();
    }
    return at instanceof Tree.Text text ? Optional.of(text.text()) : Optional.empty();
  }

  /** An entry. */
  record Row(UUID entry, @Nullable UUID parent, String section, int number, Tree.Keys keys) {
    /** What stands at a key, or step by step within it; empty where no text does. */
    Optional<String> text(String... path) {
      return BookNow.text(keys, path);
    }

    /** The keys that stand at a key; none where nothing of the kind does. */
    Map<String, Tree.Member> within(String key) {
      Tree.Member member = keys.members().get(key);
      return member != null && member.value() instanceof Tree.Keys inner
          ? inner.members()
          : Map.of();
    }

    /** Its label, or the beginning of its identity where it has none. */
    String label() {
      return text("label").orElse(entry.toString().substring(0, 8));
    }
  }

  /** The entry of the book itself. */
  Optional<Row> root() {
    return rows.stream().filter(row -> row.parent() == null).findFirst();
  }

  Optional<Row> site() {
    return in("site").findFirst();
  }

  Optional<Row> find(UUID entry) {
    return rows.stream().filter(row -> row.entry().equals(entry)).findFirst();
  }

  /** Everything in a section, of whatever visit, in order. */
  Stream<Row> in(String section) {
    return rows.stream().filter(row -> row.section().equals(section));
  }

  /** Everything in a section of one entry, in order. */
  Stream<Row> in(UUID parent, String section) {
    return in(section).filter(row -> parent.equals(row.parent()));
  }

  /** The visits, the last one first; those without a day at the end. */
  List<Row> visits() {
    return in("visits")
        .sorted(
            (one, other) -> other.text("date").orElse("").compareTo(one.text("date").orElse("")))
        .toList();
  }

  /** What the site is called. */
  String name() {
    return site().flatMap(site -> site.text("name")).orElse("site");
  }
}
