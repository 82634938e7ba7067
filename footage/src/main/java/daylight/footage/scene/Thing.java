package daylight.footage.scene;

/**
 * Something there is to be seen in the pipe. {@code at} and {@code to} say how far in it begins and
 * ends, in metres; clock positions are in radians clockwise from twelve.
 */
public sealed interface Thing {
  /** How far in it begins, in metres. */
  double at();

  /** How far in it ends, in metres; the same as {@link #at} for what is at one place. */
  default double to() {
    return at();
  }

  /** A joint whose far pipe sits {@code offset} metres toward {@code clock}. */
  record Step(double at, double offset, double clock) implements Thing {}

  /** A joint that stands open by {@code gap} metres. */
  record Gap(double at, double gap) implements Thing {}

  /** Roots from the wall between two clock positions, taking a share of the section. */
  record Roots(double at, double to, double from, double upTo, double share) implements Thing {}

  /** The mouth of another pipe. */
  record Opening(double at, double clock, double bore) implements Thing {}

  /** A crack: along the pipe where both clock positions are one, else around it. */
  record Crack(double at, double to, double from, double upTo, double width) implements Thing {}

  /** Water as deep as {@code depth} metres at its deepest. */
  record Water(double at, double to, double depth, boolean still) implements Thing {}

  /** Loose stuff on the bottom that takes a share of the section. */
  record Silt(double at, double to, double share) implements Thing {}

  /** Something that sticks in the pipe, grown inward from {@code clock}. */
  record Plug(double at, double clock, double share) implements Thing {}

  /** A pipe or a cable of somebody else's through the bore. */
  record Crossing(double at, double diameter, boolean cable) implements Thing {}

  /** A part of the wall that looks otherwise. */
  record Patch(double at, double to, double from, double upTo, Sort sort) implements Thing {}

  /** What a part of the wall looks like. */
  enum Sort {
    HOLE,
    SOIL,
    RUST,
    WORN,
    WET,
    GREASE,
    SCALE,
    MENDED
  }
}
