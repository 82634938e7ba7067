package daylight.line.measure;

import java.util.List;
import java.util.Optional;

/** What became of a text: its value, or why it was refused. */
public sealed interface Parsed<T> {

  /** The text was understood. */
  record Value<T>(T value) implements Parsed<T> {}

  /**
   * The text was refused.
   *
   * @param reason why
   * @param suggestions texts close to the refused one that would be understood, the likeliest
   *     first; may be empty
   */
  record Refused<T>(Refusal reason, List<String> suggestions) implements Parsed<T> {
    public Refused {
      suggestions = List.copyOf(suggestions);
    }
  }

  /** The value, or empty when the text was refused. */
  default Optional<T> asOptional() {
    return switch (this) {
      case Value<T>(T value) -> Optional.of(value);
      case Refused<T> refused -> Optional.empty();
    };
  }
}
