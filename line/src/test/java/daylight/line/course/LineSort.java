package daylight.line.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What sort of line to draw.
 *
 * @param number of its class; 0 for none
 * @param bends of about 45° that are noted
 * @param fewest locates on the main
 * @param most locates on the main
 */
record LineSort(int number, int bends, int fewest, int most, Set<Way> ways) {
  LineSort {
    ways = Set.copyOf(ways);
  }

  /** What a line is or is not. */
  enum Way {
    /** Of polyethylene rather than PVC. */
    FLEXIBLE,
    /** 150 m rather than 12 to 45 m. */
    LONG,
    /** The receiver is held above the ground, and its height noted, rather than set down. */
    HELD,
    /** Snow or mulch lies between receiver and ground. */
    COVERED,
    /** A second pipe joins. */
    BRANCH,
    /** The camera goes in where the water comes out. */
    FROM_OUTLET,
    /** The ground at every locate is levelled. */
    LEVELLED,
    /** Water stands in every low stretch and is noted; no pair of the covering classes. */
    WET,
    /** The camera goes in at the other end too, and sees the bends again; likewise. */
    TWICE
  }

  /** One outside the classes. */
  static LineSort of(int bends, int fewest, int most, Way... ways) {
    return new LineSort(0, bends, fewest, most, Set.of(ways));
  }

  boolean is(Way way) {
    return ways.contains(way);
  }

  int locates(SplitMix64 random) {
    return fewest + random.below(most - fewest + 1);
  }

  double length(SplitMix64 random) {
    return is(Way.LONG) ? 150 : random.between(12, 45);
  }

  /** In words, for the table of results. */
  String words() {
    List<String> words = new ArrayList<>();
    words.add(is(Way.FLEXIBLE) ? "flexible" : "rigid");
    words.add(is(Way.LONG) ? "150 m" : "12–45 m");
    words.add(fewest == most ? fewest + " locate" : fewest + "–" + most + " locates");
    words.add(bends == 1 ? "1 bend" : bends + " bends");
    words.add(is(Way.HELD) ? "held" : "on the ground");
    words.add(is(Way.COVERED) ? "covered" : "bare");
    words.add(is(Way.BRANCH) ? "branch" : "one pipe");
    words.add(is(Way.FROM_OUTLET) ? "from the outlet" : "from the head");
    words.add(is(Way.LEVELLED) ? "levelled" : "not levelled");
    return String.join(", ", words);
  }
}
