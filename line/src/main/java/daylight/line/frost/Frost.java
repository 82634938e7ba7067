package daylight.line.frost;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The door of this room: how deep the frost of a winter goes into the ground, and how sure that is.
 *
 * <p>Every input has a standard uncertainty. Each is moved by it to either side, and half of what
 * the depth moves by then is what that input adds; the squares add up, as the inputs err apart from
 * each other (Ghilani, <em>Adjustment Computations</em>, ch. 6, from memory).
 */
public final class Frost {
  /** The least share of itself that an input which cannot be zero is moved to. */
  private static final double LEAST = 0.05;

  private final Ground ground;
  private final Map<Input, Measured> inputs = new EnumMap<>(Input.class);
  private final Map<Input, Double> means = new EnumMap<>(Input.class);

  private Frost(Winter winter, Ground ground, Surface surface, Measured formula) {
    this.ground = ground;
    inputs.put(Input.FREEZING_INDEX, winter.freezingIndex());
    inputs.put(Input.MEAN_TEMPERATURE, winter.meanTemperature());
    inputs.put(Input.SEASON, winter.season());
    inputs.put(Input.DRY_DENSITY, ground.dryDensity());
    inputs.put(Input.MOISTURE, ground.moisture());
    Measured given = ground.conductivity();
    double doubt = given == null ? Kersten.DOUBT : given.sd() / given.value();
    inputs.put(Input.CONDUCTIVITY, new Measured(1, doubt));
    inputs.put(Input.SURFACE, surface.factor());
    Surface.Snow snow = surface.snow();
    if (snow != null) {
      inputs.put(Input.SNOW, snow.depth());
      inputs.put(Input.SNOW_CONDUCTIVITY, snow.conductivity());
    }
    inputs.put(Input.FORMULA, formula);
    inputs.forEach((input, measured) -> means.put(input, measured.value()));
  }

  /**
   * How deep the frost goes by the end of a winter.
   *
   * @param formula what its depths are to be multiplied by, with how far off it may be: 1 give or
   *     take
   */
  public static FrostDepth depth(Winter winter, Ground ground, Surface surface, Measured formula) {
    if (winter.freezingIndex().value() == 0) {
      return new FrostDepth.None(FrostDepth.NoFrost.NO_COLD);
    }
    if (winter.meanTemperature().value() <= 0) {
      return new FrostDepth.Beyond(FrostDepth.NotHeld.PERMAFROST);
    }
    if (ground.moisture().value() == 0) {
      return new FrostDepth.Beyond(FrostDepth.NotHeld.DRY_GROUND);
    }
    return new Frost(winter, ground, surface, formula).depth();
  }

  private FrostDepth depth() {
    Berggren nominal = new Berggren(ground, means);
    double depth = nominal.depth();
    if (!(depth > 0)) {
      return new FrostDepth.None(FrostDepth.NoFrost.SNOW);
    }
    List<Share> shares = new ArrayList<>();
    double variance = 0;
    for (Map.Entry<Input, Measured> one : inputs.entrySet()) {
      double moved = moved(one.getKey(), one.getValue());
      shares.add(new Share(one.getKey(), moved * moved));
      variance += moved * moved;
    }
    return new FrostDepth.Reaches(
        new Measured(depth, StrictMath.sqrt(variance)), nominal.terms(nominal.through()), shares);
  }

  /** What the depth moves by where an input moves by its uncertainty. */
  private double moved(Input input, Measured measured) {
    double least =
        switch (input) {
          case FREEZING_INDEX, MEAN_TEMPERATURE, SNOW -> 0;
          default -> LEAST * measured.value();
        };
    double up = measured.value() + measured.sd();
    double down = Math.max(least, measured.value() - measured.sd());
    return (at(input, up) - at(input, down)) / (up - down) * measured.sd();
  }

  private double at(Input input, double value) {
    Map<Input, Double> there = new EnumMap<>(means);
    there.put(input, value);
    return new Berggren(ground, there).depth();
  }
}
