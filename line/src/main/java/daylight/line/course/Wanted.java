package daylight.line.course;

import daylight.line.book.Place;

/** A figure of the line that somebody wants to know better. */
public sealed interface Wanted {
  /** How far the pipe may lie to one side at a place, square to its run. */
  record Across(Place place) implements Wanted {}

  /** How deep the invert lies below the ground at a place. */
  record Depth(Place place) implements Wanted {}

  /** How far the invert falls from one place to another. */
  record Fall(Place from, Place to) implements Wanted {}
}
