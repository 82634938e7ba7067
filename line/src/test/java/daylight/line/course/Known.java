package daylight.line.course;

import org.jspecify.annotations.Nullable;

/** Asks in a test for something that must be there. */
public final class Known {
  private Known() {}

  /** The value; fails the test where there is none. */
  public static <T> T known(@Nullable T value) {
    if (value == null) {
      throw new AssertionError("expected to be known, was not");
    }
    return value;
  }
}
