package daylight.footage.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pipe ahead of the lens as rings in space: x to the right, y up, z ahead of the lens, which is
 * at the origin and looks along the pipe it is in. Straight pipe needs two rings, however long.
 */
final class Tunnel {
  /** How far light reaches, in radii. */
  static final double REACH = 22;

  /** Height of the lens above the bottom, in radii; it rides on a skid. */
  static final double EYE = 0.72;

  private static final double STEP = 0.12;

  private final Script script;
  private final double lens;
  private final double radius;
  private final List<Hoop> hoops = new ArrayList<>();
  private Pose pose;
  private double shiftRight;
  private double shiftUp;

  /** A ring: its distance along the pipe, its pose, its radius, whether a rim stands before it. */
  record Hoop(double ahead, Pose pose, double radius, boolean rim) {}

  private Tunnel(Script script, double lens) {
    this.script = script;
    this.lens = lens;
    this.radius = script.pipeAt(lens).radius();
    this.pose =
        new Pose(
            new Space(0, radius - eye(script, lens), 0),
            new Space(0, 0, 1),
            new Space(1, 0, 0),
            new Space(0, 1, 0));
  }

  /** Height of the lens above the bottom of the pipe, in metres. */
  static double eye(Script script, double lens) {
    return EYE * script.pipeAt(lens).radius();
  }

  static List<Hoop> ahead(Script script, double lens) {
    return new Tunnel(script, lens).build();
  }

  private List<Hoop> build() {
    hoops.add(new Hoop(0, pose, radius, false));
    double end = REACH * radius;
    double at = 0;
    for (double stop : stops(end)) {
      advance(at, stop);
      at = stop;
      rims(stop);
    }
    advance(at, end);
    return hoops;
  }

  /** Goes to a stop: in one stride where the pipe is straight, in small ones where it bends. */
  private void advance(double from, double to) {
    boolean bends = script.turns().stream().anyMatch(turn -> within(turn, from, to));
    int strides = bends ? (int) StrictMath.ceil((to - from) / (STEP * radius)) : 1;
    double stride = (to - from) / strides;
    for (int i = 1; i <= strides && stride > 0; i++) {
      double at = from + i * stride;
      for (Script.Turn turn : script.turns()) {
        double angle = turned(turn, at) - turned(turn, at - stride);
        if (angle > 0) {
          pose = pose.turned(angle, turn.sense());
        }
      }
      pose = pose.moved(stride);
      hoop(at, false);
    }
  }

  private void hoop(double ahead, boolean rim) {
    double there = script.pipeAt(lens + ahead).radius();
    hoops.add(new Hoop(ahead, pose.aside(shiftRight, shiftUp), there, rim));
  }

  private boolean within(Script.Turn turn, double from, double to) {
    double half = half(turn);
    return turn.at() - half < lens + to && turn.at() + half > lens + from;
  }

  private double half(Script.Turn turn) {
    return Math.max(0.9, 1.5 * turn.angle()) * radius;
  }

  /** How much of a turn lies behind a place, in radians. */
  private double turned(Script.Turn turn, double ahead) {
    double half = half(turn);
    return turn.angle() * Cloud.ease((lens + ahead - turn.at() + half) / (2 * half));
  }

  /** Places ahead where something about the pipe changes. */
  private List<Double> stops(double end) {
    List<Double> stops = new ArrayList<>();
    for (Script.Turn turn : script.turns()) {
      stops.add(turn.at() - half(turn) - lens);
      stops.add(turn.at() + half(turn) - lens);
    }
    for (Script.Pipe pipe : script.pipes()) {
      stops.add(pipe.from() - lens);
    }
    for (Thing thing : script.things()) {
      if (thing instanceof Thing.Step step) {
        stops.add(step.at() - lens);
      }
    }
    return stops.stream()
        .filter(stop -> stop > 0 && stop < end)
        .distinct()
        .sorted(Comparator.naturalOrder())
        .toList();
  }

  /** Stands the rims of pipes that do not meet: a step aside, a narrower pipe. */
  private void rims(double stop) {
    for (Thing thing : script.things()) {
      if (thing instanceof Thing.Step step && step.at() - lens == stop) {
        double height = step.offset() * Cloud.ease((stop / radius - 0.35) / 0.6);
        shiftRight += height * StrictMath.sin(step.clock());
        shiftUp += height * StrictMath.cos(step.clock());
        hoop(stop, true);
      }
    }
    double there = script.pipeAt(lens + stop + 1e-6).radius();
    if (there != hoops.getLast().radius()) {
      hoops.add(new Hoop(stop, pose.aside(shiftRight, shiftUp), there, true));
    }
  }
}
