package daylight.line.answer;

import daylight.line.book.Id;
import daylight.line.book.Place;
import daylight.line.measure.Argument;
import daylight.line.measure.Key;
import org.jspecify.annotations.Nullable;

/** Something an answer rests on. */
public sealed interface Evidence {
  /**
   * A computed figure.
   *
   * @param what it is a figure of
   * @param figure its value
   * @param at where; null when it is not of one place
   */
  record Figure(Key what, Argument figure, @Nullable Place at) implements Evidence {}

  /**
   * Something seen in the pipe.
   *
   * @param finding the label of the finding
   * @param kind its kind in the catalogue
   * @param at where
   * @param size its telling quantity; null when none was noted
   */
  record Seen(String finding, String kind, Place at, @Nullable Argument size) implements Evidence {}

  /**
   * An entry of the book: a locate, a test, an exposure.
   *
   * @param entry which one
   * @param what it says
   */
  record Noted(Id entry, Argument what) implements Evidence {}

  /**
   * A published rule.
   *
   * @param rules id of the rule set
   * @param clause where in it
   * @param limit the figure it sets
   * @param source id in the list of sources
   */
  record Rule(String rules, String clause, Argument limit, String source) implements Evidence {}
}
