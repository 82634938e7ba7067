package daylight.line.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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

  /** The value changed by a function, or the same refusal. */
  default <U> Parsed<U> map(Function<T, U> change) {
    return then(value -> new Value<>(change.apply(value)));
  }

  /** What a further step makes of the value, or the same refusal. */
  default <U> Parsed<U> then(Function<T, Parsed<U>> step) {
    return switch (this) {
      case Value<T>(T value) -> step.apply(value);
      case Refused<T>(Refusal reason, List<String> suggestions) ->
          new Refused<>(reason, suggestions);
    };
  }

  /** A refusal without suggestions. */
  static <T> Parsed<T> refused(Refusal reason) {
    return new Refused<>(reason, List.of());
  }
}
