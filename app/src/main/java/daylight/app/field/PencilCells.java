package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Entered;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The cells of a pencil sheet: what they say as a book has it, and what is wrong with each. */
abstract class PencilCells {
  final BookNow book;
  final BookNow.Row visit;
  final Pencil pencil;
  final Trouble trouble;
  final Phrases phrases;
  final PencilWords words;

  PencilCells(Caller caller, BookNow book, BookNow.Row visit, Pencil pencil, Trouble trouble) {
    this.book = book;
    this.visit = visit;
    this.pencil = pencil;
    this.trouble = trouble;
    this.phrases = caller.phrases();
    this.words = new PencilWords(phrases, pencil.text("unit").equals("m") ? "m" : "ft");
  }

  /**
   * One entry.
   *
   * @param row of the paper; null where it is of the head of the push
   * @param cells which cell each key is typed into
   * @param otherwise the cell for what belongs to none of them
   */
  record Step(
      Entered entered, Pencil.@Nullable Row row, Map<String, String> cells, String otherwise) {}

  /** An entry that a row makes. */
  static Step entered(
      Pencil.Row row,
      UUID entry,
      UUID parent,
      String section,
      ObjectNode keys,
      Map<String, String> columns,
      String otherwise) {
    Map<String, String> cells = new HashMap<>();
    columns.forEach((key, column) -> cells.put(key, row.name(column)));
    return new Step(
        EntryJson.changed(entry, parent, section, row.base(), keys),
        row,
        cells,
        row.name(otherwise));
  }

  /** What the archive has of a row is withdrawn; nothing where it has nothing. */
  final List<Step> withdrawn(Pencil.Row row) {
    if (row.base() == 0 || row.section().isEmpty()) {
      return List.of();
    }
    UUID parent = book.find(row.id()).map(BookNow.Row::parent).orElse(visit.entry());
    Entered gone = new Entered(row.id(), parent, row.section(), row.base(), null);
    return List.of(new Step(gone, row, Map.of(), row.name(row.columns().getFirst())));
  }

  /** Labels that a tape may be held to, the book's and the sheet's. */
  final Set<String> known() {
    Set<String> known = new HashSet<>();
    for (String section : List.of("landmarks", "nodes", "locates", "exposures")) {
      book.in(section).map(BookNow.Row::label).forEach(known::add);
    }
    pencil.marks().forEach(row -> known.add(row.text("label")));
    pencil.walk().forEach(row -> known.add(row.text("label")));
    known.remove("");
    return known;
  }

  final Optional<String> length(String name) {
    Optional<String> length = words.length(pencil.text(name));
    if (length.isEmpty() && !pencil.text(name).isEmpty()) {
      trouble.at(name, phrases.say("pencil.length", pencil.text(name)));
    }
    return length;
  }

  final Optional<String> length(Pencil.Row row, String column) {
    return length(row.name(column));
  }

  final Optional<String> checked(
      Pencil.Row row, String column, String why, Function<String, Optional<String>> read) {
    String text = row.text(column);
    Optional<String> said = text.isEmpty() ? Optional.empty() : read.apply(text);
    if (said.isEmpty() && !text.isEmpty()) {
      tell(row, column, why, text);
    }
    return said;
  }

  final void tell(Pencil.Row row, String column, String why, Object... told) {
    trouble.at(row.name(column), phrases.say(why, told));
  }

  final boolean isTroubled(Pencil.Row row) {
    return row.columns().stream().anyMatch(column -> trouble.of(row.name(column)) != null);
  }
}
