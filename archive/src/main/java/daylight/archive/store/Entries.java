package daylight.archive.store;

import daylight.archive.FieldBookWriter;
import daylight.archive.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/** Entries, their revisions and what is derived from them, in rows. */
final class Entries {
  private static final String SITES =
      "SELECT book, name, address, visits, last_visit, changed_at FROM site_now";

  private static final String NOW =
      "SELECT entry, parent, section, place, content FROM entry_now WHERE book = :book";

  private Entries() {}

  static List<Leaf> now(Handle handle, UUID book) {
    return handle.createQuery(NOW).bind("book", text(book)).map((row, c) -> leaf(row)).list();
  }

  /** A last revision of an entry. */
  record Last(Leaf leaf, int number, boolean withdrawn) {
    boolean holds() {
      return !withdrawn;
    }
  }

  /** What holds now, with the number of its revision. */
  static List<Last> last(Handle handle, UUID book) {
    return handle
        .createQuery(
            "SELECT n.entry, n.parent, n.section, n.place, n.content, r.number FROM entry_now n"
                + " JOIN revision r ON r.seq = n.seq WHERE n.book = :book")
        .bind("book", text(book))
        .map((row, _) -> new Last(leaf(row), row.getInt("number"), false))
        .list();
  }

  /** The revision of a book that was written last; 0 where there is none. */
  static long newest(Handle handle, UUID book) {
    return handle
        .createQuery("SELECT COALESCE(MAX(seq), 0) FROM revision WHERE book = :book")
        .bind("book", text(book))
        .mapTo(Long.class)
        .one();
  }

  /** A revision of an entry; the last one for a number of null. */
  static Optional<Last> revision(Handle handle, UUID book, UUID entry, @Nullable Integer number) {
    return handle
        .createQuery(
            "SELECT entry, parent, section, place, COALESCE(content, '') AS content, number,"
                + " withdrawn FROM revision WHERE book = :book AND entry = :entry"
                + " AND (:number IS NULL OR number = :number) ORDER BY number DESC LIMIT 1")
        .bind("book", text(book))
        .bind("entry", text(entry))
        .bind("number", number)
        .map((row, _) -> new Last(leaf(row), row.getInt("number"), row.getInt("withdrawn") == 1))
        .findOne();
  }

  private static Leaf leaf(ResultSet row) throws SQLException {
    return new Leaf(
        UUID.fromString(row.getString("entry")),
        uuid(row.getString("parent")),
        row.getString("section"),
        row.getDouble("place"),
        row.getString("content"));
  }

  /** Adds a revision and brings what is derived up to it. */
  static void revise(Handle handle, UUID book, Leaf leaf, boolean withdrawn, By by) {
    int number =
        1
            + handle
                .createQuery(
                    "SELECT COALESCE(MAX(number), 0) FROM revision"
                        + " WHERE book = :book AND entry = :entry")
                .bind("book", text(book))
                .bind("entry", text(leaf.entry()))
                .mapTo(Integer.class)
                .one();
    bound(
            handle.createUpdate(
                "INSERT INTO revision (book, entry, number, parent, section, place, format,"
                    + " content, digest, withdrawn, made_at, person, device) VALUES (:book, :entry,"
                    + " :number, :parent, :section, :place, :format, :content, :digest, :withdrawn,"
                    + " :at, :person, :device)"),
            book,
            leaf)
        .bind("number", number)
        .bind("format", FieldBookWriter.version())
        .bind("digest", Sha256.of(leaf.content()).hex())
        .bind("withdrawn", withdrawn ? 1 : 0)
        .bind("at", by.at().toString())
        .bind("person", by.person())
        .bind("device", by.device())
        .execute();
    handle
        .createUpdate("DELETE FROM entry_now WHERE book = :book AND entry = :entry")
        .bind("book", text(book))
        .bind("entry", text(leaf.entry()))
        .execute();
    if (!withdrawn) {
      bound(
              handle.createUpdate(
                  "INSERT INTO entry_now (book, entry, parent, section, place, content, seq)"
                      + " VALUES (:book, :entry, :parent, :section, :place, :content,"
                      + " (SELECT seq FROM revision WHERE book = :book AND entry = :entry"
                      + " AND number = :number))"),
              book,
              leaf)
          .bind("number", number)
          .execute();
    }
  }

  private static Update bound(Update update, UUID book, Leaf leaf) {
    return update
        .bind("book", text(book))
        .bind("entry", text(leaf.entry()))
        .bind("parent", leaf.parent() == null ? null : text(leaf.parent()))
        .bind("section", leaf.section())
        .bind("place", leaf.place())
        .bind("content", leaf.content());
  }

  static void withoutSite(Handle handle, UUID book) {
    handle
        .createUpdate("DELETE FROM site_now WHERE book = :book")
        .bind("book", text(book))
        .execute();
  }

  static void site(Handle handle, KeptSite site) {
    LocalDate last = site.lastVisit();
    withoutSite(handle, site.book());
    handle
        .createUpdate(
            "INSERT INTO site_now (book, name, address, visits, last_visit, changed_at)"
                + " VALUES (:book, :name, :address, :visits, :last, :changed)")
        .bind("book", text(site.book()))
        .bind("name", site.name())
        .bind("address", site.address())
        .bind("visits", site.visits())
        .bind("last", last == null ? null : last.toString())
        .bind("changed", site.changed().toString())
        .execute();
  }

  static List<KeptSite> sites(Handle handle, String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return handle
        .createQuery(SITES + " ORDER BY name, address, book")
        .map((row, _) -> holds(row, wanted) ? Optional.of(site(row)) : Optional.<KeptSite>empty())
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static boolean holds(ResultSet row, String wanted) throws SQLException {
    return wanted.isEmpty()
        || (row.getString("name") + "\n" + row.getString("address"))
            .toLowerCase(Locale.ROOT)
            .contains(wanted);
  }

  /** So many of the sites that hold some text, from one on; for an empty text of all. */
  static SitesFound sites(Handle handle, String text, int from, int most) {
    if (!text.isBlank()) {
      List<KeptSite> found = sites(handle, text);
      int begin = Math.min(from, found.size());
      int end = Math.min(begin + most, found.size());
      return new SitesFound(begin, found.subList(begin, end), found.size());
    }
    int of = handle.createQuery("SELECT COUNT(*) FROM site_now").mapTo(Integer.class).one();
    List<KeptSite> shown =
        handle
            .createQuery(SITES + " ORDER BY name, address, book LIMIT :most OFFSET :from")
            .bind("most", most)
            .bind("from", from)
            .map((row, _) -> site(row))
            .list();
    return new SitesFound(Math.min(from, of), shown, of);
  }

  static Optional<KeptSite> site(Handle handle, UUID book) {
    return handle
        .createQuery(SITES + " WHERE book = :book")
        .bind("book", text(book))
        .map((row, _) -> site(row))
        .findOne();
  }

  private static KeptSite site(ResultSet row) throws SQLException {
    String last = row.getString("last_visit");
    return new KeptSite(
        UUID.fromString(row.getString("book")),
        row.getString("name"),
        row.getString("address"),
        row.getInt("visits"),
        last == null ? null : LocalDate.parse(last),
        Instant.parse(row.getString("changed_at")));
  }

  static List<Revision> history(Handle handle, UUID book, UUID entry) {
    return handle
        .createQuery(
            "SELECT number, content, digest, withdrawn, made_at, person, device FROM revision"
                + " WHERE book = :book AND entry = :entry ORDER BY number")
        .bind("book", text(book))
        .bind("entry", text(entry))
        .map(
            (row, c) ->
                new Revision(
                    row.getInt("number"),
                    row.getString("content"),
                    row.getString("digest"),
                    row.getInt("withdrawn") == 1,
                    new By(
                        row.getString("person"),
                        row.getString("device"),
                        Instant.parse(row.getString("made_at")))))
        .list();
  }

  /** Whatever entries of a book ever said, as far as it was not taken out. */
  static List<Leaf> said(Handle handle, UUID book) {
    return handle
        .createQuery(
            "SELECT entry, parent, section, place, content FROM revision WHERE book = :book"
                + " AND content IS NOT NULL ORDER BY seq")
        .bind("book", text(book))
        .map((row, _) -> leaf(row))
        .list();
  }

  /** Takes out for good what an entry said and says no more; how many revisions that were. */
  static int forget(Handle handle, UUID book, UUID entry) {
    return handle
        .createUpdate(
            "UPDATE revision SET content = NULL WHERE book = :book AND entry = :entry"
                + " AND content IS NOT NULL AND seq NOT IN (SELECT seq FROM entry_now)")
        .bind("book", text(book))
        .bind("entry", text(entry))
        .execute();
  }

  static void forgetSites(Handle handle) {
    handle.execute("DELETE FROM site_now");
  }

  /** The books that hold anything now, and when each was written to last. */
  static Map<UUID, Instant> changed(Handle handle) {
    return handle
        .createQuery(
            "SELECT book, made_at AS last FROM revision WHERE seq IN (SELECT MAX(seq)"
                + " FROM revision GROUP BY book) AND book IN (SELECT book FROM entry_now)")
        .map(
            (row, c) ->
                Map.entry(
                    UUID.fromString(row.getString("book")), Instant.parse(row.getString("last"))))
        .stream()
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /** Makes the entries of now anew; true where they were not what the revisions say. */
  static boolean rebuild(Handle handle) {
    List<String> before = told(handle);
    handle.execute("DELETE FROM entry_now");
    handle.execute(
        "INSERT INTO entry_now (book, entry, parent, section, place, content, seq)"
            + " SELECT book, entry, parent, section, place, content, seq FROM revision r"
            + " WHERE withdrawn = 0 AND content IS NOT NULL AND number = (SELECT MAX(number)"
            + " FROM revision o WHERE o.book = r.book AND o.entry = r.entry)");
    return !told(handle).equals(before);
  }

  private static List<String> told(Handle handle) {
    return handle
        .createQuery("SELECT book, entry, seq, content FROM entry_now ORDER BY book, entry")
        .map(
            (row, c) ->
                String.join(
                    " ",
                    row.getString("book"),
                    row.getString("entry"),
                    row.getString("seq"),
                    row.getString("content")))
        .list();
  }

  private static String text(UUID uuid) {
    return uuid.toString();
  }

  private static @Nullable UUID uuid(@Nullable String text) {
    return text == null ? null : UUID.fromString(text);
  }
}
