package daylight.line.answer;

import daylight.line.measure.Key;
import java.util.Locale;

/** What a computed figure is a figure of. */
public enum FigureKey implements Key {
  LENGTH,
  DEPTH_LEAST,
  DEPTH_MOST,
  DEPTH,
  TAPE,
  CORRIDOR,
  CONTRADICTED,
  STATION,
  CROSSING,
  BESIDE,
  BEYOND,
  SEEN_SHARE,
  SEEN_LENGTH,
  FILLED,
  COUNT,
  GRADE,
  SLOPE,
  CHANCE,
  WATER_DEPTH,
  AFTER,
  DROP,
  BACKWARD,
  URGENCY;

  @Override
  public String key() {
    return "figure." + name().toLowerCase(Locale.ROOT);
  }
}
