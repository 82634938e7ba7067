package daylight.line.counter;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was read in one recording, as the passes that it shows have it.
 *
 * @param tracks one for each pass of which anything was read, in the order of the book
 * @param misfits what book and recording do not agree on
 */
public record Fitted(List<OfPass> tracks, List<Misfit> misfits) {
  public Fitted {
    tracks = List.copyOf(tracks);
    misfits = List.copyOf(misfits);
  }

  /**
   * The track of a recording as far as it shows one pass.
   *
   * @param pass its label
   * @param step what the last place of the counter is worth, metres; 0 where that is not known
   */
  public record OfPass(String pass, Track track, double step) {}

  /**
   * Fits what was read in a recording to the passes that it shows.
   *
   * <p>What was read is the evidence; a person's correction of it is put in its place, and a typed
   * reading counts only where nothing was read. Where the counter was set, the book decides: a
   * noted jump, the next pass with a zero that fits, or the zeroing at the entry; of any other it
   * says nothing, and what follows is not known.
   *
   * @param medium the recording
   * @param pass the label of the pass that the book says it shows; null where it says none
   * @param step what the last place of the counter is worth, metres
   */
  public static Fitted of(
      Visit visit, String medium, @Nullable String pass, Track read, double step) {
    List<Pass> passes =
        visit.passes().stream()
            .filter(one -> one.label().equals(pass) || speaks(one, medium))
            .toList();
    return new Fitter(medium, passes, read, step).fitted();
  }

  /** Whether a pass speaks of moments of a recording. */
  public static boolean speaks(Pass pass, String medium) {
    return pass.anchors().stream().anyMatch(anchor -> anchor.media().equals(medium))
        || pass.findings().stream().anyMatch(finding -> noted(finding, medium).isPresent());
  }

  /** When a recording shows a finding that was noted by a moment of it. */
  static Optional<Double> noted(Finding finding, String medium) {
    return finding.where() instanceof Where.AtMoment(String own, double seconds)
            && own.equals(medium)
        ? Optional.of(seconds)
        : Optional.empty();
  }
}
