package daylight.line.condition;

import daylight.line.measure.Key;
import java.util.Locale;

/** How soon something is to be done: five classes, 1 the worst; always said with their word. */
public enum Grade implements Key {
  /** At once. */
  AT_ONCE(1),
  /** In the short term. */
  SHORT_TERM(2),
  /** In the medium term. */
  MEDIUM_TERM(3),
  /** In the long term. */
  LONG_TERM(4),
  /** When other works bring somebody there. */
  WITH_OTHER_WORKS(5);

  private final int number;

  Grade(int number) {
    this.number = number;
  }

  /** From 1, the worst, to 5. */
  public int number() {
    return number;
  }

  /** Whether this asks for action sooner than another. */
  public boolean worseThan(Grade other) {
    return number < other.number;
  }

  @Override
  public String key() {
    return "grade." + name().toLowerCase(Locale.ROOT);
  }
}
