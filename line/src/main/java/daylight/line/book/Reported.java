package daylight.line.book;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the owner reported: the complaint.
 *
 * @param words the owner's own; null when not recorded
 * @param kinds what kinds of complaint it is, each once; empty when the book does not say
 * @param at the label of the node, fixture or point where it shows; null when not recorded
 * @param when it shows; null when not recorded
 */
public record Reported(
    @Nullable String words, List<Kind> kinds, @Nullable String at, @Nullable When when) {
  public Reported {
    kinds = kinds.stream().distinct().toList();
  }

  /** Nothing but words. */
  public static Reported inWords(String words) {
    return new Reported(words, List.of(), null, null);
  }

  /** Whether there is nothing but words. */
  public boolean isBare() {
    return kinds.isEmpty() && at == null && when == null;
  }

  /** What is wrong, as an owner sees it. */
  public enum Kind {
    /** It runs off slowly. */
    SLOW_DRAIN,
    /** It comes up again or runs over. */
    BACK_UP,
    /** The ground is wet. */
    WET_SPOT,
    SMELL,
    /** The ground sinks or falls in. */
    SINKHOLE,
    /** It gurgles or knocks. */
    NOISE,
    /** Where it comes out it freezes shut. */
    FROZEN_OUTLET
  }

  /** When it shows. */
  public enum When {
    /** Without rain. */
    DRY,
    /** When it rains. */
    RAIN,
    /** In frost. */
    FROST,
    /** While water is let in. */
    IN_USE,
    ALWAYS
  }
}
