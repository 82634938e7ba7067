package daylight.report.shots;

import java.util.List;
import java.util.Optional;

/**
 * The recordings of the judged visit and the stills taken from them.
 *
 * @param reels in the order of the book
 * @param stills in the order of the findings along the line
 */
public record Shots(List<Reel> reels, List<Still> stills) {
  /** No footage, or none that could be read. */
  public static final Shots NONE = new Shots(List.of(), List.of());

  public Shots {
    reels = List.copyOf(reels);
    stills = List.copyOf(stills);
    if (stills.stream().map(Still::file).distinct().count() < stills.size()) {
      throw new IllegalArgumentException("two stills of one file name");
    }
  }

  /** The still of the finding of that label. */
  public Optional<Still> of(String finding) {
    return stills.stream().filter(still -> still.finding().equals(finding)).findFirst();
  }
}
