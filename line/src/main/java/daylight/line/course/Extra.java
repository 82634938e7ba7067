package daylight.line.course;

import daylight.line.book.Place;

/** A measurement that could still be made, as good as its kind usually is. */
public sealed interface Extra {
  /** Where on the line it would be made. */
  Place place();

  /** The transmitter found from above: spot and depth, with the receiver of the last visit. */
  record Locate(Place place) implements Extra {}

  /** The height of the ground above the line, levelled from what is levelled already. */
  record Level(Place place) implements Extra {}

  /** The pipe laid bare, or felt with a rod: its place and its depth by tape. */
  record Probe(Place place) implements Extra {}
}
