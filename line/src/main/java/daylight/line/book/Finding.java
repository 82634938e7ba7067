package daylight.line.book;

import daylight.line.measure.Reading;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Something seen in the pipe.
 *
 * @param kind id of a kind in the catalogue; an unknown one is kept and shown ungraded
 * @param where its place in the pass
 * @param moving which way the camera moved when the counter was read
 * @param clock where on the wall, as the head looks; null when not recorded
 * @param quantities its sizes by the catalogue's names, in SI units
 * @param words its other particulars by the catalogue's names, such as what the material becomes
 * @param node the label of the node this is, where it is one (a junction seen from inside)
 * @param stills labels of media that show it
 * @param outlines drawn round it in pictures that show it
 * @param remark free words; null when none
 */
public record Finding(
    Id id,
    String kind,
    Where where,
    Moving moving,
    @Nullable Clock clock,
    SortedMap<String, Reading> quantities,
    SortedMap<String, String> words,
    @Nullable String node,
    List<String> stills,
    List<Outline> outlines,
    @Nullable String remark)
    implements Entry {
  private static final Set<String> DAMS =
      Set.of(
          "displaced-joint",
          "intruding-seal",
          "deformation",
          "collapse",
          "break",
          "roots",
          "deposit-loose",
          "deposit-hard",
          "grease",
          "obstruction",
          "foreign-pipe",
          "foreign-cable",
          "intruding-connection");

  public Finding {
    quantities = Collections.unmodifiableSortedMap(new TreeMap<>(quantities));
    words = Collections.unmodifiableSortedMap(new TreeMap<>(words));
    stills = List.copyOf(stills);
    outlines = List.copyOf(outlines);
  }

  /** Whether it may dam water, so that it stands above the bottom where it ends. */
  public boolean mayDam() {
    return DAMS.contains(kind);
  }

  /** Which way the camera moved: a pushed cable snakes, a pulled one is taut. */
  public enum Moving {
    PUSHING,
    PULLING
  }

  /**
   * A position on the wall, in radians clockwise from twelve as the head looks; a single position
   * has {@code from} equal to {@code to}, a stretch runs clockwise.
   */
  public record Clock(double from, double to) {}

  /**
   * A ring round what is to be seen, in pixels of the picture as it is shown, from its left and
   * upper edge. It points; nothing is computed from it.
   *
   * @param on the label of the photograph; null for the picture from the footage
   * @param across of its middle
   * @param down of its middle
   * @param wide above zero
   * @param high above zero
   */
  public record Outline(
      @Nullable String on, double across, double down, double wide, double high) {}
}
