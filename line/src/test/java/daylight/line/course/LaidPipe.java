package daylight.line.course;

import daylight.line.book.Priors;
import java.util.ArrayList;
import java.util.List;

/**
 * A pipe as it truly lies, drawn outward from the end nearer to the camera's entry, with the ground
 * above it: an Ornstein–Uhlenbeck process along the pipe about the level of its surface. Distances
 * from that end.
 */
final class LaidPipe {
  static final double STEP = 0.04;

  /** Lengths that pipes come in, metres: rigid, and what a flexible one keeps its set over. */
  private static final double RIGID_LENGTH = 3;

  private static final double FLEXIBLE_LENGTH = 1;

  private final List<TruePipe.At> places = new ArrayList<>();
  private final double length;

  /** How a pipe wanders: radians per square root of metre in plan and in profile. */
  record Wander(double turn, double tip, boolean rigid) {
    static Wander of(Priors priors, boolean rigid) {
      return new Wander(
          priors.of(rigid ? Priors.Kind.STRAIGHT_RIGID : Priors.Kind.STRAIGHT_FLEXIBLE).a(),
          priors.of(rigid ? Priors.Kind.GRADE_RIGID : Priors.Kind.GRADE_FLEXIBLE).a(),
          rigid);
    }

    /** No wandering at all. */
    static Wander none() {
      return new Wander(0, 0, true);
    }
  }

  LaidPipe(
      SplitMix64 random,
      Nature nature,
      Priors.Prior ground,
      Wander wander,
      TruePipe.At start,
      double length,
      List<TruePipe.TrueBend> bends) {
    this.length = length;
    boolean jointed = nature == Nature.OTHERWISE;
    double joint = jointed ? (wander.rigid() ? RIGID_LENGTH : FLEXIBLE_LENGTH) : STEP;
    double next = jointed ? joint * random.uniform() : 0;
    double grown = Math.sqrt(joint);
    double keeps = StrictMath.exp(-STEP / ground.correlationLength());
    double heaves = wander.turn() > 0 ? Math.sqrt(1 - keeps * keeps) * ground.a() : 0;
    TruePipe.At at = start;
    places.add(at);
    int steps = (int) Math.ceil(length / STEP);
    for (int i = 1; i <= steps; i++) {
      double from = (i - 1) * STEP;
      double bearing = at.bearing();
      double pitch = at.pitch();
      if (from >= next - STEP / 2) {
        bearing += wander.turn() * grown * random.normal();
        pitch += wander.tip() * grown * random.normal();
        next += joint;
      }
      for (TruePipe.TrueBend bend : bends) {
        if (bend.at() > from - STEP / 2 && bend.at() <= from + STEP / 2) {
          bearing += bend.right();
        }
      }
      double flat = STEP * StrictMath.cos(pitch);
      at =
          new TruePipe.At(
              at.east() + flat * StrictMath.sin(bearing),
              at.north() + flat * StrictMath.cos(bearing),
              at.up() + STEP * StrictMath.sin(pitch),
              keeps * at.ground() + heaves * random.normal(),
              bearing,
              pitch);
      places.add(at);
    }
  }

  double length() {
    return length;
  }

  /** The place at a distance from the end it was drawn from; beyond an end in proportion. */
  TruePipe.At at(double distance) {
    int i = Math.clamp((int) (distance / STEP), 0, places.size() - 2);
    double share = distance / STEP - i;
    TruePipe.At a = places.get(i);
    TruePipe.At b = places.get(i + 1);
    return new TruePipe.At(
        a.east() + share * (b.east() - a.east()),
        a.north() + share * (b.north() - a.north()),
        a.up() + share * (b.up() - a.up()),
        a.ground() + share * (b.ground() - a.ground()),
        b.bearing(),
        b.pitch());
  }
}
