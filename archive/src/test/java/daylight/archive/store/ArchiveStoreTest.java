package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.archive.FieldBookReader;
import daylight.archive.FieldBookWriter;
import daylight.archive.GeneratedBook;
import daylight.archive.Sha256;
import daylight.line.book.FieldBook;
import daylight.line.measure.Key;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveStoreTest {
  private static final By MORNING =
      new By("Someone", "laptop", Instant.parse("2026-04-18T08:00:00Z"));
  private static final By NOON =
      new By("Someone Else", "phone", Instant.parse("2026-04-18T12:00:00Z"));

  @TempDir private Path folder = Path.of("");

  private static Archive opened(Path where) {
    return switch (Archive.open(where)) {
      case ArchiveOpening.Opened(Archive archive) -> archive;
      case ArchiveOpening.Refused(var why) -> throw new AssertionError(why);
    };
  }

  private static Key refused(Path where) {
    return switch (Archive.open(where)) {
      case ArchiveOpening.Opened opened -> throw new AssertionError("opened " + where);
      case ArchiveOpening.Refused(var why) -> why.key();
    };
  }

  private static FieldBook read(String written) {
    byte[] bytes = written.getBytes(StandardCharsets.UTF_8);
    return Objects.requireNonNull(FieldBookReader.read("book.yaml", bytes, null).book());
  }

  private static FieldBook corpus(String name) throws IOException {
    return read(Files.readString(Path.of("..", "corpus", name)));
  }

  @Test
  void anyBookComesOutAsItWentIn() {
    Archive archive = opened(folder);
    for (long seed = 0; seed < 40; seed++) {
      FieldBook book = new GeneratedBook(seed).book();
      archive.keep(book, MORNING, false);

      String out = archive.written(book.id().uuid()).orElseThrow();
      assertThat(FieldBookWriter.write(read(out)))
          .as("seed %d", seed)
          .isEqualTo(FieldBookWriter.write(read(FieldBookWriter.write(book))));
    }
    assertThat(opened(folder).rebuild()).isFalse();
  }

  @Test
  void everyBookOfTheCorpusComesOutAsItWentIn() throws IOException {
    Archive archive = opened(folder);
    Set<UUID> kept = new HashSet<>();
    try (var files = Files.list(Path.of("..", "corpus"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        FieldBook book = FieldBookReader.read(file).book();
        if (book != null && kept.add(book.id().uuid())) {
          archive.keep(book, MORNING, false);
          assertThat(read(archive.written(book.id().uuid()).orElseThrow()).visits())
              .as(file.toString())
              .isEqualTo(read(FieldBookWriter.write(book)).visits());
        }
      }
    }
    assertThat(kept).hasSizeGreaterThan(60);
    assertThat(archive.sites("")).hasSameSizeAs(kept);
  }

  @Test
  void whatIsKeptAgainUnchangedIsNoRevision() throws IOException {
    Archive archive = opened(folder);
    FieldBook book = corpus("S71-copes-with-the-rain.yaml");

    Keeping.Kept first = (Keeping.Kept) archive.keep(book, MORNING, false);
    Keeping again = archive.keep(book, NOON, false);

    assertThat(first.added()).isGreaterThan(10);
    assertThat(again).isEqualTo(new Keeping.Kept(0, 0, 0, first.added()));
    assertThat(archive.sites("COPES").getFirst().changed()).isEqualTo(MORNING.at());
    assertThat(archive.sites("no such")).isEmpty();
  }

  @Test
  void aChangedEntryKeepsItsHistoryAndARowPutInMovesNobody() throws IOException {
    Archive archive = opened(folder);
    String text = FieldBookWriter.write(corpus("S71-copes-with-the-rain.yaml"));
    FieldBook book = read(text);
    archive.keep(book, MORNING, false);
    UUID locate = book.visits().getFirst().locates().get(1).id().uuid();
    String row = item(text, locate.toString());

    Keeping.Kept changed =
        (Keeping.Kept) archive.keep(read(text.replace("depth: 3.3", "depth: 3.4")), NOON, false);
    Keeping.Kept without = (Keeping.Kept) archive.keep(read(text.replace(row, "")), NOON, false);
    Keeping.Kept back = (Keeping.Kept) archive.keep(book, NOON, false);

    assertThat(row).contains("3.3");
    assertThat(changed).matches(k -> k.changed() == 1 && k.added() == 0 && k.withdrawn() == 0);
    assertThat(without).matches(k -> k.withdrawn() == 1 && k.changed() == 0);
    assertThat(back).matches(k -> k.added() == 1 && k.changed() == 0);
    List<Revision> history = archive.history(book.id().uuid(), locate);
    assertThat(history).extracting(Revision::number).containsExactly(1, 2, 3, 4);
    assertThat(history).extracting(Revision::withdrawn).containsExactly(false, false, true, false);
    assertThat(history.get(1).by()).isEqualTo(NOON);
    assertThat(history.get(0).content()).contains("3.3");
    assertThat(history.get(1).content()).contains("3.4");
    assertThat(history.get(3).digest()).isEqualTo(history.get(0).digest());
    assertThat(FieldBookWriter.write(read(archive.written(book.id().uuid()).orElseThrow())))
        .isEqualTo(text);
  }

  /** The lines of the item of a list that holds a text. */
  private static String item(String text, String part) {
    return Pattern.compile("(?m)^(?=(( *)- .*\\n(?:\\2  .*\\n)*))")
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .filter(item -> item.contains(part))
        .min(Comparator.comparingInt(String::length))
        .orElseThrow();
  }

  @Test
  void anotherSiteOfTheSameNameIsNotWrittenOverTheFirst() throws IOException {
    Archive archive = opened(folder);
    FieldBook one = corpus("S71-copes-with-the-rain.yaml");
    FieldBook other =
        read(
            Files.readString(Path.of("..", "corpus", "S12-belly.yaml"))
                .replaceFirst("name: .*", "name: " + one.site().name()));
    archive.keep(one, MORNING, false);
    String before = archive.written(one.id().uuid()).orElseThrow();

    assertThat(other.id()).isEqualTo(one.id());
    assertThat(archive.keep(other, NOON, false)).isInstanceOf(Keeping.LikelyAnother.class);
    assertThat(archive.written(one.id().uuid())).contains(before);
    assertThat(archive.keep(other, NOON, true)).isInstanceOf(Keeping.Kept.class);
    assertThat(archive.written(one.id().uuid())).isNotEqualTo(Optional.of(before));
  }

  @Test
  void aRevisionIsNeitherChangedNorRemoved() throws IOException, SQLException {
    opened(folder).keep(corpus("S71-copes-with-the-rain.yaml"), MORNING, false);

    assertThatThrownBy(() -> run("UPDATE revision SET person = 'x'")).hasMessageContaining("never");
    assertThatThrownBy(() -> run("UPDATE revision SET content = 'x'"))
        .hasMessageContaining("never");
    assertThatThrownBy(() -> run("DELETE FROM revision")).hasMessageContaining("never");
  }

  @Test
  void whatIsDerivedIsMadeAnew() throws IOException, SQLException {
    Archive archive = opened(folder);
    FieldBook book = corpus("S71-copes-with-the-rain.yaml");
    archive.keep(book, MORNING, false);
    String before = archive.written(book.id().uuid()).orElseThrow();
    List<KeptSite> sites = archive.sites("");
    run("DELETE FROM entry_now WHERE section = 'locates'");
    run("UPDATE site_now SET name = 'something else', visits = 7");

    assertThat(archive.written(book.id().uuid())).isNotEqualTo(Optional.of(before));
    assertThat(archive.rebuild()).isTrue();
    assertThat(archive.written(book.id().uuid())).contains(before);
    assertThat(archive.sites("")).isEqualTo(sites);
    assertThat(archive.rebuild()).isFalse();
  }

  private void run(String sql) throws SQLException {
    try (Connection one =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
        Statement statement = one.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @Test
  void everyCommitIsOnTheDiskAndReferencesHold() {
    opened(folder);
    Jdbi jdbi = Database.connect(Database.file(folder));

    // 2 is FULL (SQLite's documentation of pragmas, from memory).
    assertThat(pragma(jdbi, "synchronous")).isEqualTo("2");
    assertThat(pragma(jdbi, "foreign_keys")).isEqualTo("1");
    assertThat(pragma(jdbi, "journal_mode")).isEqualTo("wal");
    assertThat(pragma(jdbi, "application_id")).isEqualTo(Integer.toString(Database.MARK));
  }

  private static String pragma(Jdbi jdbi, String name) {
    return jdbi.withHandle(h -> h.createQuery("PRAGMA " + name).mapTo(String.class).one());
  }

  @Test
  void whatIsNoArchiveIsLeftAlone() throws IOException, SQLException {
    Path full = Files.createDirectories(folder.resolve("full"));
    Files.writeString(full.resolve("note.txt"), "mine");
    Path other = Files.createDirectories(folder.resolve("other"));
    try (Connection one =
            DriverManager.getConnection("jdbc:sqlite:" + other.resolve("archive.db"));
        Statement statement = one.createStatement()) {
      statement.executeUpdate("CREATE TABLE mine (x TEXT)");
    }
    byte[] before = Files.readAllBytes(other.resolve("archive.db"));

    assertThat(refused(full)).isEqualTo(ArchiveTrouble.NOT_AN_ARCHIVE);
    assertThat(refused(other)).isEqualTo(ArchiveTrouble.NOT_AN_ARCHIVE);
    assertThat(full).isDirectoryContaining("glob:**/note.txt");
    assertThat(Files.readAllBytes(other.resolve("archive.db"))).isEqualTo(before);
  }

  @Test
  void whatCannotBeWrittenWholeIsNotWritten() throws IOException, SQLException {
    Archive archive = opened(folder);
    FieldBook book = corpus("S71-copes-with-the-rain.yaml");
    // The last thing that is written fails.
    run("ALTER TABLE site_now RENAME TO elsewhere");

    assertThat(archive.keep(book, MORNING, false)).isInstanceOf(Keeping.NotWritten.class);
    assertThat(archive.written(book.id().uuid())).isEmpty();
    assertThat(archive.history(book.id().uuid(), book.id().uuid())).isEmpty();
  }

  @Test
  void aFirstOpeningThatWasCutOffIsBegunAgain() throws IOException {
    Files.createFile(folder.resolve("archive.db"));
    Files.createFile(folder.resolve("archive.db-wal"));

    Archive archive = opened(folder);
    archive.keep(corpus("S71-copes-with-the-rain.yaml"), MORNING, false);
    assertThat(opened(folder).sites("")).hasSize(1);
  }

  @Test
  void aDamagedFileAndOneOfANewerDaylightAreRefused() throws IOException, SQLException {
    Archive archive = opened(folder.resolve("a"));
    for (long seed = 0; seed < 30; seed++) {
      archive.keep(new GeneratedBook(seed).book(), MORNING, false);
    }
    assertThat(archive.backup(folder.resolve("a.zip"))).isEmpty();
    assertThat(Archive.restore(folder.resolve("a.zip"), folder.resolve("b"))).isEmpty();
    Path file = folder.resolve("b").resolve("archive.db");
    byte[] bytes = Files.readAllBytes(file);
    for (int i = 8192; i < bytes.length; i += 3) {
      bytes[i] = (byte) ~bytes[i];
    }
    Files.write(file, bytes, StandardOpenOption.TRUNCATE_EXISTING);
    assertThat(refused(folder.resolve("b"))).isEqualTo(ArchiveTrouble.DAMAGED);

    try (Connection one =
            DriverManager.getConnection(
                "jdbc:sqlite:" + folder.resolve("a").resolve("archive.db"));
        Statement statement = one.createStatement()) {
      statement.executeUpdate(
          "INSERT INTO flyway_schema_history SELECT 99, '99', description, type, script, checksum,"
              + " installed_by, installed_on, execution_time, success FROM flyway_schema_history"
              + " WHERE version = '1'");
    }
    assertThat(refused(folder.resolve("a"))).isEqualTo(ArchiveTrouble.NEWER);
  }

  @Test
  void aBackupTakenWhileOthersWriteIsOfOneMoment() throws Exception {
    Path home = folder.resolve("home");
    Archive archive = opened(home);
    try (ExecutorService all = Executors.newFixedThreadPool(3)) {
      List<Future<?>> going = new ArrayList<>();
      for (int thread = 0; thread < 2; thread++) {
        int first = 100 * thread;
        Callable<Void> writing =
            () -> {
              for (long seed = first; seed < first + 15; seed++) {
                archive.keep(new GeneratedBook(seed).book(), MORNING, false);
              }
              return null;
            };
        going.add(all.submit(writing));
      }
      for (int i = 0; i < 5; i++) {
        Path file = folder.resolve("backup-" + i + ".zip");
        Path back = folder.resolve("back-" + i);
        assertThat(archive.backup(file)).isEmpty();
        assertThat(Archive.restore(file, back)).isEmpty();
        Archive restored = opened(back);
        assertThat(restored.rebuild()).isFalse();
        for (KeptSite site : restored.sites("")) {
          assertThat(restored.written(site.book())).isEqualTo(archive.written(site.book()));
        }
      }
      for (Future<?> one : going) {
        one.get();
      }
    }
    assertThat(archive.sites("").size()).isGreaterThan(25);
    assertThat(archive.backup(folder.resolve("backup-0.zip")).orElseThrow().key())
        .isEqualTo(ArchiveTrouble.THERE_ALREADY);
    assertThat(Archive.restore(folder.resolve("backup-0.zip"), home).orElseThrow().key())
        .isEqualTo(ArchiveTrouble.NOT_EMPTY);
    Files.writeString(folder.resolve("no.zip"), "no");
    Path nowhere = folder.resolve("nowhere");
    assertThat(Archive.restore(folder.resolve("no.zip"), nowhere).orElseThrow().key())
        .isEqualTo(ArchiveTrouble.NOT_A_BACKUP);
    assertThat(nowhere)
        .satisfiesAnyOf(p -> assertThat(p).doesNotExist(), p -> assertThat(p).isEmptyDirectory());
  }

  @Test
  void mediaAreInTheBackupAndComeBackWhole() throws IOException {
    Archive archive = opened(folder.resolve("home"));
    UUID book = UUID.randomUUID();
    Path push = Files.writeString(folder.resolve("push.mp4"), "a recording");
    Sha256 first = archive.media().take(push);
    archive.nameMedia(book, "film/push.mp4", first, MORNING);
    archive.nameMedia(book, "film/push.mp4", first, NOON);
    Sha256 second = archive.media().take(Files.writeString(push, "another recording"));
    archive.nameMedia(book, "film/push.mp4", second, NOON);
    Path saved = folder.resolve("saved.zip");
    assertThat(archive.backup(saved)).isEmpty();

    Path back = folder.resolve("back");
    assertThat(Archive.restore(saved, back)).isEmpty();
    Archive again = opened(back);
    assertThat(again.mediaOf(book)).containsExactly(Map.entry("film/push.mp4", second));
    assertThat(again.media().file(second).orElseThrow()).hasContent("another recording");
    assertThat(again.media().file(first).orElseThrow()).hasContent("a recording");
    assertThatThrownBy(() -> archive.nameMedia(book, "../push.mp4", first, NOON))
        .isInstanceOf(IllegalArgumentException.class);

    Files.delete(archive.media().file(first).orElseThrow());
    assertThat(archive.backup(folder.resolve("second.zip"))).isPresent();
    assertThat(folder.resolve("second.zip")).doesNotExist();
  }

  @Test
  void aBackupWhoseRecordingWasAlteredIsNotBroughtBack() throws IOException {
    Archive archive = opened(folder.resolve("home"));
    Path push = Files.writeString(folder.resolve("push.mp4"), "a recording");
    Sha256 content = archive.media().take(push);
    archive.nameMedia(UUID.randomUUID(), "push.mp4", content, MORNING);
    Files.writeString(archive.media().file(content).orElseThrow(), "a Recording");
    Path saved = folder.resolve("saved.zip");
    assertThat(archive.backup(saved)).isEmpty();

    Path back = folder.resolve("back");
    assertThat(Archive.restore(saved, back).orElseThrow().key())
        .isEqualTo(ArchiveTrouble.NOT_A_BACKUP);
    assertThat(back).isEmptyDirectory();
  }

  @Test
  void whatIsForgottenIsNowhereInTheFilesButItsDigestStays() throws IOException {
    Archive archive = opened(folder);
    FieldBook book = corpus("S12-belly.yaml");
    String written = FieldBookWriter.write(book);
    UUID id = book.id().uuid();
    String said = "Mx Q. Uttered-Once";
    FieldBook told = read(written.replaceFirst("name: [^\n]*", "name: " + said));
    archive.keep(told, MORNING, true);
    archive.keep(book, NOON, true);
    UUID entry = book.site().id().uuid();
    Revision before = archive.history(id, entry).getFirst();
    assertThat(before.content()).contains(said);

    Path made = Files.createDirectories(archive.derived(id)).resolve("field-book.yaml");
    Files.writeString(made, "what a page made of the book, and " + said);

    Optional<String> now = archive.written(id);
    assertThat(archive.forget(id, entry)).isPositive();

    Revision after = archive.history(id, entry).getFirst();
    assertThat(after.content()).isNull();
    assertThat(after.digest()).isEqualTo(before.digest());
    assertThat(archive.written(id)).isPresent().isEqualTo(now);
    assertThat(archive.rebuild()).isFalse();
    try (var files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
            .as(file.toString())
            .doesNotContain(said);
      }
    }
  }

  @Test
  void whileSomebodyReadsForgettingIsNotSaidToBeDone() throws Exception {
    Archive archive = opened(folder);
    FieldBook book = corpus("S12-belly.yaml");
    archive.keep(book, MORNING, true);
    UUID entry = book.site().id().uuid();
    try (Connection reader =
        DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"))) {
      reader.setAutoCommit(false);
      try (Statement asks = reader.createStatement();
          var rows = asks.executeQuery("SELECT COUNT(*) FROM revision")) {
        assertThat(rows.next()).isTrue();

        assertThatThrownBy(() -> archive.forget(book.id().uuid(), entry))
            .isInstanceOf(IOException.class);
      }
    }
    assertThat(archive.forget(book.id().uuid(), entry)).isZero();
  }
}
