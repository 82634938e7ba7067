package daylight.line.flow;

/**
 * The friction factor f of Darcy and Weisbach: the slope lost is f ÷ (4 × hydraulic radius) ×
 * speed² ÷ 2g.
 */
final class Friction {
  /** Newton's steps; four do. */
  private static final int STEPS = 12;

  private Friction() {}

  /**
   * Laminar 64 ÷ Re, turbulent by Colebrook, and between Re 2000 and 4000 straight from one to the
   * other on paper with logarithmic scales, so that head still rises with flow. That bridge is
   * common practice, no source.
   *
   * @param reynolds Reynolds number, positive
   * @param relative height of the roughness over the diameter
   */
  static double factor(double reynolds, double relative) {
    return switch (Regime.of(reynolds)) {
      case LAMINAR -> 64 / reynolds;
      case TRANSITION ->
          64 / Regime.LAMINAR_TO * StrictMath.pow(reynolds / Regime.LAMINAR_TO, bridge(relative));
      case TURBULENT -> colebrook(reynolds, relative);
    };
  }

  /** With which power of the Reynolds number the factor grows between the two regimes. */
  static double bridge(double relative) {
    double from = 64 / Regime.LAMINAR_TO;
    double to = colebrook(Regime.TURBULENT_FROM, relative);
    return StrictMath.log(to / from) / StrictMath.log(Regime.TURBULENT_FROM / Regime.LAMINAR_TO);
  }

  /** 1/√f = −2 log₁₀(ε/3.7D + 2.51/(Re√f)), solved by Newton's steps from the rough pipe. */
  static double colebrook(double reynolds, double relative) {
    double wall = relative / 3.7;
    double skin = 2.51 / reynolds;
    double tenth = StrictMath.log(10);
    double x = 8;
    for (int i = 0; i < STEPS; i++) {
      double inner = wall + skin * x;
      double off = x + 2 / tenth * StrictMath.log(inner);
      x -= off / (1 + 2 / tenth * skin / inner);
    }
    return 1 / (x * x);
  }
}
