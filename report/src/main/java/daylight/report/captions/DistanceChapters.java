package daylight.report.captions;

import daylight.line.counter.Passages;
import daylight.line.measure.Argument;
import daylight.report.words.Words;
import java.util.List;

/**
 * Chapters by distance alone: every so many feet or metres on the way out and back, rests, the
 * furthest point, and where the counter was set anew or could not be read.
 */
public final class DistanceChapters {
  private static final int ANEW = 5;
  private static final int UNKNOWN = 4;
  private static final int FURTHEST = 3;
  private static final int REST = 2;
  private static final int MARK = 1;
  private static final int START = 0;

  /** A gap shorter than this needs no chapter of its own, seconds; common practice, no source. */
  private static final double GAP = 3;

  private static final double ROUNDING = 1e-6;
  private static final int MOST_MARKS = 1000;

  private final Counted counted;
  private final double every;
  private final Words words;
  private final Signs signs = new Signs();

  private DistanceChapters(Counted counted, double every, Words words) {
    this.counted = counted;
    this.every = every;
    this.words = words;
  }

  /**
   * The chapters of a recording.
   *
   * @param every so many metres
   */
  public static List<Cue> of(Counted counted, double every, Words words) {
    if (!(every > 0)) {
      throw new IllegalArgumentException("metres must be positive, was " + every);
    }
    DistanceChapters chapters = new DistanceChapters(counted, every, words);
    chapters.begin();
    chapters.marks();
    chapters.rests();
    chapters.anew();
    chapters.gaps();
    return chapters.signs.chapters(counted.seconds());
  }

  private void begin() {
    signs.add(
        0,
        START,
        counted.samples() > 0 && counted.known(0)
            ? words.length(counted.counter(0))
            : words.word("chapter.unknown"));
  }

  private void marks() {
    int furthest = -1;
    double least = 0;
    double most = 0;
    for (int i = 0; i < counted.samples(); i++) {
      if (counted.known(i)) {
        double counter = counted.counter(i);
        furthest = furthest < 0 || counter > counted.counter(furthest) ? i : furthest;
        least = Math.min(least, counter);
        most = Math.max(most, counter);
      }
    }
    if (furthest < 0) {
      return;
    }
    signs.add(counted.at(furthest), FURTHEST, say("chapter.furthest", counted.counter(furthest)));
    Passages passages = counted.passages();
    List<Passages.Stay> rests = passages.rests();
    int first = (int) Math.max(-MOST_MARKS, Math.ceil(least / every - ROUNDING));
    int last = (int) Math.min(MOST_MARKS, Math.floor(most / every + ROUNDING));
    for (int i = first; i <= last; i++) {
      for (int sample : i == 0 ? List.<Integer>of() : passages.times(i * every)) {
        if (rests.stream().anyMatch(rest -> rest.from() <= sample && sample <= rest.to())) {
          // The rest is a chapter of its own.
          continue;
        }
        signs.add(
            counted.at(sample),
            MARK,
            inward(sample) ? say("chapter.back", i * every) : words.length(i * every));
      }
    }
  }

  /** Whether the cable was coming back: the counter had shown more before. */
  private boolean inward(int sample) {
    for (int i = sample - 1; i >= 0 && !counted.leaps().contains(i + 1); i--) {
      double more = counted.counter(i) - counted.counter(sample);
      if (counted.known(i) && Math.abs(more) > counted.step() / 2) {
        return more > 0;
      }
    }
    return false;
  }

  private void rests() {
    for (Passages.Stay rest : counted.passages().rests()) {
      signs.add(counted.at(rest.from()), REST, say("chapter.rest", rest.counter()));
    }
  }

  private void anew() {
    for (int leap : counted.leaps()) {
      signs.add(counted.at(leap), ANEW, say("chapter.anew", counted.counter(leap)));
    }
  }

  private void gaps() {
    int from = -1;
    for (int i = 0; i < counted.samples(); i++) {
      if (!counted.known(i)) {
        from = from < 0 ? i : from;
      } else if (from >= 0) {
        if (counted.at(i) - counted.at(from) >= GAP) {
          signs.add(counted.at(from), UNKNOWN, words.word("chapter.unknown"));
          signs.add(counted.at(i), MARK, words.length(counted.counter(i)));
        }
        from = -1;
      }
    }
    if (from >= 0 && counted.seconds() - counted.at(from) >= GAP) {
      signs.add(counted.at(from), UNKNOWN, words.word("chapter.unknown"));
    }
  }

  private String say(String key, double metres) {
    return words.say(key, new Argument.Length(metres));
  }
}
