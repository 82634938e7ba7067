package daylight.line.course;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** The results of a calibration as a table that can be read and kept. */
final class CalibrationTable {
  private static final List<String> THIRDS = List.of("smallest", "middle", "largest");

  private final Calibration calibration;
  private final StringBuilder text = new StringBuilder();

  private CalibrationTable(Calibration calibration) {
    this.calibration = calibration;
  }

  /** Writes the table beside the other results of the build. */
  static Path write(String name, Calibration calibration, Nature nature) throws IOException {
    Path file = Path.of("target", "calibration", name + ".md");
    Files.createDirectories(file.getParent());
    return Files.writeString(file, new CalibrationTable(calibration).table(nature));
  }

  private String table(Nature nature) {
    int n = calibration.trials().size();
    text.append("# Lines whose truth is ")
        .append(nature == Nature.SUPPOSED ? "as supposed" : "otherwise")
        .append("\n\n")
        .append(n)
        .append(" lines answered, ")
        .append(calibration.unanswered())
        .append(" not. One place on each, drawn evenly over its length. How often the region of ")
        .append("50, 80, 95 and 99 % holds the truth, in %; mean interval score at 95 % in m.\n\n")
        .append("| lines | n | plan 50 | 80 | 95 | 99 | depth 50 | 80 | 95 | 99 |")
        .append(" score across | along | depth |\n")
        .append("|---|---|---|---|---|---|---|---|---|---|---|---|---|\n");
    row("all", t -> true);
    for (LineSort sort : LineClasses.ALL) {
      row(sort.number() + ": " + sort.words(), t -> t.sort().equals(sort));
    }
    thirds("stated size in plan", calibration.thirds(Calibration.Trial::size));
    thirds("stated size in depth", calibration.thirds(Calibration::depthSize));
    thirds("distance to a locate", calibration.thirds(Calibration.Trial::away));
    return text.toString();
  }

  private void thirds(String by, List<Predicate<Calibration.Trial>> thirds) {
    for (int i = 0; i < thirds.size(); i++) {
      row(by + ", " + THIRDS.get(i) + " third", thirds.get(i));
    }
  }

  private void row(String name, Predicate<Calibration.Trial> which) {
    text.append("| ").append(name).append(" | ").append(calibration.plan(0, which).of());
    for (int level = 0; level < Calibration.LEVELS.length; level++) {
      percent(calibration.plan(level, which));
    }
    for (int level = 0; level < Calibration.LEVELS.length; level++) {
      percent(calibration.depth(level, which));
    }
    metres(calibration.score(Calibration.Trial::across, which));
    metres(calibration.score(Calibration.Trial::along, which));
    metres(calibration.score(Calibration.Trial::depth, which));
    text.append(" |\n");
  }

  private void percent(Calibration.Share share) {
    text.append(
        share.of() == 0 ? " | –" : String.format(Locale.ROOT, " | %.1f", 100 * share.value()));
  }

  private void metres(double value) {
    text.append(Double.isNaN(value) ? " | –" : String.format(Locale.ROOT, " | %.3f", value));
  }
}
