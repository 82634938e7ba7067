package daylight.report.captions;

import daylight.line.book.Finding;
import daylight.line.measure.Argument;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Chapters and captions from what was found: one for each finding that a recording shows. */
public final class FindingChapters {
  /** A caption of a finding stands so long, seconds; common practice, no source. */
  private static final double STANDS = 4;

  private FindingChapters() {}

  /**
   * A finding that the recording shows.
   *
   * @param seconds from the first frame
   * @param counter what the counter showed there, metres; null where nobody knows
   */
  public record Seen(Finding finding, double seconds, @Nullable Double counter) {}

  /**
   * The chapters, one a finding; those of one moment share one.
   *
   * @param entry the label of the node where the camera went in
   * @param seconds how long the recording runs
   */
  public static List<Cue> chapters(List<Seen> seen, String entry, double seconds, Words words) {
    List<Cue> cues = new ArrayList<>();
    String title = words.say("chapter.entry", new Argument.Label(entry));
    double from = 0;
    boolean first = true;
    for (Seen one : inOrder(seen)) {
      double at = Math.clamp(one.seconds(), 0.0, seconds);
      if (at > from) {
        cues.add(new Cue(from, at, title));
        title = title(one, words);
        from = at;
      } else {
        title = first ? title(one, words) : words.beside(List.of(title, title(one, words)));
      }
      first = false;
    }
    if (seconds > from) {
      cues.add(new Cue(from, seconds, title));
    }
    return cues;
  }

  /** The captions, one a finding, from its moment on. */
  public static List<Cue> captions(List<Seen> seen, double seconds, Words words) {
    List<Cue> cues = new ArrayList<>();
    for (Seen one : inOrder(seen)) {
      double from = Math.clamp(one.seconds(), 0.0, seconds);
      double to = Math.min(seconds, from + STANDS);
      if (to > from) {
        cues.add(new Cue(from, to, title(one, words)));
      }
    }
    return cues;
  }

  private static List<Seen> inOrder(List<Seen> seen) {
    return seen.stream().sorted(Comparator.comparingDouble(Seen::seconds)).toList();
  }

  /** By label, kind, distance and clock position. */
  public static String title(Seen seen, Words words) {
    Finding finding = seen.finding();
    Argument label = new Argument.Label(finding.label());
    Argument kind = new Argument.Text(words.shortKind(finding.kind()));
    Double counter = seen.counter();
    String title =
        counter == null
            ? words.say("chapter.finding", label, kind)
            : words.say("chapter.finding_at", label, kind, new Argument.Length(counter));
    return finding.clock() == null ? title : title + ", " + words.clockShort(finding.clock());
  }
}
