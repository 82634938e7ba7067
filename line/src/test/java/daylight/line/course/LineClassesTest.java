package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The classes on which calibration is proved leave no pair of levels out. */
class LineClassesTest {
  /** Each thing that tells lines apart, with the levels of every class in the order of classes. */
  private static List<List<String>> columns() {
    List<List<String>> columns = new ArrayList<>();
    columns.add(column(sort -> "bends " + sort.bends()));
    columns.add(column(sort -> "locates from " + sort.fewest()));
    Set<LineSort.Way> apart = Set.of(LineSort.Way.WET, LineSort.Way.TWICE);
    for (LineSort.Way way : LineSort.Way.values()) {
      if (apart.contains(way)) {
        continue;
      }
      columns.add(column(sort -> way + " " + sort.is(way)));
    }
    return columns;
  }

  private static List<String> column(Function<LineSort, String> level) {
    return LineClasses.ALL.stream().map(level).toList();
  }

  @Test
  void everyPairOfLevelsOccurs() {
    List<List<String>> columns = columns();
    Set<String> missing = new TreeSet<>();
    for (int i = 0; i < columns.size(); i++) {
      for (int j = i + 1; j < columns.size(); j++) {
        for (String a : new TreeSet<>(columns.get(i))) {
          for (String b : new TreeSet<>(columns.get(j))) {
            if (!together(columns.get(i), a, columns.get(j), b)) {
              missing.add(a + " with " + b);
            }
          }
        }
      }
    }

    assertThat(missing).isEmpty();
    assertThat(columns.get(0)).contains("bends 0", "bends 1", "bends 2", "bends 3");
    assertThat(columns.get(1)).contains("locates from 1", "locates from 2", "locates from 4");
    assertThat(columns.subList(2, columns.size()))
        .allSatisfy(column -> assertThat(new TreeSet<>(column)).hasSize(2));
  }

  private static boolean together(List<String> one, String a, List<String> other, String b) {
    for (int row = 0; row < one.size(); row++) {
      if (one.get(row).equals(a) && other.get(row).equals(b)) {
        return true;
      }
    }
    return false;
  }
}
