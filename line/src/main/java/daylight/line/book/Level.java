package daylight.line.book;

import daylight.line.measure.Reading;

/** One measurement of height, in metres, up positive. */
public sealed interface Level extends Entry {
  /** What at a point was levelled. */
  enum Part {
    GROUND,
    INVERT,
    CROWN,
    WATER
  }

  /**
   * Something whose height can be measured.
   *
   * @param point label of a landmark, locate, exposure or node
   */
  record Mark(String point, Part part) {}

  /** A rod held on a mark, read from an instrument whose own height is unknown. */
  record Rod(Id id, String setUp, Mark mark, Reading rod) implements Level {}

  /** A height above the site datum. */
  record Height(Id id, Mark mark, Reading height) implements Level {}

  /** How much higher one mark is than another, as by a hose level or a laser. */
  record Rise(Id id, Mark from, Mark to, Reading rise) implements Level {}
}
