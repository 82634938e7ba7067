package daylight.line.frost;

import daylight.line.measure.Measured;

/** What lies between the water in a pipe and the cold. */
public sealed interface Around {

  /** How it holds heat back, for one metre of pipe: metres and kelvin per watt. */
  Measured resistance();

  /**
   * A layer round the pipe.
   *
   * @param inner its inside diameter, metres
   * @param outer its outside diameter, metres, greater
   * @param conductivity watts per metre and kelvin
   */
  record Insulated(double inner, Measured outer, Measured conductivity) implements Around {
    public Insulated {
      if (!(inner > 0) || !(outer.value() > inner) || !(conductivity.value() > 0)) {
        throw new IllegalArgumentException(
            "a layer lies round a pipe and conducts, were "
                + inner
                + " m, "
                + outer.value()
                + " m, "
                + conductivity.value()
                + " W/m·K");
      }
    }

    /** ln(outer/inner)/(2πk). */
    @Override
    public Measured resistance() {
      double log = StrictMath.log(outer.value() / inner);
      double value = log / (2 * StrictMath.PI * conductivity.value());
      double byOuter = outer.sd() / outer.value() / log;
      double byConductivity = conductivity.sd() / conductivity.value();
      return new Measured(value, value * StrictMath.hypot(byOuter, byConductivity));
    }
  }

  /**
   * The ground: by the shape factor of a cylinder below a plane. The cold it stands against is that
   * of the ground at its depth, as it would be without the pipe.
   *
   * @param depth of its axis below the surface, metres
   * @param radius its outside radius, metres, less than the depth
   * @param conductivity of the ground, watts per metre and kelvin
   */
  record Buried(Measured depth, double radius, Measured conductivity) implements Around {
    public Buried {
      if (!(radius > 0) || !(depth.value() > radius) || !(conductivity.value() > 0)) {
        throw new IllegalArgumentException(
            "a pipe lies below the surface in ground that conducts, were "
                + depth.value()
                + " m, "
                + radius
                + " m, "
                + conductivity.value()
                + " W/m·K");
      }
    }

    /** acosh(depth/radius)/(2πk). */
    @Override
    public Measured resistance() {
      double ratio = depth.value() / radius;
      double root = StrictMath.sqrt(ratio * ratio - 1);
      double acosh = StrictMath.log(ratio + root);
      double value = acosh / (2 * StrictMath.PI * conductivity.value());
      double byDepth = depth.sd() / radius / root / acosh;
      double byConductivity = conductivity.sd() / conductivity.value();
      return new Measured(value, value * StrictMath.hypot(byDepth, byConductivity));
    }
  }
}
