package daylight.archive.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

/** Finds entries by a day that stands in them. */
final class Days {
  private static final String NOTHING_DONE =
      " AND NOT EXISTS (SELECT 1 FROM entry_now c WHERE c.book = e.book AND c.parent = e.entry"
          + " AND c.section NOT IN ('media', 'consents', 'tickets'))";

  private Days() {}

  /**
   * The entries of a section by the ten characters behind a key at the beginning of a line. Texts
   * never hold a bare new line where they are written, so that none of them can pass for a key. An
   * index has these very expressions.
   */
  static String between(String section, String key, String visit) {
    String at = "instr(char(10) || content, char(10) || '" + key + "')";
    String day = "substr(content, " + at + " + " + key.length() + ", 10)";
    return "SELECT book, entry, COALESCE(%s) AS visit, content, %s AS day FROM entry_now e"
            .formatted(visit, day)
        + " WHERE section = '%s' AND %s > 0 AND %s BETWEEN :from AND :to"
            .formatted(section, at, day);
  }

  static List<Dated> between(Handle handle, LocalDate from, LocalDate to) {
    List<Dated> found = new ArrayList<>();
    found.addAll(
        rows(
            handle,
            between("visits", "date: ", "entry, entry") + NOTHING_DONE,
            Dated.What.VISIT_TO_COME,
            from,
            to));
    found.addAll(
        rows(
            handle,
            between("tickets", "expires: ", "parent, entry"),
            Dated.What.TICKET_EXPIRES,
            from,
            to));
    found.sort(
        Comparator.comparing(Dated::day).thenComparing(Dated::book).thenComparing(Dated::entry));
    return found;
  }

  private static List<Dated> rows(
      Handle handle, String query, Dated.What what, LocalDate from, LocalDate to) {
    return handle
        .createQuery(query)
        .bind("from", from.toString())
        .bind("to", to.toString())
        .map((row, c) -> dated(row, what))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Dated> dated(ResultSet row, Dated.What what) throws SQLException {
    try {
      return Optional.of(
          new Dated(
              UUID.fromString(row.getString("book")),
              UUID.fromString(row.getString("visit")),
              UUID.fromString(row.getString("entry")),
              what,
              LocalDate.parse(row.getString("day")),
              row.getString("content")));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
