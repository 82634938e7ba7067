package daylight.archive.form;

import daylight.line.measure.Dimension;
import java.util.List;

/** What may stand at a key. */
public sealed interface Shape {
  /** A text of a kind that is not a quantity. */
  record Plain(Kind kind) implements Shape {}

  /** One word out of an enum's, in lower case with hyphens. */
  record OneOf(Class<? extends Enum<?>> words) implements Shape {}

  /** A quantity: a text, or {@code {is: …, sd: …}} where its standard uncertainty is stated. */
  record Amount(Dimension dimension, Bare bare) implements Shape {}

  /** A list. */
  record Rows(Shape item) implements Shape {}

  /** Keys of their own. */
  record Part(Section section) implements Shape {}

  /** Several shapes are welcome. */
  record Either(List<Shape> shapes) implements Shape {
    public Either {
      shapes = List.copyOf(shapes);
    }
  }

  /** What a text that is not a quantity stands for. */
  enum Kind {
    WORDS,
    YES_NO,
    ID,
    DATE,
    /** A moment, with or without its date and offset. */
    TIME,
    ZONE,
    UNIT,
    BEARING,
    CLOCK,
    NUMBER,
    /** Seconds that may be negative. */
    SHIFT,
    SHA256,
    FILE
  }
}
