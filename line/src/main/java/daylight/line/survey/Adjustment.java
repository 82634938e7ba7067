package daylight.line.survey;

/** What became of a {@link PlaneNetwork}. */
public sealed interface Adjustment permits Adjusted, Unadjustable {}
