package daylight.line.course;

import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Visit;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.PlanPoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether there is enough to estimate anything from. */
final class Enough {
  /** Spots nearer to each other than this give no direction, metres; common practice. */
  static final double SHORTEST_BASE = 0.5;

  private Enough() {}

  /** Whether anything tells how deep or how high the line lies. */
  static boolean forHeights(FieldBook book, Tree tree) {
    for (Visit visit : book.visits()) {
      for (Locate locate : visit.locates()) {
        if (locate.depth() != null
            && locate.cable() != null
            && walked(visit, tree, locate.pass())) {
          return true;
        }
      }
      for (Exposure exposure : visit.exposures()) {
        boolean read = exposure.invert() != null || exposure.crown() != null;
        if (read && exposure.cable() != null && walked(visit, tree, exposure.pass())) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean walked(Visit visit, Tree tree, @Nullable String pass) {
    return visit.passes().stream()
        .filter(p -> pass == null || p.label().equals(pass))
        .flatMap(p -> p.walk().stream())
        .anyMatch(leg -> tree.indexOf(leg.reach()) >= 0);
  }

  /** Whether the invert of a node of the tree was levelled. */
  static boolean levelled(Tree tree, @Nullable LevelAdjusted levels) {
    if (levels == null) {
      return false;
    }
    for (Tree.Limb limb : tree.limbs()) {
      for (String node : List.of(limb.near(), limb.far())) {
        if (levels.heights().containsKey(LevelsOfBook.name(node, Level.Part.INVERT))) {
          return true;
        }
      }
    }
    return false;
  }

  /** The greatest distance between two spots in plan, metres. */
  static double spanOf(Model model, List<Mark> spotted) {
    double span = 0;
    for (Mark a : spotted) {
      for (Mark b : spotted) {
        if (model.survey() != null) {
          PlanPoint p = model.survey().point(a.label());
          span = Math.max(span, p.distanceTo(model.survey().point(b.label())));
        }
      }
    }
    return span;
  }
}
