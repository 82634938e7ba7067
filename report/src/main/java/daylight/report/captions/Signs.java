package daylight.report.captions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Signs along a recording, of which each opens a chapter that lasts until the next. */
final class Signs {
  /** A chapter shorter than this is not worth its place, seconds; common practice, no source. */
  private static final double SHORTEST = 1;

  private final List<Sign> signs = new ArrayList<>();

  /**
   * One sign.
   *
   * @param weight of two that stand too near to each other the lighter gives way
   */
  private record Sign(double seconds, int weight, String text) {}

  void add(double seconds, int weight, String text) {
    signs.add(new Sign(seconds, weight, text));
  }

  /** The chapters, from the beginning of the recording to its end. */
  List<Cue> chapters(double seconds) {
    List<Sign> kept = new ArrayList<>();
    signs.stream()
        .sorted(Comparator.comparingDouble(Sign::seconds).thenComparingInt(Sign::weight))
        .forEach(
            sign -> {
              boolean near =
                  !kept.isEmpty() && sign.seconds() - kept.getLast().seconds() < SHORTEST;
              if (!near) {
                kept.add(sign);
              } else if (sign.weight() > kept.getLast().weight()) {
                Sign lighter = kept.removeLast();
                kept.add(new Sign(lighter.seconds(), sign.weight(), sign.text()));
              }
            });
    List<Cue> cues = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      double from = i == 0 ? 0 : kept.get(i).seconds();
      double to = i + 1 < kept.size() ? kept.get(i + 1).seconds() : seconds;
      if (to > from) {
        cues.add(new Cue(from, to, kept.get(i).text()));
      }
    }
    return cues;
  }
}
