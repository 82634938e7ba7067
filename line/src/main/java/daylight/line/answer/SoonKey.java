package daylight.line.answer;

import daylight.line.measure.Key;
import java.util.Locale;

/** What is said of how soon; the arguments are given in braces. */
public enum SoonKey implements Key {
  /** By class and consequence, {0}: {1}. */
  SOON,
  /** How soon cannot be said for what has no class: {0}. */
  NO_CLASS,
  /** {0}, {1} from {2}. */
  ITEM,
  /** {0}: class {1}, {2}; {3}. */
  RULED,
  /** {0}: it is on the list of what calls for it. */
  LISTED,
  /** Perhaps {0}, if {1}, which is not known: {2}. */
  PERHAPS,
  /** Note what drains into it inside a building. */
  MISSING_FIXTURES,
  /** Note and locate the building walls and roads near it. */
  MISSING_WALLS;

  @Override
  public String key() {
    return "soon." + name().toLowerCase(Locale.ROOT);
  }
}
