package daylight.line.frost;

import daylight.line.measure.Key;
import daylight.line.measure.Measured;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** How deep the frost of a winter goes, or why there is no depth to tell. */
public sealed interface FrostDepth {

  /**
   * It goes into the ground.
   *
   * @param depth below the ground at the winter's end, metres
   * @param terms what it was computed with
   * @param shares what each input adds to its variance, the greatest first
   */
  record Reaches(Measured depth, Terms terms, List<Share> shares) implements FrostDepth {
    public Reaches {
      shares =
          shares.stream().sorted(Comparator.comparingDouble(Share::variance).reversed()).toList();
    }

    /** The input that makes the depth most unsure. */
    public Input deciding() {
      return shares.getFirst().input();
    }
  }

  /** The ground does not freeze. */
  record None(NoFrost why) implements FrostDepth {}

  /** The formula does not hold here. */
  record Beyond(NotHeld why) implements FrostDepth {}

  /** Why the ground does not freeze. */
  enum NoFrost implements Key {
    /** The air does not freeze over the winter. */
    NO_COLD,
    /** The warmth of the ground holds the cold off under the snow. */
    SNOW;

    @Override
    public String key() {
      return "no-frost." + name().toLowerCase(Locale.ROOT);
    }
  }

  /** Why the formula does not hold. */
  enum NotHeld implements Key {
    /** The year is at or below freezing on average: the ground may be frozen for good. */
    PERMAFROST,
    /** No water in the ground, so no heat of freezing to hold the frost up. */
    DRY_GROUND;

    @Override
    public String key() {
      return "beyond-frost." + name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * The terms of the formula, by their usual letters.
   *
   * @param surfaceIndex n·FI, what the ground's surface gets of the winter, °C·days; under snow
   *     what comes through it
   * @param surfaceCold v_s, that index over the season: how cold the surface is on average below
   *     freezing, kelvin
   * @param alpha how warm the ground is over how cold the surface is
   * @param mu the heat that the cold takes out of the ground's own warmth, over that of its
   *     freezing
   * @param lambda the share of Stefan's depth that is left by both
   * @param stefan the depth by Stefan, which counts the heat of freezing alone, metres
   * @param conductivity mean of frozen and thawed, watts per metre and kelvin
   * @param latentHeat joules per cubic metre
   * @param heatCapacity mean of frozen and thawed, joules per cubic metre and kelvin
   */
  record Terms(
      double surfaceIndex,
      double surfaceCold,
      double alpha,
      double mu,
      double lambda,
      double stefan,
      double conductivity,
      double latentHeat,
      double heatCapacity) {}
}
