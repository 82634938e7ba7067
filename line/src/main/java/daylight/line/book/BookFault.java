package daylight.line.book;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What may not make sense in a book that was read well; the arguments are named with each. */
public enum BookFault implements ComplaintCode {
  /** No such node, fixture or point for a complaint to be at: the label, the nearest known. */
  UNKNOWN_SPOT,
  /** No such point: the label, the nearest known. */
  UNKNOWN_POINT,
  /** No such landmark: the label, the nearest known. */
  UNKNOWN_LANDMARK,
  /** No such node: the label, the nearest known. */
  UNKNOWN_NODE,
  /** No such reach: the label, the nearest known. */
  UNKNOWN_REACH,
  /** No such pass in this visit: the label, the nearest known. */
  UNKNOWN_PASS,
  /** No such cleaning or repair: the label, the nearest known. */
  UNKNOWN_WORK,
  /** No such media: the label, the nearest known. */
  UNKNOWN_MEDIA,
  /** No such picture among the stills of the finding: the label, the nearest of them. */
  UNKNOWN_STILL,
  /** A kind of finding that the catalogue does not have, kept ungraded: the kind, the nearest. */
  UNKNOWN_KIND(Gravity.NOTE),
  /** A label that an earlier entry has: the label. */
  DUPLICATE_LABEL,
  /** An identity that an earlier entry has: that entry's label. */
  DUPLICATE_ID,
  /** A measurement between a point and itself: its label. */
  TIE_TO_ITSELF,
  /** A length that cannot be negative: the length. */
  NEGATIVE,
  /** A length that must be above zero: the length. */
  NOT_POSITIVE,
  /** A reach that ends where it begins: the node. */
  REACH_TO_ITSELF,
  /** A reach that closes a loop within its line: the line. */
  LOOP,
  /** A reach that hangs together with no other of its line: the line. */
  NOT_CONNECTED(Gravity.DOUBT),
  /** A walk without a reach. */
  EMPTY_WALK,
  /** A reach that does not go on from where the walk was: the reach, the node. */
  WALK_BROKEN,
  /** A counter reading past the end of the pass: the reading, the end. */
  BEYOND_END,
  /** Two readings at one moment of the footage: its label, both readings; the first is taken. */
  ANCHOR_TWICE(Gravity.DOUBT),
  /** A moment before the footage begins: the moment. */
  NEGATIVE_MOMENT,
  /**
   * A counter set back, so that one reading means two places: what it read before and after, and by
   * how much that is less.
   */
  RESET_BACKWARDS,
  /** A stretch that ends before it begins: its beginning, its end. */
  FROM_AFTER_TO,
  /** A bend of nothing or of more than half a turn: the angle. */
  BEND_ANGLE,
  /** Water deeper than the largest bore it can stand in: the depth, the bore. */
  DEEPER_THAN_BORE,
  /** A quantity that its kind does not have: its name. */
  QUANTITY_OF_OTHER_KIND,
  /** A word that may say only a few things: what it says, what it may say. */
  SAYS_OTHERWISE,
  /** A counter reading in a visit of several passes or of none: the reading. */
  WHICH_PASS,
  /** A locate whose spot nothing tells. */
  NO_SPOT(Gravity.DOUBT),
  /** With the receiver higher it showed no more: the lift, what it showed. */
  LIFT_SHRINKS(Gravity.DOUBT),
  /** Two silent places in the wrong order: how far before, how far after. */
  NULLS_CROSSED(Gravity.DOUBT),
  /** A transmitter so far behind the lens: the distance. */
  SONDE_FAR(Gravity.DOUBT),
  /** A place of a test that nothing is called: the label, the nearest known. */
  UNKNOWN_TEST_PLACE,
  /** A hold test whose level rose: by how much. */
  HOLD_GAINS,
  /** A hold test that lost water over an unknown time. */
  HOLD_WITHOUT_DURATION(Gravity.DOUBT),
  /** A reach named twice for one hold test: its label. */
  HELD_TWICE,
  /** A particular that only another kind of test has: the kind it is, the name. */
  OF_OTHER_TEST(Gravity.DOUBT),
  /** More water caught than was put in: how much, and how much was put in. */
  MORE_OUT_THAN_IN(Gravity.DOUBT),
  /** A boundary of fewer than two points: how many. */
  BOUNDARY_TOO_SHORT,
  /** A visit dated before the one above it: both days. */
  VISITS_OUT_OF_ORDER(Gravity.DOUBT),
  /** A ticket that had run out on the day of the visit: its last day, the day of the visit. */
  TICKET_EXPIRED(Gravity.DOUBT);

  private final Gravity gravity;

  BookFault() {
    this(Gravity.STOPS);
  }

  BookFault(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "book." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }
}
