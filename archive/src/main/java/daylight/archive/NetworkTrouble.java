package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a network file beyond its form. */
public enum NetworkTrouble implements ComplaintCode {
  /** An observation that is none of those known, or two at once: those known. */
  WHICH_OBSERVATION,
  /** A label or a point that stands here twice: the label. */
  TWICE,
  /** A label of no observation: the label. */
  UNKNOWN_LABEL,
  /** A matrix without a row and a column for each component: how many are needed. */
  MATRIX_SIZE,
  /** A matrix that is not symmetric. */
  NOT_SYMMETRIC,
  /** A matrix that is no covariance: a variance below nothing, or a correlation of one. */
  NOT_POSITIVE;

  @Override
  public String key() {
    return "network-file." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return Gravity.STOPS;
  }
}
