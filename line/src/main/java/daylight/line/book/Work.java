package daylight.line.book;

import daylight.line.measure.Reading;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something done to the line. */
public sealed interface Work extends Entry {
  /** Cleaned: {@code how} in words, over these reaches. */
  record Cleaning(Id id, List<String> reaches, String how) implements Work {
    public Cleaning {
      reaches = List.copyOf(reaches);
    }
  }

  /**
   * Mended.
   *
   * @param from distance from the upstream node, in metres; null for the whole reach
   * @param to the same at its other end
   * @param altered true when the pipe does not lie as it did: earlier geometry of that reach no
   *     longer counts
   */
  record Repair(
      Id id,
      @Nullable LocalDate date,
      String reach,
      @Nullable Reading from,
      @Nullable Reading to,
      String what,
      boolean altered)
      implements Work {}
}
