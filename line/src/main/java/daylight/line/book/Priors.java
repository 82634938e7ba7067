package daylight.line.book;

import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How good each kind of measurement is where the book does not say: data with their sources, not
 * code.
 */
public final class Priors {
  private final Map<Kind, Prior> rows;

  /** Refuses a set in which a kind is missing. */
  public Priors(Map<Kind, Prior> rows) {
    this.rows = new EnumMap<>(Kind.class);
    this.rows.putAll(rows);
    for (Kind kind : Kind.values()) {
      if (!this.rows.containsKey(kind)) {
        throw new IllegalArgumentException("no prior for " + kind);
      }
    }
  }

  /** The row of a kind. */
  public Prior of(Kind kind) {
    @Nullable Prior row = rows.get(kind);
    if (row == null) {
      throw new IllegalStateException("checked at birth: " + kind);
    }
    return row;
  }

  /** The standard uncertainty of one measurement of that kind and size, in SI units. */
  public double sd(Kind kind, double size) {
    return of(kind).sd(size);
  }

  /** The stated standard uncertainty where there is one, else the prior's. */
  public double sd(Kind kind, Reading reading) {
    @Nullable Double stated = reading.sd();
    return stated != null ? stated : sd(kind, reading.value());
  }

  /** What was recorded with its uncertainty, else what is usual. Refuses a kind with no usual. */
  public Measured recordedOrTypical(Kind kind, @Nullable Reading recorded) {
    if (recorded != null) {
      return new Measured(recorded.value(), sd(kind, recorded));
    }
    Typical typical = of(kind).typical();
    if (typical == null) {
      throw new IllegalArgumentException("nothing is usual for " + kind);
    }
    return new Measured(typical.value(), typical.sd());
  }

  /** Every row, by kind. */
  public List<Prior> rows() {
    return rows.values().stream().sorted(Comparator.comparing(Prior::kind)).toList();
  }

  /** The kinds of measurement and of assumption. */
  public enum Kind {
    /** A tape between two points, metres over metres. */
    TAPE,
    /** So far along a wall. */
    ALONG,
    /** So far out from it, squared by eye. */
    OUT,
    /** A bearing, radians. */
    BEARING,
    /** An angle or direction of an instrument, radians. */
    ANGLE,
    /** A satellite fix, each horizontal component. */
    GNSS,
    /** A spot dropped on a sketch. */
    SKETCH,
    /** A reading of the counter by a person or the screen. */
    COUNTER_READING,
    /** The scale of the counter, relative. */
    COUNTER_SCALE,
    /** Where the counter's zero lies. */
    COUNTER_ZERO,
    /** Cable lying in excess of the pipe when pushed, by length pushed; never negative. */
    SLACK,
    /** How far the transmitter sits behind the lens. */
    SONDE_BEHIND_LENS,
    /** How high the transmitter rides above the invert. */
    SONDE_ABOVE_INVERT,
    /** The spot on the ground against the true place above the transmitter, by depth. */
    LOCATE_SPOT,
    /** Noise of one depth reading, by depth. */
    DEPTH_READING,
    /** Distortion that neighbouring depth readings share, by depth. */
    DEPTH_DISTORTION,
    /** The scale of the receiver's depths, relative. */
    RECEIVER_SCALE,
    /** A tape or rod down to an exposed pipe. */
    EXPOSURE,
    /** A rod, hose or laser level. */
    LEVEL,
    /** How far an unlevelled yard departs from flat. */
    GROUND_YARD,
    /** How far an unlevelled floor or slab departs from flat. */
    GROUND_SLAB,
    /** The angle of a bend seen, radians. */
    BEND_ANGLE,
    /** Turning of a rigid pipe in plan, radians per square root of metre. */
    STRAIGHT_RIGID,
    /** Turning of a flexible pipe in plan, radians per square root of metre. */
    STRAIGHT_FLEXIBLE,
    /** Turning of a rigid pipe in profile, radians per square root of metre. */
    GRADE_RIGID,
    /** Turning of a flexible pipe in profile, radians per square root of metre. */
    GRADE_FLEXIBLE,
    /** How steep an unmeasured pipe may lie, as a slope about level. */
    FALL,
    /** A depth of water judged from the picture. */
    WATER_DEPTH,
    /** How far the bore may be from the size written. */
    BORE,
    /** How far a pipe may turn where it goes on beyond a junction, radians. */
    JUNCTION_TURN,
    /** How much higher or lower one surface may lie than another that no level ties to it. */
    GROUND_STEP,
    /** Where the receiver falls silent along the pipe, by depth. */
    NULL_MARK,
    /** How far the transmitter is tilted where it lies in a pipe, radians. */
    SONDE_TILT,
    /** How high the receiver's antenna sits above its foot. */
    ANTENNA_ABOVE_FOOT,
    /** The strength a receiver shows, relative. */
    SIGNAL,
    /** The freezing index of one winter against the one written, °C·days. */
    FREEZING_INDEX,
    /** The mean temperature of the year, °C. */
    MEAN_TEMPERATURE,
    /** How long it freezes, seconds. */
    SEASON,
    /** The water in the ground by dry weight, a share. */
    SOIL_WATER,
    /** How deep snow lies through the winter. */
    SNOW_DEPTH,
    /** How far a level fell in a riser: the difference of two readings. */
    WATER_DROP,
    /** A time by a watch, seconds. */
    WATCH,
    /** A volume poured or caught, cubic metres. */
    VOLUME;

    /** The id under which a share of variance names it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * What is usual where nothing was recorded, with its uncertainty.
   *
   * @param value in the unit of the measurement
   */
  public record Typical(double value, double sd) {}

  /**
   * One row: sd = multiplier × √(a² + (b × size)²).
   *
   * @param a the part that does not grow, in the unit of the measurement
   * @param b the part that grows with its size
   * @param correlationLength over which neighbours share it, in metres; 0 for none
   * @param fair multiplier where the crew called the signal fair
   * @param poor multiplier where the crew called it poor
   * @param typical what is usual where nothing was recorded; null where nothing can be taken
   * @param source id in the list of sources
   * @param mark how the figures were come by
   * @param note what a reader of the row should know; null for nothing
   */
  public record Prior(
      Kind kind,
      double a,
      double b,
      double correlationLength,
      double fair,
      double poor,
      @Nullable Typical typical,
      String source,
      Mark mark,
      @Nullable String note) {
    public Prior {
      if (!(a >= 0) || !(b >= 0) || !(a + b > 0) || !Double.isFinite(a + b)) {
        throw new IllegalArgumentException(
            kind
                + ": a and b must be finite, not negative and not both zero, were "
                + a
                + ", "
                + b);
      }
      if (!(correlationLength >= 0) || !(fair >= 1) || !(poor >= 1)) {
        throw new IllegalArgumentException(
            kind + ": correlation length must be >= 0 and multipliers >= 1");
      }
    }

    /** The standard uncertainty at that size. */
    public double sd(double size) {
      return Math.sqrt(a * a + b * size * (b * size));
    }
  }
}
