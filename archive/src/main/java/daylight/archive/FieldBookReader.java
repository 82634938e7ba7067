package daylight.archive;

import daylight.archive.form.Desk;
import daylight.archive.form.Fields;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.line.book.BookCheck;
import daylight.line.book.Catalogue;
import daylight.line.book.Fault;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Reads a field book as a file.
 *
 * <p>Every complaint is found in one reading, each with file, line, column and path; bad rows are
 * left out and good ones stay, so that the caller decides what can still be answered. What a file
 * holds never makes an exception. The same bytes give the same book, identities and all.
 */
public final class FieldBookReader {
  private FieldBookReader() {}

  /** The book in a file, with the catalogue that comes with Daylight. */
  public static ReadBook read(Path file) {
    return read(file, Bundled.catalogue());
  }

  /** The book in a file. */
  public static ReadBook read(Path file, Catalogue catalogue) {
    Desk desk = new Desk(file.toString());
    byte[] bytes = FileBytes.read(file, desk);
    if (bytes == null) {
      return new ReadBook(null, desk.complaints());
    }
    Path folder = file.toAbsolutePath().getParent();
    return read(desk, bytes, folder, catalogue);
  }

  /** The book in these bytes, with the catalogue that comes with Daylight. */
  public static ReadBook read(String name, byte[] bytes, @Nullable Path folder) {
    return read(name, bytes, folder, Bundled.catalogue());
  }

  /**
   * The book in these bytes.
   *
   * @param name the file as the person named it
   * @param folder the folder that the book's files lie in; null when it has none, and then they are
   *     not looked for
   * @param catalogue the kinds of finding with their quantities
   */
  public static ReadBook read(
      String name, byte[] bytes, @Nullable Path folder, Catalogue catalogue) {
    return read(new Desk(name), bytes, folder, catalogue);
  }

  private static ReadBook read(
      Desk desk, byte[] bytes, @Nullable Path folder, Catalogue catalogue) {
    Tree tree = TreeReader.read(bytes, desk);
    Tree.Keys root = tree == null ? null : Versions.upgraded(tree, desk);
    if (root == null) {
      return new ReadBook(null, desk.complaints());
    }
    Clerk clerk = new Clerk(desk, root, catalogue);
    FieldBook book = book(new Fields(BookShape.BOOK, root, "", desk), folder, clerk);
    for (Fault fault : BookCheck.faults(book, catalogue)) {
      clerk.complain(fault);
    }
    return new ReadBook(book, desk.complaints());
  }

  private static FieldBook book(Fields fields, @Nullable Path folder, Clerk clerk) {
    Units units = Scalars.units(fields.part("units"));
    fields.desk().measureIn(units);
    SiteDraft site = SiteReader.read(fields, clerk);
    VisitReader reader = new VisitReader(clerk, site, folder);
    List<Visit> visits = new ArrayList<>();
    Fields single = fields.part("visit");
    List<Fields> several = fields.rows("visits");
    if (single != null && fields.has("visits")) {
      fields.complain(FileTrouble.VISIT_TWICE, "visit");
    }
    if (single != null) {
      visits.add(reader.read(single));
    }
    for (Fields visit : several) {
      visits.add(reader.read(visit));
    }
    String label = fields.words("label", site.id().label());
    UUID uuid = fields.uuid("id");
    Id id = uuid == null ? Id.derived(site.id().uuid(), "book", label) : new Id(uuid, label);
    clerk.register(id, fields.places());
    return new FieldBook(id, units, site.finished(), visits);
  }
}
