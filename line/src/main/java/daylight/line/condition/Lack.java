package daylight.line.condition;

import java.util.List;

/**
 * What must be known before a grade can be given.
 *
 * @param why what sort of thing it is
 * @param name its name in the catalogue; {@code bore} for the bore of the pipe
 * @param choices the texts that a particular may be; for a size, the name of the height that would
 *     do instead where the bore is known too
 */
public record Lack(Why why, String name, List<String> choices) {
  /** The bore of the pipe. */
  static final Lack BORE = new Lack(Why.BORE, "bore", List.of());

  public Lack {
    choices = List.copyOf(choices);
  }

  /** What sort of thing is missing. */
  public enum Why {
    /** A size of the finding. */
    SIZE,
    /** A particular of the finding. */
    WORD,
    /** The bore of the pipe. */
    BORE,
    /** Nothing is missing, but a height is larger than the bore, so one of them is wrong. */
    HIGHER_THAN_BORE
  }
}
