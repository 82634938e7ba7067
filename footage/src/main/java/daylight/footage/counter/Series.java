package daylight.footage.counter;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** One figure of one line over all frames. */
final class Series {
  static final long NONE = Long.MIN_VALUE;

  private static final Set<String> LENGTHS = Set.of("ft", "m");

  /** All letters of units of length. */
  static final String LENGTH_LETTERS = "ftFTmM";

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double LEAST_UNIT = 0.08;
  private static final double LEAST_FILLED = 0.1;

  private final long[] steps;
  private final String[] shown;
  private final int places;
  private final int zeros;
  private final String unit;

  /**
   * A figure.
   *
   * @param steps per frame, in units of the last place; {@link #NONE} where it was not read
   * @param shown per frame, the figure as it stands there; empty where not read
   * @param places decimals, or {@link Said#INCHES}
   * @param zeros how many whole digits zeros fill up to; 1 where none do
   * @param unit what most often follows
   */
  Series(long[] steps, String[] shown, int places, int zeros, String unit) {
    this.steps = steps;
    this.shown = shown;
    this.places = places;
    this.zeros = zeros;
    this.unit = unit;
  }

  /** How many frames. */
  int frames() {
    return steps.length;
  }

  /** The figure on a frame in units of its last place, or {@link #NONE}. */
  long at(int frame) {
    return steps[frame];
  }

  /** The figure as it stands on a frame on which it was read, without its unit. */
  String shown(int frame) {
    return shown[frame];
  }

  /** The same with what a second look told. */
  Series with(List<SecondLook.Told> told) {
    long[] all = steps.clone();
    String[] texts = shown.clone();
    for (SecondLook.Told one : told) {
      all[one.frame()] = one.steps();
      texts[one.frame()] = one.shown();
    }
    return new Series(all, texts, places, zeros, unit);
  }

  /** How many whole digits zeros fill up to; 1 where none do. */
  int zeros() {
    return zeros;
  }

  int places() {
    return places;
  }

  String unit() {
    return unit;
  }

  /** The figure at that place from the left under the likeliest names, as far as it is read. */
  static Series of(Scroll scroll, char[] names, int place) {
    return of(scroll, names, place, "");
  }

  /**
   * The same under other names.
   *
   * @param known the unit that follows it; empty where that is to be read
   */
  static Series of(Scroll scroll, char[] names, int place, String known) {
    int distinct = scroll.distinct();
    Said[] all = new Said[distinct];
    int[] times = scroll.framesOfLines();
    int signs = 0;
    int count = 0;
    Map<Integer, Integer> places = new HashMap<>();
    Map<String, Integer> units = new HashMap<>();
    for (int i = 0; i < distinct; i++) {
      List<Said> said = Said.in(scroll.text(i, names));
      if (said.size() > place) {
        all[i] = said.get(place);
        signs += all[i].shown().startsWith("+") ? times[i] : 0;
        count += times[i];
        places.merge(all[i].places(), times[i], Integer::sum);
        units.merge(all[i].unit(), times[i], Integer::sum);
      }
    }
    int usual = most(places, 0);
    String unit = known.isEmpty() ? unit(units) : known;
    boolean signed = 2 * signs > count;
    int zeros = zeros(all, times, usual);
    long[] steps = new long[scroll.frames()];
    String[] shown = new String[scroll.frames()];
    Arrays.fill(steps, NONE);
    Arrays.fill(shown, "");
    for (int frame = 0; frame < steps.length; frame++) {
      int line = scroll.at(frame);
      Said said = line < 0 ? null : all[line];
      if (said != null && said.places() == usual && said.fits(zeros, signed)) {
        steps[frame] = said.steps();
        shown[frame] = said.shown();
      }
    }
    return new Series(steps, shown, usual, zeros, unit);
  }

  /** A length where one is seen at all: other letters are what noise makes of it. */
  private static String unit(Map<String, Integer> units) {
    Map<String, Integer> lengths = new HashMap<>();
    int all = 0;
    for (Map.Entry<String, Integer> one : units.entrySet()) {
      all += one.getValue();
      if (LENGTHS.contains(one.getKey().strip().toLowerCase(Locale.ROOT))) {
        lengths.put(one.getKey(), one.getValue());
      }
    }
    String unit = most(lengths, "");
    return lengths.getOrDefault(unit, 0) > LEAST_UNIT * all ? unit : most(units, "");
  }

  /** How many whole digits zeros fill up to; 1 where none do. */
  private static int zeros(Said[] all, int[] times, int places) {
    Map<Integer, Integer> filled = new HashMap<>();
    int frames = 0;
    for (int i = 0; i < all.length; i++) {
      if (all[i] != null && all[i].places() == places) {
        frames += times[i];
        if (all[i].filled()) {
          filled.merge(all[i].wholeDigits(), times[i], Integer::sum);
        }
      }
    }
    int digits = most(filled, 1);
    return filled.getOrDefault(digits, 0) > LEAST_FILLED * frames ? digits : 1;
  }

  private static <T> T most(Map<T, Integer> counts, T otherwise) {
    return counts.entrySet().stream()
        .max(Map.Entry.<T, Integer>comparingByValue().thenComparing(e -> e.getKey().toString()))
        .map(Map.Entry::getKey)
        .orElse(otherwise);
  }

  /** Share of the frames on which it was read. */
  double share() {
    return (double) Arrays.stream(steps).filter(step -> step != NONE).count() / steps.length;
  }

  /** On how many frames it shows what, in units of its last place. */
  Map<Long, Integer> values() {
    Map<Long, Integer> values = new HashMap<>();
    for (long step : steps) {
      if (step != NONE) {
        values.merge(step, 1, Integer::sum);
      }
    }
    return values;
  }

  /** Whether it is written as distances are: with a unit, decimals or several digits. */
  boolean likeDistance() {
    int digits = digits();
    return hasLength() || (places > 0 && digits > 2) || digits > 3;
  }

  /** The most digits that it has on more than a few frames: a rare text may be noise. */
  private int digits() {
    Map<Integer, Integer> frames = new HashMap<>();
    int read = 0;
    for (int frame = 0; frame < steps.length; frame++) {
      if (steps[frame] != NONE) {
        read++;
        frames.merge(
            (int) shown(frame).chars().filter(Character::isDigit).count(), 1, Integer::sum);
      }
    }
    int enough = (int) (LEAST_FILLED * read);
    return frames.entrySet().stream()
        .filter(one -> one.getValue() > enough)
        .mapToInt(Map.Entry::getKey)
        .max()
        .orElse(0);
  }

  /** Metres a step; empty units are guessed from the decimals (common practice, no source). */
  double metresPerStep() {
    if (places == Said.INCHES) {
      return INCH;
    }
    String plain = unit.strip();
    boolean metres = plain.isEmpty() ? places >= 2 : metric();
    return (metres ? 1 : FOOT) / StrictMath.pow(10, places);
  }

  /** Whether the unit says a length. */
  boolean hasLength() {
    String plain = unit.strip();
    return places == Said.INCHES || metric() || plain.equalsIgnoreCase("ft");
  }

  private boolean metric() {
    return unit.strip().equalsIgnoreCase("m");
  }

  /** Whether what follows the figure says that it is something else. */
  boolean foreign() {
    String plain = unit.strip();
    return !plain.isEmpty() && plain.chars().noneMatch(one -> LENGTH_LETTERS.indexOf(one) >= 0);
  }
}
