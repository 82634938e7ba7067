package daylight.line.counter;

import daylight.line.book.Pass;

/** Something that a recording's counter and its book do not agree on. */
public sealed interface Misfit {
  /**
   * A typed reading is not what the recording shows at that moment.
   *
   * @param shown the reading there, metres
   */
  record Anchor(Pass.Anchor anchor, double shown) implements Misfit {}

  /** The counter was set on the way and no pass of the book says so. */
  record Set(Events.SetAnew event) implements Misfit {}

  /**
   * What went before the counter was zeroed at the entry is not of the push.
   *
   * @param pass the label of the push
   */
  record Before(String pass, Events.SetAnew event) implements Misfit {}
}
