package daylight.line.survey;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which entries the variance of a figure comes from.
 *
 * @param variance square metres
 * @param byEntry what each entry's own uncertainty adds to the variance, square metres; sums to it
 */
public record Shares(double variance, SortedMap<String, Double> byEntry) {
  public Shares {
    byEntry = Collections.unmodifiableSortedMap(new TreeMap<>(byEntry));
  }
}
