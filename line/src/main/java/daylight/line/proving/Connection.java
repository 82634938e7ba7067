package daylight.line.proving;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where something comes in, and how that is known.
 *
 * @param source the label of the fixture, roof or inlet
 * @param kind what it is
 * @param what it in words; null when not recorded
 * @param node the label of the node the book says it drains into
 * @param joins the label of the node where its own pipe comes into another; the node itself where
 *     it has no pipe of its own
 * @param known how it is known
 * @param by the labels of the tests or pushes that show it; empty where it is only assumed
 * @param against the labels of the tests that say otherwise
 */
public record Connection(
    String source,
    Kind kind,
    @Nullable String what,
    String node,
    String joins,
    Known known,
    List<String> by,
    List<String> against) {
  public Connection {
    by = List.copyOf(by);
    against = List.copyOf(against);
  }

  /** What comes in. */
  public enum Kind {
    FIXTURE,
    ROOF,
    INLET
  }

  /** How it is known, the surest first. */
  public enum Known {
    /** Dye, water or smoke went through. */
    TESTED,
    /** The camera went through. */
    SEEN,
    /** An opening was seen from inside where it should come in; whose it is was not. */
    OPENING_SEEN,
    /** Only because the book says so. */
    ASSUMED
  }
}
