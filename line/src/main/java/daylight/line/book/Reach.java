package daylight.line.book;

import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/**
 * One pipe between two nodes.
 *
 * @param line the label of the line it belongs to; a line is a tree of reaches
 * @param from the label of one end; the upstream one unless {@code water} says otherwise
 * @param to the label of the other end
 * @param water which way the water goes, a fact of the reach and not of the push
 * @param use what it carries
 * @param material what it is made of at its upstream end; a change on the way is a finding
 * @param bore its inside diameter in metres; null when not recorded
 * @param length its length along the pipe in metres, where somebody measured it; null otherwise
 */
public record Reach(
    Id id,
    String line,
    String from,
    String to,
    Water water,
    Use use,
    Material material,
    @Nullable Reading bore,
    @Nullable Reading length)
    implements Entry {

  /** Which way the water goes. */
  public sealed interface Water {
    /** From {@code from} to {@code to}. */
    record Forward() implements Water {}

    /** From {@code to} to {@code from}. */
    record Backward() implements Water {}

    /** Not known, and why. Distances are then counted from {@code from}. */
    record Unknown(String reason) implements Water {}
  }

  /** What a reach carries. */
  public enum Use {
    STORM,
    SANITARY,
    COMBINED,
    PUMPED,
    UNKNOWN
  }

  /** The node from which distances along this reach are counted. */
  public String upstream() {
    return water instanceof Water.Backward ? to : from;
  }

  /** The node at the other end from {@link #upstream()}. */
  public String downstream() {
    return water instanceof Water.Backward ? from : to;
  }
}
