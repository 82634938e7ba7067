package daylight.report.captions;

import daylight.line.counter.Track.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * The distance as it runs, in steps that can be read along: half a foot or a fifth of a metre
 * (common practice, no source). A step that was read on no frame of its time says that it was
 * bridged; where nothing is known, that is said.
 */
public final class DistanceCaptions {
  private static final double HALF_A_FOOT = 0.1524;
  private static final double FIFTH_OF_A_METRE = 0.2;

  /** A gap shorter than this goes without words, seconds; common practice, no source. */
  private static final double GAP = 0.5;

  private DistanceCaptions() {}

  /** A stretch of frames that one caption stands for; a step says nothing where none is known. */
  private record Stretch(int from, int to, boolean known, long step, boolean read) {}

  /** The captions of a recording. */
  public static List<Cue> of(Counted counted, Words words) {
    double step = words.shown() == Shown.METRES ? FIFTH_OF_A_METRE : HALF_A_FOOT;
    List<Cue> cues = new ArrayList<>();
    for (Stretch stretch : stretches(counted, step)) {
      double from = counted.at(stretch.from());
      double to = counted.until(stretch.to());
      if (to > from && (stretch.known() || to - from >= GAP)) {
        cues.add(new Cue(from, to, text(stretch, step, words)));
      }
    }
    return cues;
  }

  private static List<Stretch> stretches(Counted counted, double step) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < counted.samples(); i++) {
      boolean known = counted.known(i);
      long steps = known ? Math.round(counted.counter(i) / step) : 0;
      boolean read = counted.track().samples().get(i).state() == State.READ;
      Stretch last = stretches.isEmpty() ? null : stretches.getLast();
      if (last != null && last.known() == known && last.step() == steps) {
        stretches.removeLast();
        stretches.add(new Stretch(last.from(), i, known, steps, last.read() || read));
      } else {
        stretches.add(new Stretch(i, i, known, steps, read));
      }
    }
    return stretches;
  }

  private static String text(Stretch stretch, double step, Words words) {
    if (!stretch.known()) {
      return words.word("chapter.unknown");
    }
    double metres = stretch.step() * step;
    return stretch.read()
        ? words.length(metres)
        : words.say("caption.bridged", new Argument.Length(metres));
  }
}
