package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Names of glyphs put right by the counter's own arithmetic. A counter turns its last place one by
 * one, so under the right names it goes smoothly; where another name for a shape makes it go
 * clearly more smoothly than the network's first opinion speaks against it, it gets that name.
 */
final class Mended {
  private static final int MOST_FRAMES = 1500;
  private static final int MOST_KINDS = 40;
  private static final int OTHER_NAMES = 4;
  private static final int ROUNDS = 8;
  private static final long ROUGHEST = 64;

  /** What a frame that cannot be read costs, in squared steps. */
  private static final double UNREAD = 4;

  private static final double DOUBT = 1.5;
  private static final String DIGITS = "0123456789";

  private Mended() {}

  static char[] names(Scroll scroll, int place) {
    char[] names = scroll.names();
    Kinds kinds = scroll.strip().kinds();
    List<Integer> doubtful = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      if (kinds.count(i) >= 2) {
        doubtful.add(i);
      }
    }
    doubtful.sort(Comparator.comparingDouble(kind -> most(kinds.opinion(kind))));
    if (doubtful.size() > MOST_KINDS) {
      doubtful.subList(MOST_KINDS, doubtful.size()).clear();
    }
    double cost = cost(scroll, names, place);
    for (int round = 0; round < ROUNDS; round++) {
      int which = -1;
      char better = '?';
      double least = cost;
      for (int kind : doubtful) {
        char before = names[kind];
        for (char other : others(kinds.opinion(kind), before)) {
          names[kind] = other;
          double now = cost(scroll, names, place) + against(kinds.opinion(kind), other);
          if (now < least) {
            least = now;
            which = kind;
            better = other;
          }
        }
        names[kind] = before;
      }
      if (which < 0) {
        break;
      }
      names[which] = better;
      cost = cost(scroll, names, place);
    }
    return names;
  }

  private static double most(float[] opinion) {
    double most = 0;
    for (float one : opinion) {
      most = Math.max(most, one);
    }
    return most;
  }

  private static double against(float[] opinion, char name) {
    double share = opinion[Letters.KINDS.indexOf(name)];
    return DOUBT * -StrictMath.log(Math.max(1e-6, share / most(opinion)));
  }

  private static List<Character> others(float[] opinion, char name) {
    List<Character> others = new ArrayList<>();
    for (int i = 0; i < DIGITS.length(); i++) {
      char digit = DIGITS.charAt(i);
      if (digit != name) {
        others.add(digit);
      }
    }
    others.sort(Comparator.comparingDouble(c -> -opinion[Letters.KINDS.indexOf(c)]));
    return others.subList(0, OTHER_NAMES);
  }

  /** How roughly the figure goes, in squared steps. */
  private static double cost(Scroll scroll, char[] names, int place) {
    int frames = Math.min(MOST_FRAMES, scroll.frames());
    Series series = Series.of(scroll, names, place);
    double cost = 0;
    long before = Series.NONE;
    for (int i = 0; i < frames; i++) {
      if (series.at(i) == Series.NONE) {
        cost += scroll.at(i) < 0 ? 0 : UNREAD;
        continue;
      }
      if (before != Series.NONE) {
        long by = Math.min(Math.abs(series.at(i) - before), ROUGHEST);
        cost += Math.min(by * by, ROUGHEST);
      }
      before = series.at(i);
    }
    return cost;
  }
}
