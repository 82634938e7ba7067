package daylight.archive.store;

import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Gravity;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A look at a whole book through the eyes of the reader of files: what it would refuse, and in
 * which entry that stands.
 */
final class Look {
  /**
   * Something that the reader refuses.
   *
   * @param owner the entry in which it stands; null where that cannot be told
   * @param complaint with a path that begins at the owner
   */
  record Seen(@Nullable UUID owner, Complaint complaint) {
    private Object self() {
      return List.of(
          String.valueOf(owner), complaint.code(), complaint.place().path(), complaint.arguments());
    }
  }

  /** A look at no book, which has nothing wrong in it. */
  static final Look NOTHING = new Look(null, List.of());

  private final @Nullable ReadBook read;
  private final List<Seen> seen;

  private Look(@Nullable ReadBook read, List<Seen> seen) {
    this.read = read;
    this.seen = seen;
  }

  /** Reads the book that these entries make. */
  static Look at(List<Leaf> leaves) {
    if (leaves.isEmpty()) {
      return NOTHING;
    }
    String text = BookTree.together(leaves);
    // Recordings may come later than the entry that names them, so they are not looked for.
    ReadBook read = FieldBookReader.read("book", text.getBytes(StandardCharsets.UTF_8), null);
    Map<String, UUID> paths = read.complaints().isEmpty() ? Map.of() : BookTree.paths(text);
    List<Seen> seen =
        read.complaints().stream()
            .filter(said -> said.code().gravity() == Gravity.STOPS)
            .map(said -> seen(said, paths))
            .toList();
    return new Look(read, seen);
  }

  private static Seen seen(Complaint said, Map<String, UUID> paths) {
    String path = said.place().path();
    for (int end = path.length(); end > 0; end = Math.max(lastStep(path, end), 0)) {
      UUID owner = paths.get(path.substring(0, end));
      if (owner != null) {
        String rest = path.substring(Math.min(path.length(), end + 1));
        return new Seen(owner, moved(said, rest));
      }
    }
    return new Seen(paths.get(""), moved(said, path));
  }

  private static int lastStep(String path, int end) {
    return Math.max(path.lastIndexOf('.', end - 1), path.lastIndexOf('[', end - 1));
  }

  private static Complaint moved(Complaint said, String path) {
    return new Complaint(said.code(), FilePlace.at(path), said.arguments());
  }

  /** Only what is refused. */
  Look withoutBook() {
    return new Look(null, seen);
  }

  /** What was read; null of no book. */
  @Nullable ReadBook read() {
    return read;
  }

  /** What is refused here and was not in an earlier look. */
  List<Seen> beyond(Look earlier) {
    Map<Object, Integer> known = new HashMap<>();
    earlier.seen.forEach(one -> known.merge(one.self(), 1, Integer::sum));
    List<Seen> fresh = new ArrayList<>();
    for (Seen one : seen) {
      if (known.merge(one.self(), -1, Integer::sum) < 0) {
        fresh.add(one);
      }
    }
    return fresh;
  }
}
