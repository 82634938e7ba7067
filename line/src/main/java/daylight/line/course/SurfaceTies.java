package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Depths read from two surfaces tell a fall only when a level ties one to the other. */
final class SurfaceTies {
  private SurfaceTies() {}

  /** One statement for every two surfaces of a line that no level ties. */
  static List<Statement> missing(Model model) {
    TreeMap<String, Boolean> levelled = new TreeMap<>();
    for (Mark mark : model.marks()) {
      String surface = mark.surface();
      if (surface != null && mark.depth() != null) {
        levelled.merge(surface, model.levelled(mark, Level.Part.GROUND), Boolean::logicalOr);
      }
    }
    List<Statement> missing = new ArrayList<>();
    List<String> names = List.copyOf(levelled.keySet());
    for (int i = 1; i < names.size(); i++) {
      boolean tied = levelled.getOrDefault(names.get(0), false);
      if (!tied || !levelled.getOrDefault(names.get(i), false)) {
        missing.add(
            Statement.of(
                CourseKey.SURFACES_NOT_TIED,
                new Argument.Text(names.get(0)),
                new Argument.Text(names.get(i))));
      }
    }
    return missing;
  }
}
