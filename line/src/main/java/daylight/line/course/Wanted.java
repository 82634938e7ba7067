package daylight.line.course;

import daylight.line.book.Place;

/** A figure of the line that somebody wants to know better. */
public sealed interface Wanted {
  /** The label of the reach that it is of, or begins on. */
  default String reach() {
    return switch (this) {
      case Across(Place place) -> place.reach();
      case Widest(Place place) -> place.reach();
      case Depth(Place place) -> place.reach();
      case Fall(Place from, Place _) -> from.reach();
      case Length(String label) -> label;
    };
  }

  /** How far the pipe may lie to one side at a place, square to its run. */
  record Across(Place place) implements Wanted {}

  /** How far the pipe may lie off at a place, whichever way that is least sure. */
  record Widest(Place place) implements Wanted {}

  /** How long a reach is along the pipe, by its label. */
  record Length(String label) implements Wanted {}

  /** How deep the invert lies below the ground at a place. */
  record Depth(Place place) implements Wanted {}

  /** How far the invert falls from one place to another. */
  record Fall(Place from, Place to) implements Wanted {}
}
