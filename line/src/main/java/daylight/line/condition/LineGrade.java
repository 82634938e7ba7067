package daylight.line.condition;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The findings of a line taken together: in each aspect the worst decides. No figure is made of the
 * two.
 *
 * @param worst by aspect; none where nothing has a grade
 * @param outranking what outranks every grade
 * @param immediate what calls for action at once
 * @param open what may be worse, because something more must be known of it
 */
public record LineGrade(
    SortedMap<Aspect, Worst> worst,
    List<FindingGrade> outranking,
    List<FindingGrade> immediate,
    List<FindingGrade> open) {
  public LineGrade {
    worst = Collections.unmodifiableSortedMap(new TreeMap<>(worst));
    outranking = List.copyOf(outranking);
    immediate = List.copyOf(immediate);
    open = List.copyOf(open);
  }

  /**
   * The worst grade in one aspect.
   *
   * @param finding the first that has it
   * @param at its place in the list of findings, from 0
   */
  public record Worst(Grade grade, FindingGrade finding, int at) {}
}
