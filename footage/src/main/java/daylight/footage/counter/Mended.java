package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Names of glyphs put right by the counter's own arithmetic. A counter turns its last place one by
 * one, so that under the right names every reading lies between the one before and the one after.
 * The names sought are those under which it goes most smoothly with the least said against them by
 * the network: one shape is named anew, all shapes of two names change places, or a shape taken for
 * something else is tried as a digit, as long as that is better.
 */
final class Mended {
  private static final int MOST_STAYS = 900;
  private static final int MOST_KINDS = 60;
  private static final int ROUNDS = 40;
  private static final int PROMOTIONS = 6;
  private static final int DIGITS = 10;

  /** Readings further apart in time say nothing of one another, seconds. */
  private static final double NEAR = 1;

  /** What a squared step off costs, and at most. */
  private static final double ROUGH = 4;

  private static final double ROUGHEST = 16;

  /** What another shape for the same figure costs: less than a figure that goes to and fro. */
  private static final double UNTURNED = 1;

  /**
   * What the roughest place costs at most: a counter may be set anew, and no name is worth that.
   */
  private static final double SET_ANEW = 8;

  /** What a reading that cannot be understood costs. */
  private static final double UNREAD = 6;

  /** So far from the middle of its neighbours rounding brings a reading, steps. */
  private static final double ROUNDING = 0.5;

  private static final long SEED = 11;
  private static final int STEPS = 3000;
  private static final double WARM = 12;
  private static final double COLD = 0.5;

  /** A cost, for each shape, with which there is nothing to be mended. */
  private static final double WELL = 0.2;

  /** A name is sure if any other costs so much more. */
  private static final double CLEARLY = 5;

  private static final double DOUBT = 2;
  private static final double LEAST_SHARE = 1e-3;

  private final Scroll scroll;
  private final Kinds kinds;
  private final int place;
  private final double[] seconds;
  private final char[] names;
  private final List<Integer> often = new ArrayList<>();
  private List<Stay> stays = List.of();
  private int unread;

  /** A stretch of frames with one text; how its digits are placed. */
  private record Stay(double from, double to, Digits digits) {}

  private Mended(Scroll scroll, int place, double[] seconds) {
    this.scroll = scroll;
    kinds = scroll.strip().kinds();
    this.place = place;
    this.seconds = seconds;
    names = scroll.names();
    for (int i = 0; i < names.length; i++) {
      often.add(i);
    }
    often.sort(Comparator.comparingInt(kind -> -kinds.count(kind)));
    if (often.size() > MOST_KINDS) {
      often.subList(MOST_KINDS, often.size()).clear();
    }
  }

  /** The letter of each kind, and the unit behind the figure; empty where none is known for one. */
  record Named(List<Character> letters, String unit) {
    char[] names() {
      char[] names = new char[letters.size()];
      for (int i = 0; i < names.length; i++) {
        names[i] = letters.get(i);
      }
      return names;
    }
  }

  /** Names so that the figure at that place goes like a counter. */
  static Named named(Scroll scroll, int place, double[] seconds) {
    Mended mended = new Mended(scroll, place, seconds);
    mended.understand();
    String unit = new UnitBehind(scroll, place, mended.names).told();
    mended.smooth();
    mended.shake();
    for (int i = 0; i < PROMOTIONS && mended.promote(); i++) {
      mended.smooth();
    }
    mended.doubt();
    List<Character> letters = new ArrayList<>();
    for (char name : mended.names) {
      letters.add(name);
    }
    return new Named(List.copyOf(letters), unit);
  }

  /** Finds the digits of every stay under the names there are. */
  private void understand() {
    int distinct = scroll.distinct();
    Said[] said = new Said[distinct];
    int[] places = new int[8];
    for (int i = 0; i < distinct; i++) {
      List<Said> all = Said.in(scroll.text(i, names));
      if (all.size() > place) {
        said[i] = all.get(place);
        places[said[i].places() + 1]++;
      }
    }
    int usual = 0;
    for (int i = 1; i < places.length; i++) {
      usual = places[i] > places[usual] ? i : usual;
    }
    List<Stay> found = new ArrayList<>();
    unread = 0;
    int line = -1;
    int begun = 0;
    for (int frame = 0; frame <= scroll.frames() && found.size() < MOST_STAYS; frame++) {
      int now = frame < scroll.frames() ? scroll.at(frame) : -1;
      if (now == line && frame < scroll.frames()) {
        continue;
      }
      if (line >= 0) {
        Said one = said[line];
        if (one != null && one.places() == usual - 1) {
          found.add(new Stay(seconds[begun], seconds[frame - 1], digits(line, one)));
        } else {
          unread++;
        }
      }
      line = now;
      begun = frame;
    }
    stays = found;
  }

  private Digits digits(int line, Said said) {
    int[] glyphs = scroll.line(line);
    String text = scroll.text(line, names);
    List<Integer> digits = new ArrayList<>();
    int inches = 0;
    for (int i = said.from(); i < said.to(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        digits.add(glyphs[i]);
        inches++;
      } else if (text.charAt(i) == '\'') {
        inches = 0;
      }
    }
    boolean negative = said.from() > 0 && text.charAt(said.from() - 1) == '-';
    return new Digits(List.copyOf(digits), said.places() == Said.INCHES ? inches : 0, negative);
  }

  /**
   * Leaves a hollow that is not the deepest: names change by chance, upward too, less and less
   * (simulated annealing, with a seed of its own, so that the same recording gives the same names).
   */
  private void shake() {
    List<Integer> digits = often.stream().filter(kind -> Character.isDigit(names[kind])).toList();
    double now = cost();
    if (digits.isEmpty() || now < WELL * often.size()) {
      return;
    }
    char[] best = names.clone();
    double least = now;
    SplittableRandom chance = new SplittableRandom(SEED);
    for (int step = 0; step < STEPS; step++) {
      double warmth = WARM * StrictMath.pow(COLD / WARM, (double) step / STEPS);
      char[] before = names.clone();
      int kind = digits.get(chance.nextInt(digits.size()));
      char other = (char) ('0' + chance.nextInt(DIGITS));
      if (chance.nextInt(3) == 0) {
        System.arraycopy(exchanged(names[kind], other), 0, names, 0, names.length);
      } else {
        names[kind] = other;
      }
      double then = cost();
      if (then < now || chance.nextDouble() < StrictMath.exp((now - then) / warmth)) {
        now = then;
        if (then < least) {
          least = then;
          best = names.clone();
        }
      } else {
        System.arraycopy(before, 0, names, 0, names.length);
      }
    }
    System.arraycopy(best, 0, names, 0, names.length);
    smooth();
  }

  /** Names digits anew as long as the figure goes more smoothly for it. */
  private void smooth() {
    double cost = cost();
    for (int round = 0; round < ROUNDS; round++) {
      char[] best = null;
      double least = cost - 1e-6;
      for (char[] other : others()) {
        char[] before = names.clone();
        System.arraycopy(other, 0, names, 0, names.length);
        double now = cost();
        System.arraycopy(before, 0, names, 0, names.length);
        if (now < least) {
          least = now;
          best = other;
        }
      }
      if (best == null) {
        return;
      }
      System.arraycopy(best, 0, names, 0, names.length);
      cost = least;
    }
  }

  private List<char[]> others() {
    List<char[]> others = new ArrayList<>();
    for (int kind : often) {
      if (Character.isDigit(names[kind])) {
        for (char digit = '0'; digit <= '9'; digit++) {
          if (digit != names[kind]) {
            char[] other = names.clone();
            other[kind] = digit;
            others.add(other);
          }
        }
      }
    }
    for (int a = 0; a < DIGITS; a++) {
      for (int b = a + 1; b < DIGITS; b++) {
        others.add(exchanged((char) ('0' + a), (char) ('0' + b)));
      }
    }
    return others;
  }

  private char[] exchanged(char a, char b) {
    char[] other = names.clone();
    for (int i = 0; i < other.length; i++) {
      other[i] = other[i] == a ? b : other[i] == b ? a : other[i];
    }
    return other;
  }

  /** Tries what was taken for something else as a digit; whether one is better so. */
  private boolean promote() {
    double least = cost() - 1e-6;
    int which = -1;
    char better = '?';
    for (int kind : often) {
      char before = names[kind];
      if (Character.isDigit(before)) {
        continue;
      }
      names[kind] = '0';
      understand();
      for (char digit = '0'; digit <= '9'; digit++) {
        names[kind] = digit;
        double now = cost();
        if (now < least) {
          least = now;
          which = kind;
          better = digit;
        }
      }
      names[kind] = before;
    }
    if (which >= 0) {
      names[which] = better;
    }
    understand();
    return which >= 0;
  }

  /** Takes the name from a digit that might as well be another one. */
  private void doubt() {
    double cost = cost();
    List<Integer> doubtful = new ArrayList<>();
    for (int kind = 0; kind < names.length; kind++) {
      char name = names[kind];
      if (!Character.isDigit(name)) {
        continue;
      }
      double least = Double.POSITIVE_INFINITY;
      for (char other = '0'; other <= '9'; other++) {
        if (other != name) {
          names[kind] = other;
          double more =
              often.contains(kind)
                  ? cost() - cost
                  : against(kind, /* name= */ other, /* rather= */ name);
          least = Math.min(least, more);
        }
      }
      names[kind] = name;
      if (least < CLEARLY) {
        doubtful.add(kind);
      }
    }
    doubtful.forEach(kind -> names[kind] = '?');
  }

  /** What the network says against a name rather than another. */
  private double against(int kind, char name, char rather) {
    float[] opinion = kinds.opinion(kind);
    double share = opinion[Letters.KINDS.indexOf(name)];
    double other = opinion[Letters.KINDS.indexOf(rather)];
    return DOUBT * StrictMath.log(Math.max(1e-9, other) / Math.max(1e-9, share));
  }

  private double cost() {
    double cost = unread * UNREAD;
    for (int kind : often) {
      float[] opinion = kinds.opinion(kind);
      float most = 0;
      for (float one : opinion) {
        most = Math.max(most, one);
      }
      double share = opinion[Letters.KINDS.indexOf(names[kind])] / most;
      cost -= DOUBT * StrictMath.log(Math.max(LEAST_SHARE, share));
    }
    Stay before = null;
    Stay here = null;
    double last = 0;
    double dearest = 0;
    for (Stay next : stays) {
      if (here != null) {
        double rough = rough(before, here, next);
        cost += rough;
        dearest = Math.max(dearest, last + rough);
        last = rough;
      }
      before = here;
      here = next;
    }
    return cost - Math.max(0, dearest - SET_ANEW);
  }

  /** How far a reading lies from the line between its neighbours, beyond what rounding does. */
  private double rough(@Nullable Stay before, Stay here, Stay next) {
    if (next.from() - here.to() > NEAR) {
      return 0;
    }
    long value = here.digits().value(names);
    long after = next.digits().value(names);
    if (before == null || here.from() - before.to() > NEAR) {
      double off = Math.max(0, Math.abs(after - value) - 2.0);
      return Math.min(ROUGHEST, off * off / 4);
    }
    long first = before.digits().value(names);
    double middle = (here.from() + here.to()) / 2;
    double share = (middle - before.to()) / Math.max(1e-9, next.from() - before.to());
    double off = Math.max(0, Math.abs(value - first - share * (after - first)) - ROUNDING);
    return Math.min(ROUGHEST, ROUGH * off * off) + (value == first ? UNTURNED : 0);
  }
}
