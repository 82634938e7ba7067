package daylight.line.answer;

import daylight.line.book.Level;
import daylight.line.book.Visit;
import daylight.line.course.LocateFit;
import daylight.line.measure.Argument;
import java.util.ArrayList;
import java.util.List;

/** What was levelled and what was not. */
final class Levelled {
  private Levelled() {}

  /** Whether the invert at a node was levelled on any visit. */
  static boolean invert(Case one, String node) {
    return levelled(one, new Level.Mark(node, Level.Part.INVERT));
  }

  /** The labels of the locates of a line whose ground no level reached. */
  static List<Argument> notLevelled(Case one) {
    List<Argument> labels = new ArrayList<>();
    for (LocateFit fit : one.line().locates()) {
      if (one.has(fit.place().reach()) && !levelled(one, ground(fit.entry().label()))) {
        labels.add(new Argument.Label(fit.entry().label()));
      }
    }
    return labels;
  }

  private static Level.Mark ground(String label) {
    return new Level.Mark(label, Level.Part.GROUND);
  }

  private static boolean levelled(Case one, Level.Mark mark) {
    for (Visit visit : one.book().visits()) {
      for (Level level : visit.levels()) {
        if (marks(level).contains(mark)) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<Level.Mark> marks(Level level) {
    return switch (level) {
      case Level.Rod rod -> List.of(rod.mark());
      case Level.Height height -> List.of(height.mark());
      case Level.Rise rise -> List.of(rise.from(), rise.to());
    };
  }
}
