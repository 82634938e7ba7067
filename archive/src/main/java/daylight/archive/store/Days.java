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
  /**
   * The ten characters behind a key at the beginning of a line. Texts never hold a bare new line
   * where they are written, so that none of them can pass for a key.
   */
  private static final String DAY =
      "substr(e.content, instr(char(10) || e.content, char(10) || :key) + length(:key), 10)";

  private static final String BETWEEN =
      "SELECT e.book, e.entry, COALESCE(%s) AS visit, e.content, "
          + DAY
          + " AS day FROM entry_now e WHERE e.section = :section"
          + " AND instr(char(10) || e.content, char(10) || :key) > 0 AND "
          + DAY
          + " BETWEEN :from AND :to";

  private static final String NOTHING_DONE =
      " AND NOT EXISTS (SELECT 1 FROM entry_now c WHERE c.book = e.book AND c.parent = e.entry"
          + " AND c.section NOT IN ('media', 'consents', 'tickets'))";

  private Days() {}

  static List<Dated> between(Handle handle, LocalDate from, LocalDate to) {
    List<Dated> found = new ArrayList<>();
    found.addAll(
        rows(
            handle,
            BETWEEN.formatted("e.entry, e.entry") + NOTHING_DONE,
            "visits",
            "date: ",
            Dated.What.VISIT_TO_COME,
            from,
            to));
    found.addAll(
        rows(
            handle,
            BETWEEN.formatted("e.parent, e.entry"),
            "tickets",
            "expires: ",
            Dated.What.TICKET_EXPIRES,
            from,
            to));
    found.sort(
        Comparator.comparing(Dated::day).thenComparing(Dated::book).thenComparing(Dated::entry));
    return found;
  }

  private static List<Dated> rows(
      Handle handle,
      String query,
      String section,
      String key,
      Dated.What what,
      LocalDate from,
      LocalDate to) {
    return handle
        .createQuery(query)
        .bind("section", section)
        .bind("key", key)
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
