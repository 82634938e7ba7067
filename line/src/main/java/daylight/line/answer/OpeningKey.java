package daylight.line.answer;

import daylight.line.measure.Key;
import java.util.Locale;

/** What is said of the complaint and its causes; the arguments are given in braces. */
public enum OpeningKey implements Key {
  /** You told of {0}. */
  TOLD_KINDS,
  /** Taken from your words {1}: {0}. */
  TAKEN_FROM_WORDS,
  /** “{0}”: words of the complaint. */
  QUOTED,
  /** It shows at {0}. */
  TOLD_AT,
  /** It shows {0}. */
  TOLD_WHEN,
  /** It is not known where it shows, so the whole drain was looked at. */
  AT_NOT_KNOWN,
  /** Nothing tells where {0} lies on the drain, so the whole drain was looked at. */
  AT_NOT_ON_DRAIN,
  /** None of the kinds of complaint was recognised in it. */
  KIND_NOT_KNOWN,
  /** {0}, {1} from {2}. */
  FOUND,
  /** {0}, {1} from {2}, filling {3} of the bore. */
  FOUND_SHARE,
  /** {0} from {1} to {2} from {3}. */
  FOUND_ALONG,
  /** {0}, {1} from {2}: what goes down at {3} does not pass there. */
  ELSEWHERE_WAY,
  /** {0}, {1} from {2}: that is not near {3}. */
  ELSEWHERE_NEAR,
  /** {0}, {1} from {2}: that is not near the outlet. */
  ELSEWHERE_OUTLET,
  /** The camera saw {0} of that stretch clearly and found none. */
  NOT_FOUND,
  /** From {0} to {1} from {2} it is flatter than the rule asks: {3}. */
  TOO_FLAT,
  /** From {0} to {1} from {2} it runs backward: {3}. */
  BACKWARD,
  /** It falls as the rule asks all along; that it is too flat is {0} at most. */
  FALLS,
  /** Filled from {0}, it lost more than {1} allows. */
  FELL,
  /** Filled from {0}, it lost no more than {1} allows. */
  HELD,
  /** Smoke let in at {0} came out at {1}. */
  SMOKE_CAME,
  /** Smoke let in at {0} came out nowhere that was looked at. */
  SMOKE_NOWHERE,
  /** {1} from {2} its inside bottom lies {0} below the ground. */
  LIES_DEEP,
  /** It shows {0}. */
  SHOWS;

  @Override
  public String key() {
    return "opening." + name().toLowerCase(Locale.ROOT);
  }
}
