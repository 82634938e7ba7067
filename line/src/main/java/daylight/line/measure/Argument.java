package daylight.line.measure;

import java.time.LocalDate;
import java.util.List;

/** A figure or word that a sentence needs, typed so that it can be shown in any unit. */
public sealed interface Argument {

  /** Words as the person wrote them. */
  record Text(String text) implements Argument {}

  /** A dimensionless number. Always named through its interface, so it hides no other. */
  @SuppressWarnings("AvoidCommonTypeNames")
  record Number(double value) implements Argument {}

  /** How many. */
  record Count(long count) implements Argument {}

  /** A length in metres: a distance along the ground or the pipe, or a depth. */
  record Length(double metres) implements Argument {}

  /** A length with its uncertainty, metres. */
  record UncertainLength(Measured metres) implements Argument {}

  /** An inside diameter in metres. */
  record Bore(double metres) implements Argument {}

  /** A size on the pipe wall or a depth of water, in metres, shown in small units. */
  record Small(double metres) implements Argument {}

  /** A slope with its uncertainty, a ratio. */
  record UncertainSlope(Measured slope) implements Argument {}

  /** An angle with its uncertainty, radians. */
  record UncertainAngle(Measured radians) implements Argument {}

  /** A probability, from 0 to 1, said in words and per cent. */
  record Probability(double value) implements Argument {}

  /** A word or phrase of the message file. */
  record Term(String key) implements Argument {}

  /** A day. */
  record Day(LocalDate date) implements Argument {}

  /** Several words or figures, one after the other. */
  record Several(List<Argument> items) implements Argument {
    public Several {
      items = List.copyOf(items);
    }
  }

  /** Several words or figures of which one holds. */
  record Either(List<Argument> items) implements Argument {
    public Either {
      items = List.copyOf(items);
    }
  }

  /** Part of a sentence that is said by a message of its own. */
  record Said(Statement statement) implements Argument {}

  /** A value of any other kind, in the SI unit of its dimension. */
  record Quantity(Dimension dimension, double value) implements Argument {}

  /** The label of an entry, such as {@code L3}. */
  record Label(String label) implements Argument {}

  /** Texts that would have been accepted, the likeliest first. */
  record Choices(List<String> choices) implements Argument {
    public Choices {
      choices = List.copyOf(choices);
    }
  }

  /** Why a text was refused. */
  record Reason(Refusal refusal) implements Argument {}
}
