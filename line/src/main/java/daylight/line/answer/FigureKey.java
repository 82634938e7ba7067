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
  BACKWARD,
  URGENCY,
  PUT_IN,
  CAUGHT,
  CAUGHT_OFF,
  HELD_FOR,
  LOST,
  LOST_OFF,
  LOST_MOST,
  ALLOWED,
  WITHIN,
  CAPACITY_LEAST,
  CAPACITY_MOST,
  INFLOW,
  INFLOW_OFF,
  COPES,
  DECIDES,
  CARRIED,
  BORE,
  ROUGHNESS,
  RUNOFF,
  FITTINGS,
  FREE,
  SPEED,
  SPEED_LEAST,
  BACKED_UP,
  PUMPED,
  PUMPED_OFF,
  SHUT_OFF,
  HEAD,
  LIFT,
  RUNS_BACK,
  RUN,
  REST,
  STARTS;

  @Override
  public String key() {
    return "figure." + name().toLowerCase(Locale.ROOT);
  }
}
