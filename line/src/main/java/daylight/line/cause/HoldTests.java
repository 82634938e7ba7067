package daylight.line.cause;

import daylight.line.book.Test;
import daylight.line.measure.Reading;

/** What a hold test showed, by how far its water fell. */
final class HoldTests {
  private HoldTests() {}

  /** Whether a test says anything: a hold test whose fall was noted. */
  static boolean tells(Test test) {
    return test.kind() == Test.Kind.HOLD && test.drop() != null;
  }

  static boolean held(Reading drop, double mayFall) {
    return drop.value() <= mayFall;
  }
}
