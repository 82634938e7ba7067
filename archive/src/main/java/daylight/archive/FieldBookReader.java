package daylight.archive;

import static java.util.stream.Collectors.toSet;

import daylight.archive.form.Desk;
import daylight.archive.form.Fields;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.line.book.BookCheck;
import daylight.line.book.BookFault;
import daylight.line.book.Catalogue;
import daylight.line.book.Fault;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import daylight.line.measure.Complaint;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
      return new ReadBook(null, desk.complaints(), Map.of());
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
      return new ReadBook(null, desk.complaints(), Map.of());
    }
    Clerk clerk = new Clerk(desk, root, catalogue, false);
    FieldBook book = book(new Fields(BookShape.BOOK, root, "", desk), folder, clerk);
    boolean whole = desk.complaints().isEmpty();
    for (Fault fault : BookCheck.faults(book, catalogue)) {
      clerk.complain(fault);
    }
    if (!whole) {
      checkWhatWasLeftOut(desk, root, folder, catalogue);
    }
    return new ReadBook(book, desk.complaints(), clerk.places());
  }

  /**
   * A row with something wrong in it is left out of the book, and then nobody looks at the rest of
   * it. So the book is read once more with every row, only to check it; what lies where something
   * was complained of already is not told again.
   */
  private static void checkWhatWasLeftOut(
      Desk desk, Tree.Keys root, @Nullable Path folder, Catalogue catalogue) {
    Set<String> told = desk.complaints().stream().map(c -> at(c)).collect(toSet());
    Desk second = desk.another();
    Clerk clerk = new Clerk(second, root, catalogue, true);
    FieldBook all = book(new Fields(BookShape.BOOK, root, "", second), folder, clerk);
    Set<String> form = second.complaints().stream().map(c -> at(c)).collect(toSet());
    for (Fault fault : BookCheck.faults(all, catalogue)) {
      clerk.complain(fault);
    }
    for (Complaint complaint : second.complaints()) {
      String at = at(complaint);
      if (complaint.code() instanceof BookFault && !form.contains(at) && told.add(at)) {
        desk.complain(complaint.code(), complaint.place(), complaint.arguments());
      }
    }
  }

  private static String at(Complaint complaint) {
    return complaint.place().line() + ":" + complaint.place().column();
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
