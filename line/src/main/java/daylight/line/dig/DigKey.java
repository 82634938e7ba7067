package daylight.line.dig;

import daylight.line.measure.Key;
import java.util.Locale;

/** What there is to say about a dig in words. */
public enum DigKey implements Key {
  /** Where the reach {0} runs is not known. */
  NO_COURSE,
  /** The reach {0} is known to {2} only, and {1} was asked for. */
  BEYOND,
  /** Fewer than two landmarks have a place; tie the spot to two and it can be found again. */
  FEW_LANDMARKS,
  /** No two landmarks stand so that their tapes meet well there. */
  FLAT_TIES,
  /** No depth was read anywhere near. */
  NO_DEPTH,
  /** The bore is not written down, so the top of the pipe is not known apart from its bottom. */
  NO_BORE,
  /** The pipe is of iron there, through which a depth read by a receiver is not to be relied on. */
  IRON,
  /** The tape from {0} is longer than {1}. */
  LONG_TAPE,
  /** It runs on for {0} from there. */
  RUNS_ON,
  /** The boundary {0} has a point without a place in plan, so nothing is said of it. */
  BOUNDARY_OPEN;

  @Override
  public String key() {
    return "dig." + name().toLowerCase(Locale.ROOT);
  }
}
