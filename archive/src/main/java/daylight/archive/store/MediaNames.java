package daylight.archive.store;

import daylight.archive.Sha256;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Which contents there are, and what each book calls them, in rows. */
final class MediaNames {
  private MediaNames() {}

  /** Notes that a book calls a content so; nothing where it does already. */
  static void name(Handle handle, UUID book, String name, Sha256 content, long bytes, By by) {
    if (content.equals(of(handle, book).get(name))) {
      return;
    }
    handle
        .createUpdate(
            "INSERT INTO media (digest, bytes, kept_at) SELECT :digest, :bytes, :at"
                + " WHERE NOT EXISTS (SELECT 1 FROM media WHERE digest = :digest)")
        .bind("digest", content.hex())
        .bind("bytes", bytes)
        .bind("at", by.at().toString())
        .execute();
    handle
        .createUpdate(
            "INSERT INTO media_name (book, name, digest, made_at, person, device)"
                + " VALUES (:book, :name, :digest, :at, :person, :device)")
        .bind("book", book.toString())
        .bind("name", name)
        .bind("digest", content.hex())
        .bind("at", by.at().toString())
        .bind("person", by.person())
        .bind("device", by.device())
        .execute();
  }

  /** What each name of a book means now. */
  static Map<String, Sha256> of(Handle handle, UUID book) {
    return handle
        .createQuery(
            "SELECT name, digest FROM media_name m WHERE book = :book AND seq ="
                + " (SELECT MAX(seq) FROM media_name n WHERE n.book = m.book AND n.name = m.name)")
        .bind("book", book.toString())
        .map((row, _) -> Map.entry(row.getString("name"), new Sha256(row.getString("digest"))))
        .stream()
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /** All contents that any book calls anything. */
  static List<Sha256> all(Handle handle) {
    return handle
        .createQuery("SELECT digest FROM media ORDER BY digest")
        .map((row, _) -> new Sha256(row.getString("digest")))
        .list();
  }
}
