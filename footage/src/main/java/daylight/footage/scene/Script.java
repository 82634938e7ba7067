package daylight.footage.scene;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Material;
import daylight.line.book.Pass;
import java.util.List;

/**
 * All there is to be seen along one push, and how the camera moved.
 *
 * @param motion the counter's reading over time
 * @param odometer from readings to how far in
 * @param pipes what the pipe is, each from its place to that of the next; at least one
 * @param joints how far in the joints are, rising
 * @param turns bends, by place
 * @param veils stretches of sight that is not clear
 * @param things what else there is to be seen
 * @param mouth where and into what the pipe opens at the end of the push
 * @param place a line of words that the camera's owner typed before the push
 * @param begun the wall clock at the first frame, in seconds from midnight
 * @param date the day as {@code YYYY-MM-DD}
 */
public record Script(
    Motion motion,
    Odometer odometer,
    List<Pipe> pipes,
    List<Double> joints,
    List<Turn> turns,
    List<Veil> veils,
    List<Thing> things,
    Mouth mouth,
    String place,
    int begun,
    String date) {
  /** How many radii ahead of the lens a thing stands while its reading is noted. */
  public static final double AHEAD = 1.6;

  public Script {
    pipes = List.copyOf(pipes);
    joints = List.copyOf(joints);
    turns = List.copyOf(turns);
    veils = List.copyOf(veils);
    things = List.copyOf(things);
    if (pipes.isEmpty()) {
      throw new IllegalArgumentException("a script has at least one pipe, was given none");
    }
  }

  /** From here on the pipe is of this material and has this radius, in metres. */
  public record Pipe(double from, Material material, double radius) {
    public Pipe {
      if (!(radius > 0) || Double.isInfinite(radius)) {
        throw new IllegalArgumentException("radius in metres must be positive, was " + radius);
      }
    }
  }

  /** A bend by an angle in radians, its middle at this place. */
  public record Turn(double at, double angle, Bend.Sense sense) {}

  /** A stretch of sight. */
  public record Veil(double from, double to, Pass.Clarity clarity) {}

  /** Where the pipe opens, in metres in, and into what. */
  public record Mouth(double at, Into into) {}

  /** What lies beyond the end of the push. */
  public enum Into {
    /** More pipe: the push ended on the way. */
    PIPE,
    /** The open. */
    DAYLIGHT,
    /** A larger pipe or a chamber. */
    MAIN
  }

  /**
   * The script of one footage of a pass.
   *
   * @param media the label of the footage; anchors of other footage do not count
   * @throws IllegalArgumentException where the pass has no anchor in that footage
   */
  public static Script of(FieldBook book, Pass pass, String media, String date) {
    return new Scriptwriter(book, pass, media, date).script();
  }

  /** The pipe at a place. */
  Pipe pipeAt(double in) {
    Pipe found = pipes.getFirst();
    for (Pipe pipe : pipes) {
      if (pipe.from() <= in) {
        found = pipe;
      }
    }
    return found;
  }

  /** How far in the lens is at a moment. */
  double lensAt(double seconds) {
    return odometer.in(motion.readingAt(seconds));
  }
}
