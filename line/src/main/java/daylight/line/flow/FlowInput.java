package daylight.line.flow;

import daylight.line.measure.Key;
import java.util.Locale;

/** What a figure of this room may hang on. */
public enum FlowInput implements Key {
  BORE,
  SLOPE,
  ROUGHNESS,
  FLOW,
  LIFT,
  LENGTH,
  FITTINGS,
  PUMP,
  PIT_AREA,
  LEVELS,
  INFLOW,
  ROOF,
  RAIN,
  RUNOFF,
  RISE,
  TIME,
  FIXTURES;

  @Override
  public String key() {
    return "flow_input." + name().toLowerCase(Locale.ROOT);
  }
}
