package daylight.line.proving;

import daylight.line.book.Test;

/**
 * Something put in at one place and looked for at another.
 *
 * @param test the water run, dye or smoke
 * @param seen where it was looked for, and whether it came
 * @param node the label of the node where it was put in, or that the fixture or roof drains into;
 *     empty where the book knows none
 * @param said whether the book says that the pipe leads there, or may
 * @param meaning what that says
 */
public record Passage(Test test, Test.Seen seen, String node, boolean said, Meaning meaning) {
  /** What it says that it came or did not. */
  public enum Meaning {
    /** It came where the book says that the pipe leads. */
    AS_THE_BOOK_SAYS,
    /** The book says that the pipe leads there, and it did not come. */
    DID_NOT_COME,
    /** It came where the book does not say that the pipe leads. */
    ELSEWHERE,
    /** Smoke came out of a fixture: its trap is dry or broken, or a joint beside it is open. */
    INDOORS,
    /** It came out of the ground: the pipe is open to it. */
    OUT_OF_THE_GROUND,
    /** It did not come where the book does not say that it must. */
    NOTHING
  }
}
