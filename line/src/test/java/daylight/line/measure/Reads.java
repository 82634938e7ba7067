package daylight.line.measure;

import static org.assertj.core.api.Assertions.fail;

/** Takes parsing outcomes apart for assertions. */
final class Reads {
  private Reads() {}

  static <T> T value(Parsed<T> parsed) {
    return switch (parsed) {
      case Parsed.Value<T>(T value) -> value;
      case Parsed.Refused<T> refused -> fail("refused: " + refused);
    };
  }

  static <T> Parsed.Refused<T> refusal(Parsed<T> parsed) {
    return switch (parsed) {
      case Parsed.Value<T> accepted -> fail("accepted: " + accepted);
      case Parsed.Refused<T> refused -> refused;
    };
  }
}
