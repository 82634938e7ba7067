package daylight.line.course;

import daylight.line.book.Id;
import daylight.line.book.Priors;
import java.util.Comparator;

/** What an uncertainty comes from, so that it leads back to it for certain. */
public sealed interface Source extends Comparable<Source> {
  /**
   * Something written in the book.
   *
   * @param id the entry; two of one label differ by their identity
   * @param sort what sort of entry it is
   * @param part which of its readings
   */
  record OfEntry(Id id, Sort sort, Part part) implements Source {}

  /**
   * What is taken as usual where nothing was measured.
   *
   * @param kind its row among the priors
   */
  record OfPrior(Priors.Kind kind) implements Source {}

  /** The sorts of entries that a line is worked out from. */
  enum Sort {
    LOCATE,
    EXPOSURE,
    TIE,
    LEVEL,
    BEND,
    COUNTER_CHECK,
    PASS,
    FINDING,
    NODE,
    REACH,
    VISIT
  }

  /** Which reading of an entry. */
  enum Part {
    /** Where it lies on the ground. */
    SPOT,
    /** How deep it is. */
    DEPTH,
    /** What the counter read there. */
    CABLE,
    /** Where the receiver fell silent. */
    SILENT,
    /** The receiver raised. */
    LIFT,
    /** How far it turns. */
    ANGLE,
    LENGTH,
    BORE,
    /** How far behind the lens the transmitter rides. */
    BEHIND,
    /** How high above the bottom the transmitter rides. */
    ABOVE,
    /** The only thing it reads. */
    READING
  }

  /** Whether no entry stands behind it. */
  default boolean assumed() {
    return this instanceof OfPrior;
  }

  /** Entries by label, identity and part, then priors in their order. */
  @Override
  default int compareTo(Source other) {
    return switch (this) {
      case OfPrior(Priors.Kind kind) ->
          other instanceof OfPrior(Priors.Kind that) ? kind.compareTo(that) : 1;
      case OfEntry one ->
          other instanceof OfEntry two
              ? Comparator.comparing(OfEntry::id)
                  .thenComparing(OfEntry::sort)
                  .thenComparing(OfEntry::part)
                  .compare(one, two)
              : -1;
    };
  }
}
