package daylight.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** What a folder holds. */
public final class Folders {
  private Folders() {}

  /** Deletes a folder with all that is in it; nothing where there is none. */
  public static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (var inside = Files.walk(folder)) {
        for (Path one : inside.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(one);
        }
      }
    }
  }

  /** Whether a folder holds nothing, or is not there. */
  public static boolean isEmpty(Path folder) throws IOException {
    return holdsNothingBut(folder, null);
  }

  /**
   * Whether a folder holds nothing, or is not there.
   *
   * @param beginning files whose names begin so do not count; null where all do
   */
  public static boolean holdsNothingBut(Path folder, @Nullable String beginning)
      throws IOException {
    if (!Files.exists(folder)) {
      return true;
    }
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (var inside = Files.list(folder)) {
      return inside.allMatch(
          file -> beginning != null && String.valueOf(file.getFileName()).startsWith(beginning));
    }
  }
}
