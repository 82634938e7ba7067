package daylight.archive.store;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Objects;
import org.sqlite.SQLiteException;

/** Why a disk did not do what it should, as far as it says. */
final class Disk {
  /** What systems say of a disk without room, and of one that only reads (from memory). */
  private static final String NO_ROOM = "No space left";

  private static final String ONLY_READS = "Read-only file system";

  private Disk() {}

  /** Of a folder or file that could not be read or written. */
  static Statement why(Path where, Throwable e) {
    Throwable last = e;
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      last = cause;
      ArchiveTrouble known = known(cause);
      if (known != ArchiveTrouble.UNREACHABLE) {
        return Statement.of(known, new Argument.Text(where.toString()));
      }
    }
    if (Files.exists(where) && !Files.isWritable(where)) {
      return Statement.of(ArchiveTrouble.READ_ONLY, new Argument.Text(where.toString()));
    }
    // What was to be written stands in what the outer ones say.
    return Statement.of(
        ArchiveTrouble.UNREACHABLE,
        new Argument.Text(where.toString()),
        new Argument.Text(String.valueOf(last.getMessage())));
  }

  private static ArchiveTrouble known(Throwable cause) {
    return switch (cause) {
      case SQLiteException lite -> known(lite.getResultCode().name());
      case AccessDeniedException denied -> ArchiveTrouble.READ_ONLY;
      case ReadOnlyFileSystemException readOnly -> ArchiveTrouble.READ_ONLY;
      case FileSystemException file -> {
        String reason = Objects.requireNonNullElse(file.getReason(), "");
        yield reason(reason);
      }
      case java.io.IOException io -> reason(Objects.requireNonNullElse(io.getMessage(), ""));
      default -> ArchiveTrouble.UNREACHABLE;
    };
  }

  private static ArchiveTrouble known(String code) {
    return code.equals("SQLITE_FULL")
        ? ArchiveTrouble.FULL
        : code.startsWith("SQLITE_READONLY")
            ? ArchiveTrouble.READ_ONLY
            : ArchiveTrouble.UNREACHABLE;
  }

  private static ArchiveTrouble reason(String said) {
    return said.startsWith(NO_ROOM)
        ? ArchiveTrouble.FULL
        : said.startsWith(ONLY_READS) ? ArchiveTrouble.READ_ONLY : ArchiveTrouble.UNREACHABLE;
  }
}
