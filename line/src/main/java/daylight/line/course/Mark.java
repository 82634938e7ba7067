package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.normal.Gradient;
import org.jspecify.annotations.Nullable;

/**
 * A place in the pipe of which something is known from above: where it lies in plan, how deep it
 * is, how high the ground or the invert is there.
 *
 * @param id the locate, exposure or node
 * @param sort which of these it is
 * @param visit the label of the visit; empty for a node
 * @param position how it is placed along the pipe
 * @param surface the surface it was measured from; null for a node
 * @param depth what was read of its depth; null when nothing was
 * @param silent depth of the transmitter below the surface by where the receiver fell silent,
 *     metres; null where that was not noted
 * @param vote of a lift check for the error of the receiver's scale; null when there was none
 * @param ground whether the height of the ground there is wanted
 */
record Mark(
    Id id,
    Source.Sort sort,
    String visit,
    Position position,
    @Nullable String surface,
    @Nullable DepthRead depth,
    @Nullable Measured silent,
    @Nullable Measured vote,
    boolean ground) {

  /** How a mark is placed along the pipe. */
  sealed interface Position {
    /** By a counter reading of a pass; {@code behind} is the unknown it trails the lens by. */
    record ByCable(Walk walk, Reading cable, Finding.Moving moving, int behind)
        implements Position {}

    /** At an end of a limb. */
    record AtEnd(int limb, boolean far) implements Position {}
  }

  /** What was read of the depth of a mark, all in metres. */
  sealed interface DepthRead {
    /**
     * A receiver's depth to the transmitter.
     *
     * @param raised how far the receiver was above the named surface, cover included
     */
    record ByReceiver(double shown, double raised, double noise, double distortion)
        implements DepthRead {}

    /**
     * A tape to the pipe: {@code above} is how far what was touched lies above the invert.
     *
     * @param tapeSd standard uncertainty of the tape
     * @param boreSd that of the bore by which the bottom lies below what was touched
     * @param bored the reach of that bore; null where the bottom itself was touched
     */
    record ByTape(double below, double above, double tapeSd, double boreSd, @Nullable Id bored)
        implements DepthRead {
      double sd() {
        return boreSd == 0 ? tapeSd : StrictMath.hypot(tapeSd, boreSd);
      }
    }
  }

  String label() {
    return id.label();
  }

  /** Whether it is placed by the counter, as locates and exposures are. */
  boolean onCable() {
    return position instanceof Position.ByCable;
  }

  /** Where it is for these unknowns. */
  Walk.Reached place(Layout layout, double[] x) {
    return switch (position) {
      case Position.ByCable(Walk walk, Reading cable, Finding.Moving moving, int behind) ->
          walk.at(x, cable.value(), moving, behind);
      case Position.AtEnd(int limb, boolean far) -> end(layout, x, limb, far);
    };
  }

  /** The same, on that limb whether or not the counter still puts it there. */
  Walk.Reached on(int limb, Layout layout, double[] x) {
    return switch (position) {
      case Position.ByCable(Walk walk, Reading cable, Finding.Moving moving, int behind) ->
          walk.on(limb, x, cable.value(), moving, behind);
      case Position.AtEnd(int at, boolean far) -> end(layout, x, at, far);
    };
  }

  private static Walk.Reached end(Layout layout, double[] x, int limb, boolean far) {
    Gradient dt = new Gradient();
    if (far) {
      dt.add(layout.stretch(limb), layout.length0(limb));
    }
    return new Walk.Reached(limb, far ? layout.length(x, limb) : 0, dt, true);
  }
}
