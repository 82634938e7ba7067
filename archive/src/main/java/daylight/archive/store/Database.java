package daylight.archive.store;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationState;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteException;

/** The file that all is in: how it is opened, checked, brought up to date and written. */
final class Database {
  /** What says "Daylight" in the head of the file (SQLite's {@code application_id}). */
  static final int MARK = 0x4461796C;

  static final String NAME = "archive.db";
  private static final byte[] HEAD = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  /** Where SQLite keeps that number in the head of a file (its file format, from memory). */
  private static final int MARK_AT = 68;

  private static final int HEAD_LENGTH = 100;

  /** How long one waits for another that writes, milliseconds. */
  private static final int PATIENCE = 10_000;

  private Database() {}

  static Path file(Path folder) {
    return folder.resolve(NAME);
  }

  /** A database whose every commit is on the disk when it returns. */
  static Jdbi connect(Path file) {
    return Jdbi.create(source(file, config()));
  }

  /**
   * Keeps the file open, so that its log and the index of it stay: a disk without room for new ones
   * can then still be read, and no log is put away after each entry.
   */
  static Handle held(Jdbi jdbi) {
    Handle handle = jdbi.open();
    try {
      handle.createQuery("SELECT COUNT(*) FROM sqlite_schema").mapTo(Integer.class).one();
      return handle;
    } catch (JdbiException e) {
      handle.close();
      throw e;
    }
  }

  private static SQLiteConfig config() {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(PATIENCE);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    return config;
  }

  /** It puts our mark into the head of the file, for which it writes: only where a file begins. */
  private static SQLiteConfig marking() {
    SQLiteConfig config = config();
    config.setApplicationId(MARK);
    return config;
  }

  private static SQLiteDataSource source(Path file, SQLiteConfig config) {
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    return source;
  }

  /** What is wrong with the file of a folder that has one; one that is not ours is left alone. */
  static Optional<Statement> wrong(Path folder) throws IOException {
    Path file = file(folder);
    byte[] head = new byte[HEAD_LENGTH];
    int read;
    try (InputStream in = Files.newInputStream(file)) {
      read = in.readNBytes(head, 0, head.length);
    }
    boolean ours =
        read == head.length
            && Arrays.equals(Arrays.copyOf(head, HEAD.length), HEAD)
            && ByteBuffer.wrap(head, MARK_AT, 4).getInt() == MARK;
    if (!ours) {
      return Optional.of(trouble(ArchiveTrouble.NOT_AN_ARCHIVE, folder));
    }
    try {
      List<String> found =
          connect(file)
              .withHandle(h -> h.createQuery("PRAGMA integrity_check").mapTo(String.class).list());
      return found.equals(List.of("ok"))
          ? Optional.empty()
          : Optional.of(damaged(folder, found.getFirst()));
    } catch (JdbiException e) {
      return Optional.of(
          isDamage(e)
              ? damaged(folder, String.valueOf(e.getMessage()))
              : Archive.unreachable(folder, e));
    }
  }

  private static boolean isDamage(JdbiException e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLiteException lite) {
        String code = lite.getResultCode().name();
        return code.startsWith("SQLITE_CORRUPT") || code.equals("SQLITE_NOTADB");
      }
    }
    return false;
  }

  private static Statement damaged(Path folder, String found) {
    return Statement.of(
        ArchiveTrouble.DAMAGED,
        new Argument.Text(folder.toString()),
        new Argument.Text(found.lines().findFirst().orElse("")));
  }

  private static Statement trouble(ArchiveTrouble why, Path where) {
    return Statement.of(why, new Argument.Text(where.toString()));
  }

  /** Brings the tables up to date; what a newer Daylight wrote is left alone. */
  static Optional<Statement> migrate(Path folder) {
    Flyway flyway =
        Flyway.configure(Database.class.getClassLoader())
            .dataSource(source(file(folder), marking()))
            .locations("classpath:daylight/archive/store")
            .loggers("slf4j")
            .load();
    try {
      boolean newer =
          Arrays.stream(flyway.info().all())
              .anyMatch(
                  m ->
                      m.getState() == MigrationState.FUTURE_SUCCESS
                          || m.getState() == MigrationState.FUTURE_FAILED);
      if (newer) {
        return Optional.of(trouble(ArchiveTrouble.NEWER, folder));
      }
      flyway.migrate();
      return Optional.empty();
    } catch (FlywayException e) {
      return Optional.of(Archive.unreachable(folder, e));
    }
  }

  /** One question: what it reads is of one moment. */
  static <T> T reading(Jdbi jdbi, Function<Handle, T> read) {
    return jdbi.withHandle(read::apply);
  }

  /** All of it or nothing; one writes at a time. */
  static <T> T writing(Jdbi jdbi, Function<Handle, T> write) {
    return jdbi.inTransaction(write::apply);
  }

  /**
   * The same, and what was taken out is nowhere in the files any more when it returns.
   *
   * @throws IOException where somebody goes on reading what was; to be done again
   */
  static <T> T wiping(Jdbi jdbi, Function<Handle, T> write) throws IOException {
    return jdbi.withHandle(
        handle -> {
          T done = handle.inTransaction(write::apply);
          // What was removed stands in free pages until the file is written anew, and in the log
          // until that is emptied.
          handle.execute("VACUUM");
          int busy =
              handle
                  .createQuery("PRAGMA wal_checkpoint(TRUNCATE)")
                  .map((row, _) -> row.getInt("busy"))
                  .one();
          if (busy != 0) {
            throw new IOException("the archive is being read; its log could not be emptied");
          }
          return done;
        });
  }
}
