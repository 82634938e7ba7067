package daylight.line.measure;

import java.util.List;

/**
 * Something to be said, without the sentence that says it: the key of a message and the figures and
 * words that go into it, in the order of the message.
 */
public record Statement(Key key, List<Argument> arguments) {
  public Statement {
    arguments = List.copyOf(arguments);
  }

  /** A statement with its arguments one after another. */
  public static Statement of(Key key, Argument... arguments) {
    return new Statement(key, List.of(arguments));
  }
}
