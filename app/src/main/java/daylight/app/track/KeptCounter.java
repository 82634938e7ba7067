package daylight.app.track;

import daylight.archive.Sha256;
import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.footage.counter.Window;
import daylight.line.counter.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was read from a counter, as lines of a file: head lines, what it is, a line a frame, and at
 * the end how many there are and a digest of all that is above. Lines that are not just as they
 * were written are nothing.
 */
final class KeptCounter {
  private static final String NONE = "none";
  private static final String COUNTER = "counter";
  private static final String LEAPS = "leaps";
  private static final int COUNTER_CELLS = 7;
  private static final int ROW_CELLS = 4;

  private KeptCounter() {}

  /** The lines of what was read under a head. */
  static List<String> written(List<String> head, Found found) {
    List<String> lines = new ArrayList<>(head);
    int rows = 0;
    switch (found) {
      case Found.None(Found.Why why) -> lines.add(NONE + "," + why.name());
      case Found.Counter counter -> {
        Window at = counter.window();
        lines.add(
            String.join(
                ",",
                COUNTER,
                Integer.toString(at.left()),
                Integer.toString(at.top()),
                Integer.toString(at.width()),
                Integer.toString(at.height()),
                Double.toString(counter.metresPerStep()),
                counter.unit()));
        StringBuilder leaps = new StringBuilder(LEAPS);
        counter.leaps().forEach(frame -> leaps.append(',').append(frame));
        lines.add(leaps.toString());
        for (Reading one : counter.readings()) {
          lines.add(one.seconds() + "," + one.metres() + "," + one.state() + "," + one.shown());
        }
        rows = counter.readings().size();
      }
      case Found.Stopped() ->
          throw new IllegalArgumentException("what was stopped is not worth keeping");
    }
    lines.add(end(rows, lines));
    return lines;
  }

  private static String end(int rows, List<String> above) {
    return "end," + rows + "," + Sha256.of(String.join("\n", above)).hex();
  }

  /**
   * What lines of that head say; empty where they are not as they were written.
   *
   * @throws IllegalArgumentException for some of what nobody wrote
   */
  static Optional<Found> read(List<String> lines, List<String> head) {
    int at = head.size();
    if (lines.size() < at + 2
        || !lines.subList(0, at).equals(head)
        || !lines.getLast().startsWith("end,")) {
      return Optional.empty();
    }
    List<String> above = lines.subList(0, lines.size() - 1);
    String[] first = lines.get(at).split(",", -1);
    if (first[0].equals(NONE) && first.length == 2 && above.size() == at + 1) {
      return lines.getLast().equals(end(0, above))
          ? Optional.of(new Found.None(Found.Why.valueOf(first[1])))
          : Optional.empty();
    }
    int rows = above.size() - at - 2;
    return first[0].equals(COUNTER)
            && first.length == COUNTER_CELLS
            && rows > 0
            && lines.getLast().equals(end(rows, above))
        ? Optional.of(counter(first, above.subList(at + 1, above.size())))
        : Optional.empty();
  }

  private static Found.Counter counter(String[] first, List<String> rows) {
    List<Integer> leaps = new ArrayList<>();
    String[] set = rows.getFirst().split(",", -1);
    for (int i = 1; i < set.length; i++) {
      leaps.add(Integer.parseInt(set[i]));
    }
    List<Reading> readings = new ArrayList<>();
    for (String row : rows.subList(1, rows.size())) {
      // What was displayed stands last, for it may hold a comma.
      String[] cells = row.split(",", ROW_CELLS);
      readings.add(
          new Reading(finite(cells[0]), finite(cells[1]), cells[3], Track.State.valueOf(cells[2])));
    }
    return new Found.Counter(
        new Window(
            Integer.parseInt(first[1]),
            Integer.parseInt(first[2]),
            Integer.parseInt(first[3]),
            Integer.parseInt(first[4])),
        first[6],
        finite(first[5]),
        readings,
        leaps);
  }

  private static double finite(String text) {
    double value = Double.parseDouble(text);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not finite: " + text);
    }
    return value;
  }
}
