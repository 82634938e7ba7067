package daylight.line.measure;

import java.util.List;

/**
 * A figure or word that a complaint's sentence needs, typed so that it can be shown in any unit.
 */
public sealed interface Argument {

  /** Words as the person wrote them. */
  record Text(String text) implements Argument {}

  /** A dimensionless number. Always named through its interface, so it hides no other. */
  @SuppressWarnings("AvoidCommonTypeNames")
  record Number(double value) implements Argument {}

  /** How many. */
  record Count(long count) implements Argument {}

  /** A length in metres. */
  record Length(double metres) implements Argument {}

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
