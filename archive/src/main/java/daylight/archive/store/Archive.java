package daylight.archive.store;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.archive.FieldBookWriter;
import daylight.archive.Folders;
import daylight.archive.MediaFiles;
import daylight.archive.ReadBook;
import daylight.archive.Sha256;
import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * The door of this room: a folder of field books with all their history. What a call returns from
 * is on the disk. Several threads may use it at once, and several programs; one writes at a time.
 */
public final class Archive {
  /**
   * Where more than this share of what is kept would be other than it was, it may be another site;
   * our own rule, no source.
   */
  private static final double MOST_OTHER = 0.5;

  private static final String DERIVED = "derived";

  private final Path folder;
  private final Jdbi jdbi;
  private final Handle held;
  private final MediaFolder media;
  private final Looks looks = new Looks();

  private Archive(Path folder, Jdbi jdbi, Handle held) {
    this.folder = folder;
    this.jdbi = jdbi;
    this.held = held;
    media = new MediaFolder(folder);
  }

  /** Opens the archive in a folder; begins one where the folder is empty or not there. */
  public static ArchiveOpening open(Path folder) {
    Path file = Database.file(folder);
    try {
      // A file without anything in it is what is left where a first opening was cut off.
      boolean begins = !Files.exists(file) || Files.size(file) == 0;
      if (begins && !Folders.holdsNothingBut(folder, String.valueOf(file.getFileName()))) {
        return refused(ArchiveTrouble.NOT_AN_ARCHIVE, folder);
      }
      Files.createDirectories(folder);
      Optional<Statement> wrong = begins ? Optional.empty() : Database.wrong(folder);
      if (wrong.isPresent()) {
        return new ArchiveOpening.Refused(wrong.get());
      }
      Jdbi jdbi = Database.connect(file);
      Optional<Statement> newer = Database.migrate(folder);
      return newer
          .<ArchiveOpening>map(ArchiveOpening.Refused::new)
          .orElseGet(
              () -> new ArchiveOpening.Opened(new Archive(folder, jdbi, Database.held(jdbi))));
    } catch (IOException | JdbiException e) {
      return new ArchiveOpening.Refused(unreachable(folder, e));
    }
  }

  static ArchiveOpening refused(ArchiveTrouble why, Path where) {
    return new ArchiveOpening.Refused(Statement.of(why, new Argument.Text(where.toString())));
  }

  static Statement unreachable(Path where, Exception e) {
    return Disk.why(where, e);
  }

  /**
   * Puts what stands in the log into the file that all is in, where nobody else has it open.
   * Nothing is lost where this is not called.
   */
  public void close() {
    held.close();
  }

  /** The folder it lies in. */
  public Path folder() {
    return folder;
  }

  /**
   * Keeps a book as it is now: all of it or, where that fails, nothing. What was kept of it before
   * stays in its history; an entry that the book has no more is withdrawn.
   *
   * @param whatever even where most of what is kept of it would change
   */
  public Keeping keep(FieldBook book, By by, boolean whatever) {
    return keep(book, Bundled.catalogue(), by, whatever);
  }

  /** The same of a book with kinds of finding of one's own. */
  public Keeping keep(FieldBook book, Catalogue catalogue, By by, boolean whatever) {
    List<Leaf> leaves = BookTree.apart(FieldBookWriter.write(book, catalogue));
    try {
      return Database.writing(jdbi, handle -> keep(handle, book, leaves, by, whatever));
    } catch (JdbiException e) {
      return new Keeping.NotWritten(unreachable(folder, e));
    }
  }

  private static Keeping keep(
      Handle handle, FieldBook book, List<Leaf> leaves, By by, boolean whatever) {
    Map<UUID, Leaf> before =
        Entries.now(handle, book.id().uuid()).stream()
            .collect(Collectors.toMap(Leaf::entry, leaf -> leaf));
    Map<UUID, Double> places = new HashMap<>();
    before.forEach((entry, leaf) -> places.put(entry, leaf.place()));
    List<Leaf> now = Places.kept(leaves, places);
    int of = before.size();
    int same = (int) now.stream().filter(leaf -> leaf.equals(before.get(leaf.entry()))).count();
    return !whatever && of - same > MOST_OTHER * of
        ? new Keeping.LikelyAnother(of - same, of)
        : kept(handle, book, before, now, by);
  }

  private static Keeping.Kept kept(
      Handle handle, FieldBook book, Map<UUID, Leaf> before, List<Leaf> now, By by) {
    UUID id = book.id().uuid();
    int added = 0;
    int changed = 0;
    int same = 0;
    for (Leaf leaf : now) {
      Leaf old = before.remove(leaf.entry());
      if (leaf.equals(old)) {
        same++;
      } else {
        Entries.revise(handle, id, leaf, false, by);
        added += old == null ? 1 : 0;
        changed += old == null ? 0 : 1;
      }
    }
    before.values().stream()
        .sorted(Comparator.comparing(Leaf::entry))
        .forEach(gone -> Entries.revise(handle, id, gone, true, by));
    Keeping.Kept kept = new Keeping.Kept(added, changed, before.size(), same);
    if (kept.any()) {
      Entries.site(handle, row(book, by.at()));
    }
    return kept;
  }

  /**
   * Enters states of entries of a book, in this order, an entry after the one it stands in. One
   * that clashes or is wrong does not keep the others out; what is written is written together. A
   * book is begun by an entry that is the book itself, with its site.
   *
   * <p>Wrong is what the reader of files would refuse and would not have refused before. What it
   * merely doubts, such as a ticket that has run out, is entered: it may well have been so.
   *
   * @return what came of each, in their order
   */
  public List<Entering> enter(UUID book, List<Entered> entries, By by) {
    try {
      Written written = Database.writing(jdbi, handle -> enter(handle, book, entries, by));
      looks.note(book, written.newest(), written.settled().look());
      return written.settled().trial().outcomes();
    } catch (JdbiException e) {
      Statement why = unreachable(folder, e);
      return entries.stream().<Entering>map(_ -> new Entering.NotWritten(why)).toList();
    }
  }

  private record Written(Intake.Settled settled, long newest) {}

  private Written enter(Handle handle, UUID book, List<Entered> entries, By by) {
    Intake.Settled settled = new Intake(handle, book, entries, looks).settle();
    for (Trial.Step step : settled.trial().steps()) {
      Entries.revise(handle, book, step.leaf(), step.withdrawn(), by);
    }
    if (!settled.trial().steps().isEmpty()) {
      ReadBook read = settled.look().read();
      FieldBook whole = read == null ? null : read.book();
      if (whole == null) {
        Entries.withoutSite(handle, book);
      } else {
        Entries.site(handle, row(whole, by.at()));
      }
    }
    return new Written(settled, Entries.newest(handle, book));
  }

  /** The entries of a book as they are now, each after the one it stands in, as a file has them. */
  public List<KeptEntry> entries(UUID book) {
    return BookTree.inOrder(Database.reading(jdbi, handle -> Entries.last(handle, book)));
  }

  /**
   * Visits in which nothing was measured yet and tickets, by their day, where that lies between two
   * days, both of them included.
   */
  public List<Dated> dated(LocalDate from, LocalDate to) {
    return Database.reading(jdbi, handle -> Days.between(handle, from, to));
  }

  private static KeptSite row(FieldBook book, Instant changed) {
    Site site = book.site();
    LocalDate last =
        book.visits().stream()
            .map(Visit::date)
            .filter(Objects::nonNull)
            .max(Comparator.naturalOrder())
            .orElse(null);
    String address = Objects.requireNonNullElse(site.address(), "");
    return new KeptSite(
        book.id().uuid(), site.name(), address, book.visits().size(), last, changed);
  }

  /** The sites whose name or address holds some text, in any case; all for an empty one. */
  public List<KeptSite> sites(String text) {
    return Database.reading(jdbi, handle -> Entries.sites(handle, text));
  }

  /** The same, so many of them from one on. */
  public SitesFound sites(String text, int from, int most) {
    return Database.reading(jdbi, handle -> Entries.sites(handle, text, from, most));
  }

  /** One site; empty where no book of that identity is kept. */
  public Optional<KeptSite> site(UUID book) {
    return Database.reading(jdbi, handle -> Entries.site(handle, book));
  }

  /**
   * A book as it is now; empty where none of that identity is kept. Its files are not looked for.
   */
  public Optional<ReadBook> book(UUID book) {
    return book(book, Bundled.catalogue());
  }

  /** The same with kinds of finding of one's own. */
  public Optional<ReadBook> book(UUID book, Catalogue catalogue) {
    return written(book).map(text -> read(book, text, catalogue));
  }

  private static ReadBook read(UUID book, String text, Catalogue catalogue) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return FieldBookReader.read(book + ".yaml", bytes, null, catalogue);
  }

  /** The same as a file would have it. */
  public Optional<String> written(UUID book) {
    List<Leaf> leaves = Database.reading(jdbi, handle -> Entries.now(handle, book));
    return leaves.isEmpty() ? Optional.empty() : Optional.of(BookTree.together(leaves));
  }

  /** All states of an entry of a book, the first one first. */
  public List<Revision> history(UUID book, UUID entry) {
    return Database.reading(jdbi, handle -> Entries.history(handle, book, entry));
  }

  /** The entries of a book that ever had a label, also where they are withdrawn. */
  public List<UUID> called(UUID book, String label) {
    return Database.reading(jdbi, handle -> Entries.said(handle, book)).stream()
        .filter(leaf -> new OwnKeys(leaf.entry(), leaf.content()).isCalled(label))
        .map(Leaf::entry)
        .distinct()
        .toList();
  }

  /**
   * Takes out for good what an entry said before, and says no more: for who asks that something
   * about a person be gone. What was made from the book beside it goes with it. What holds now
   * stays, so change or withdraw it first. Of each content that is taken out its digest stays, with
   * who wrote it and when.
   *
   * @return how many contents were taken out
   * @throws IOException where it could not be done to the end, as while somebody reads; what was
   *     taken out stays so, and doing it again does the rest
   */
  public int forget(UUID book, UUID entry) throws IOException {
    Folders.delete(derived(book));
    try {
      return Database.wiping(jdbi, handle -> Entries.forget(handle, book, entry));
    } catch (JdbiException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  /**
   * A folder for what is made from a book and may be thrown away at any time; it need not be there.
   * Forgetting throws it away.
   */
  public Path derived(UUID book) {
    return folder.toAbsolutePath().resolve(DERIVED).resolve(book.toString());
  }

  /** The contents of recordings, photographs and notes. */
  public MediaFolder media() {
    return media;
  }

  /** What each file that a book names was when it was kept last. */
  public Map<String, Sha256> mediaOf(UUID book) {
    return Database.reading(jdbi, handle -> MediaNames.of(handle, book));
  }

  /**
   * Notes which content a book means by the name of a file.
   *
   * <p>Refused: a content that is not in the media folder; a name that leads out of the book's own.
   */
  public void nameMedia(UUID book, String name, Sha256 content, By by) throws IOException {
    if (MediaFiles.leadsOut(name)) {
      throw new IllegalArgumentException(name);
    }
    Path file = media.file(content).orElseThrow(() -> new IllegalArgumentException(content.hex()));
    long bytes = Files.size(file);
    try {
      jdbi.useTransaction(handle -> MediaNames.name(handle, book, name, content, bytes, by));
    } catch (JdbiException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  /** Makes what is derived anew from the revisions; returns whether it said anything else. */
  public boolean rebuild() {
    looks.clear();
    return Database.writing(
        jdbi,
        handle -> {
          List<KeptSite> before = Entries.sites(handle, "");
          boolean entries = Entries.rebuild(handle);
          Entries.forgetSites(handle);
          Entries.changed(handle)
              .forEach(
                  (book, changed) -> {
                    String text = BookTree.together(Entries.now(handle, book));
                    FieldBook whole = read(book, text, Bundled.catalogue()).book();
                    Entries.site(
                        handle, row(Objects.requireNonNull(whole, book.toString()), changed));
                  });
          return entries || !Entries.sites(handle, "").equals(before);
        });
  }

  /**
   * Saves all of it into a file, as it is at one moment, while it goes on being used.
   *
   * @return why it could not be; empty when it is saved
   */
  public Optional<Statement> backup(Path file) {
    return Backups.save(jdbi, media, file);
  }

  /**
   * Brings a backup back into a folder that is empty or not there.
   *
   * @return why it could not be; empty when it is back
   */
  public static Optional<Statement> restore(Path file, Path folder) {
    return Backups.restore(file, folder);
  }
}
