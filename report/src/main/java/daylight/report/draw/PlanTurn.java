package daylight.report.draw;

/** Which way up a plan lies on its sheet. */
public enum PlanTurn {
  /** Grid north is up. */
  NORTH_UP,
  /** The line runs from left to right, the way the water goes. */
  ALONG,
  /** Grid north is up, unless another way draws it a good deal larger. */
  AS_IT_FITS
}
