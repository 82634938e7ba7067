package daylight.app;

import daylight.line.book.Finding;
import daylight.report.captions.Counted;
import daylight.report.captions.Cue;
import daylight.report.captions.DistanceCaptions;
import daylight.report.captions.DistanceChapters;
import daylight.report.captions.FindingChapters;
import daylight.report.captions.WebVtt;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is written beside a recording.
 *
 * @param chapters by rising time
 * @param captions by rising time
 * @param unseen labels of findings without a known moment
 * @param note what is to be said to whoever reads the file
 */
public record FilmText(List<Cue> chapters, List<Cue> captions, List<String> unseen, String note) {
  public FilmText {
    chapters = List.copyOf(chapters);
    captions = List.copyOf(captions);
    unseen = List.copyOf(unseen);
  }

  /**
   * By a book: a chapter for each finding that the recording shows.
   *
   * @param counted the recording's own counter; null where it has none
   * @param seconds how long it runs
   */
  public static FilmText of(
      BookInFilm book, @Nullable Counted counted, double seconds, Words words) {
    BookInFilm.Told findings = book.findings(counted);
    String made = words.word("caption.note");
    return new FilmText(
        FindingChapters.chapters(findings.seen(), book.entry(), seconds, words),
        joined(
            distances(counted, words), FindingChapters.captions(findings.seen(), seconds, words)),
        findings.unseen().stream().map(Finding::label).toList(),
        book.book().site().invented() ? made + " " + words.word("cli.invented") : made);
  }

  /**
   * Without a book: a chapter every so far.
   *
   * @param step how far, metres
   */
  public static FilmText of(Counted counted, double step, Words words) {
    return new FilmText(
        DistanceChapters.of(counted, step, words),
        distances(counted, words),
        List.of(),
        words.word("caption.note"));
  }

  private static List<Cue> distances(@Nullable Counted counted, Words words) {
    return counted == null ? List.of() : DistanceCaptions.of(counted, words);
  }

  private static List<Cue> joined(List<Cue> distances, List<Cue> findings) {
    List<Cue> all = new ArrayList<>(distances);
    all.addAll(findings);
    // The order of cues in the standard: of those that begin together the longest first.
    all.sort(
        Comparator.comparingDouble(Cue::from)
            .thenComparing(Comparator.comparingDouble(Cue::to).reversed()));
    return all;
  }

  /** The same beside a copy that begins at a moment; what ended before it is left out. */
  public FilmText from(double seconds) {
    return seconds > 0
        ? new FilmText(from(chapters, seconds), from(captions, seconds), unseen, note)
        : this;
  }

  private static List<Cue> from(List<Cue> cues, double seconds) {
    return cues.stream()
        .filter(cue -> cue.to() > seconds)
        .map(cue -> new Cue(Math.max(0, cue.from() - seconds), cue.to() - seconds, cue.text()))
        .toList();
  }

  /** The chapters as a WebVTT file. */
  public String chapterFile() {
    return WebVtt.write(chapters, note);
  }

  /** The captions as a WebVTT file. */
  public String captionFile() {
    return WebVtt.write(captions, note);
  }
}
