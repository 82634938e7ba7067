package daylight.line.dig;

import daylight.line.measure.Statement;

/** Where to dig, or why that cannot be said. */
public sealed interface Dig permits DigTarget, Dig.Unknown {
  /** It cannot be said, and what is missing. */
  record Unknown(Statement missing) implements Dig {}
}
