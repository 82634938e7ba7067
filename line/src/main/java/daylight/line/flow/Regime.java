package daylight.line.flow;

import daylight.line.measure.Key;
import java.util.Locale;

/**
 * How water moves, by its Reynolds number: speed × 4 × hydraulic radius ÷ viscosity. The limits are
 * 2000 and 4000 (White, from memory: 2000 to 2300 for the first).
 */
public enum Regime implements Key {
  /** In layers: the wall's roughness does not matter. */
  LAMINAR,
  /** Neither, now one and now the other: no formula holds, and a bridge is laid between both. */
  TRANSITION,
  /** In eddies, as nearly all drain water does. */
  TURBULENT;

  static final double LAMINAR_TO = 2000;
  static final double TURBULENT_FROM = 4000;

  static Regime of(double reynolds) {
    if (reynolds < LAMINAR_TO) {
      return LAMINAR;
    }
    return reynolds < TURBULENT_FROM ? TRANSITION : TURBULENT;
  }

  @Override
  public String key() {
    return "regime." + name().toLowerCase(Locale.ROOT);
  }
}
