package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What all lines end with and what stands nowhere else in them. The last place of a counter turns,
 * so this is a unit, even where narrow letters look like digits and stand close behind the figure.
 */
final class Ending {
  /** Nearly all lines end so. */
  private static final double ALWAYS = 0.9;

  private static final double ELSEWHERE = 0.02;

  /** From so many different lines on it is no chance that they end alike. */
  private static final int MANY = 10;

  private static final int LONGEST = 2;

  private Ending() {}

  /** Names the letters of such a unit. */
  static void name(List<Glyphs> lines, Kinds kinds) {
    Map<List<Integer>, Integer> ends = new LinkedHashMap<>();
    Set<List<Integer>> different = new HashSet<>();
    int all = 0;
    for (Glyphs glyphs : lines) {
      List<Integer> line = glyphs.kinds();
      if (line.size() > LONGEST) {
        all++;
        different.add(line);
        for (int length = 1; length <= LONGEST; length++) {
          ends.merge(line.subList(line.size() - length, line.size()), 1, Integer::sum);
        }
      }
    }
    if (different.size() < MANY) {
      return;
    }
    double enough = ALWAYS * all;
    double few = ELSEWHERE * all;
    List<List<Integer>> always = new ArrayList<>();
    ends.forEach(
        (end, count) -> {
          if (count >= enough && elsewhere(end, lines) <= few) {
            always.add(end);
          }
        });
    always.stream()
        .filter(end -> end.stream().anyMatch(kind -> Character.isDigit(kinds.letter(kind))))
        .max(Comparator.comparingInt(List::size))
        .ifPresent(end -> kinds.name(end, UnitBehind.unit(end, kinds)));
  }

  /** In how many lines one of some letters stands anywhere but at the end. */
  private static long elsewhere(List<Integer> end, List<Glyphs> lines) {
    return lines.stream()
        .map(Glyphs::kinds)
        .filter(line -> line.size() > end.size())
        .filter(line -> line.subList(0, line.size() - end.size()).stream().anyMatch(end::contains))
        .count();
  }
}
