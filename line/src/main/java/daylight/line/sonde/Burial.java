package daylight.line.sonde;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How deep a depth reading puts the pipe. */
public sealed interface Burial {
  /**
   * Depths below the surface, in metres, positive downward, each with everything it rests on.
   *
   * @param sonde the sonde's axis
   * @param invert inside bottom of the pipe
   * @param crown inside top, which is the cover over the bore; null where the bore is not known
   * @param soil from the underside of the paving to the inside top; null where either is unknown
   * @param parts what the invert's variance is made of
   */
  record Buried(
      Measured sonde,
      Measured invert,
      @Nullable Measured crown,
      @Nullable Measured soil,
      List<Part> parts)
      implements Burial {
    public Buried {
      parts = List.copyOf(parts);
    }
  }

  /**
   * What was between receiver and surface is as much as was read: the sonde would not be buried.
   *
   * @param above how far above the surface it would be, in metres
   */
  record NotBuried(double above) implements Burial {}

  /**
   * One part of a variance.
   *
   * @param share from 0 to 1
   */
  record Part(Name name, double share) {}

  /** The parts a depth is made of. */
  enum Name {
    SHOWN,
    RECEIVER_HEIGHT,
    LOOSE_COVER,
    RIDE
  }

  static Burial of(DepthShown reading) {
    Measured sonde = reading.shown();
    List<Part> variances = new ArrayList<>();
    variances.add(new Part(Name.SHOWN, square(reading.shown().sd())));
    if (reading.receiverHeight() != null) {
      sonde = sonde.minus(reading.receiverHeight());
      variances.add(new Part(Name.RECEIVER_HEIGHT, square(reading.receiverHeight().sd())));
    }
    if (reading.looseCover() != null) {
      sonde = sonde.minus(reading.looseCover());
      variances.add(new Part(Name.LOOSE_COVER, square(reading.looseCover().sd())));
    }
    if (!(sonde.value() > 0)) {
      return new NotBuried(-sonde.value());
    }
    Measured ride = reading.ride();
    variances.add(new Part(Name.RIDE, square(ride.sd())));
    Measured invert =
        new Measured(sonde.value() + ride.value(), StrictMath.hypot(sonde.sd(), ride.sd()));
    Measured crown = reading.bore() == null ? null : invert.minus(reading.bore());
    Measured soil =
        crown == null || reading.paving() == null ? null : crown.minus(reading.paving());
    double total = square(invert.sd());
    List<Part> parts =
        variances.stream().map(part -> new Part(part.name(), part.share() / total)).toList();
    return new Buried(sonde, invert, crown, soil, parts);
  }

  private static double square(double value) {
    return value * value;
  }
}
