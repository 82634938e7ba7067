package daylight.footage.counter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The unit behind a figure. */
final class UnitBehind {
  private static final List<String> UNITS = List.of("ft", "FT", "m", "M", "ft.", "FT.");
  private static final int LONGEST = 4;
  private static final double USUAL = 0.3;
  private static final double LEAST_UNIT = 0.01;
  private static final double LEAST_SHARE = 1e-3;

  private final Scroll scroll;
  private final Kinds kinds;
  private final int place;
  private final char[] names;

  UnitBehind(Scroll scroll, int place, char[] names) {
    this.scroll = scroll;
    kinds = scroll.strip().kinds();
    this.place = place;
    this.names = names;
  }

  /**
   * What stands behind the figure on most frames is the unit it is likest to. One of its shapes may
   * be a digit elsewhere.
   */
  String told() {
    Map<List<Integer>, Integer> tails = new LinkedHashMap<>();
    int all = 0;
    int[] frames = scroll.framesOfLines();
    for (int line = 0; line < frames.length; line++) {
      List<Said> said = Said.in(scroll.text(line, names));
      if (said.size() > place) {
        int[] glyphs = scroll.line(line);
        List<Integer> tail = new ArrayList<>();
        for (int i = said.get(place).to(); i < glyphs.length && tail.size() < LONGEST; i++) {
          tail.add(glyphs[i]);
        }
        tails.merge(tail, frames[line], Integer::sum);
        all += frames[line];
      }
    }
    int enough = (int) (USUAL * all);
    return tails.entrySet().stream()
        .filter(tail -> tail.getValue() > enough && !tail.getKey().isEmpty())
        .max(Map.Entry.comparingByValue())
        .map(tail -> written(tail.getKey()))
        .orElse("");
  }

  private String written(List<Integer> tail) {
    boolean apart = tail.getFirst() == Strip.SPACE;
    String best = unit(tail.subList(apart ? 1 : 0, tail.size()), kinds);
    return best.isEmpty() || !apart ? best : " " + best;
  }

  /** The unit that some letters are likeliest to be; empty where they are like none. */
  static String unit(List<Integer> tail, Kinds kinds) {
    String best = "";
    if (tail.stream().anyMatch(kind -> kind < 0)) {
      return best;
    }
    double most = tail.size() * StrictMath.log(LEAST_UNIT);
    for (String unit : UNITS) {
      if (unit.length() == tail.size()) {
        double sum = 0;
        for (int i = 0; i < tail.size(); i++) {
          float share = kinds.opinion(tail.get(i))[Letters.KINDS.indexOf(unit.charAt(i))];
          sum += StrictMath.log(Math.max(LEAST_SHARE, share));
        }
        if (sum > most) {
          most = sum;
          best = unit;
        }
      }
    }
    return best;
  }
}
