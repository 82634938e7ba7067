package daylight.report.map;

/** In what a number is given. */
public enum FieldUnit {
  /** No number, or one without a unit. */
  NONE,
  METRE,
  /** Of angle; bearings run clockwise. */
  DEGREE,
  /** Metres in a metre. */
  RATIO,
  /** Of one, from 0 to 1. */
  SHARE,
  /** So many standard uncertainties. */
  SIGMA
}
