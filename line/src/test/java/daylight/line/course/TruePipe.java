package daylight.line.course;

import daylight.line.book.Priors;
import java.util.ArrayList;
import java.util.List;

/**
 * A pipe as it truly lies: drawn in small steps from what the priors say pipes do, with bends, and
 * with the ground above it. Distances from the end it was drawn from.
 */
final class TruePipe {
  static final double STEP = 0.05;

  /** One place: east, north, invert, ground in metres, bearing and pitch in radians. */
  record At(double east, double north, double up, double ground, double bearing, double pitch) {}

  /** A bend as it truly is: how far along, and by how much to the right. */
  record TrueBend(double at, double right) {}

  private final List<At> places = new ArrayList<>();
  private final double length;

  TruePipe(
      SplitMix64 random,
      Priors priors,
      At start,
      double length,
      boolean rigid,
      List<TrueBend> bends) {
    this.length = length;
    double turn =
        priors.of(rigid ? Priors.Kind.STRAIGHT_RIGID : Priors.Kind.STRAIGHT_FLEXIBLE).a()
            * Math.sqrt(STEP);
    double tip =
        priors.of(rigid ? Priors.Kind.GRADE_RIGID : Priors.Kind.GRADE_FLEXIBLE).a()
            * Math.sqrt(STEP);
    Priors.Prior yard = priors.of(Priors.Kind.GROUND_YARD);
    double keeps = StrictMath.exp(-STEP / yard.correlationLength());
    At at = start;
    places.add(at);
    int steps = (int) Math.ceil(length / STEP);
    for (int i = 1; i <= steps; i++) {
      double from = (i - 1) * STEP;
      double bearing = at.bearing() + turn * random.normal();
      for (TrueBend bend : bends) {
        if (bend.at() > from && bend.at() <= from + STEP) {
          bearing += bend.right();
        }
      }
      double pitch = at.pitch() + tip * random.normal();
      double flat = STEP * StrictMath.cos(pitch);
      at =
          new At(
              at.east() + flat * StrictMath.sin(bearing),
              at.north() + flat * StrictMath.cos(bearing),
              at.up() + STEP * StrictMath.sin(pitch),
              keeps * at.ground() + Math.sqrt(1 - keeps * keeps) * yard.a() * random.normal(),
              bearing,
              pitch);
      places.add(at);
    }
  }

  double length() {
    return length;
  }

  /** The place at a distance from the end it was drawn from; between its steps in proportion. */
  At at(double distance) {
    int i = Math.clamp((int) (distance / STEP), 0, places.size() - 2);
    double share = distance / STEP - i;
    At a = places.get(i);
    At b = places.get(i + 1);
    return new At(
        a.east() + share * (b.east() - a.east()),
        a.north() + share * (b.north() - a.north()),
        a.up() + share * (b.up() - a.up()),
        a.ground() + share * (b.ground() - a.ground()),
        b.bearing(),
        b.pitch());
  }
}
