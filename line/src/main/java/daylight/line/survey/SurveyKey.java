package daylight.line.survey;

import daylight.line.measure.Key;
import java.util.Locale;

/** What the survey has to say in words. */
public enum SurveyKey implements Key {
  /** Nothing places {0}: {1}. */
  POINT_UNTIED,
  /** Two places fit {0} alike; say on which side of {1} it lies. */
  POINT_MIRROR,
  /** Nothing ties the measurements together: {0}. */
  SURVEY_FAILED,
  /** The ties place {0} on the side that was ruled out. */
  SIDE_CONTRADICTED,
  /** The {1} of {0}, {2}, seems {3} {4}; perhaps {5}. */
  READING_SUSPECT,
  /** One of the readings {0} does not fit: {1}. */
  READINGS_SUSPECT,
  /** One of them: the {1} of {0}, {2}, {3} {4}; perhaps {5}. */
  IF_IT_IS,
  /** {0} was written for {1}: two figures changed places. */
  LIKELY_SWAPPED,
  /** {0} was written for {1}: one figure was taken for another. */
  LIKELY_FIGURE,
  /** {1} was meant, not {0}: the wrong unit. */
  LIKELY_UNIT,
  /** {0} is feet and inches, {1}. */
  LIKELY_FEET_INCHES,
  /** {0} is {1} in decimal feet. */
  LIKELY_DECIMAL,
  /** {0} too much was read or written. */
  LIKELY_OVER,
  /** {0} too little was read or written. */
  LIKELY_UNDER,
  /** The sign was lost. */
  LIKELY_SIGN,
  /** It was measured from {1}, not from {0}. */
  LIKELY_LANDMARK,
  /** The fix was taken at {1}, not at {0}. */
  LIKELY_FIX,
  /** Along was measured from {1}, not from {0}. */
  LIKELY_OTHER_END,
  /** Along and out changed places. */
  LIKELY_EXCHANGED,
  /** It lies on the other side of the wall. */
  LIKELY_OTHER_SIDE,
  /** The bearing was read from the far end. */
  LIKELY_BACK,
  /** The angle was read against the clock. */
  LIKELY_COUNTER_CLOCKWISE;

  @Override
  public String key() {
    return "survey." + name().toLowerCase(Locale.ROOT);
  }
}
