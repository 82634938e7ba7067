package daylight.report.page;

import daylight.line.course.CourseKey;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Fit;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.Residual;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says how a reading fits the others, and whether it was put aside. */
final class ReadingFits {
  /** Standard uncertainties away from the course up to which a reading fits: 95 and 99.7 %. */
  private static final double FITS = 2;

  private static final double STRETCHES = 3;

  private final Words words;
  private final Line line;

  ReadingFits(Words words, Line line) {
    this.words = words;
    this.line = line;
  }

  /** How a locate fits, whether the course leans on it, and whether a mistake would show. */
  String locate(LocateFit fit) {
    List<String> told = new ArrayList<>();
    boolean checked =
        (fit.spot() != null && fit.spotShows() != null)
            || (fit.depth() != null && fit.depthShows() != null);
    if (checked) {
      told.add(words.word(how(fit.off())));
    }
    if (aside(fit, CourseKey.SPOT_OFF)) {
      told.add(words.word("fit.spot_aside"));
    }
    if (aside(fit, CourseKey.DEPTH_OFF)) {
      told.add(words.word("fit.depth_aside"));
    }
    boolean spotOpen = fit.spot() != null && fit.spotShows() == null;
    boolean depthOpen = fit.depth() != null && fit.depthShows() == null;
    if (spotOpen || depthOpen) {
      told.add(
          words.word(
              spotOpen && depthOpen
                  ? "fit.unchecked"
                  : spotOpen ? "fit.spot_unchecked" : "fit.depth_unchecked"));
    }
    return told.isEmpty() ? Html.EMPTY : String.join(", ", told);
  }

  private static String how(double off) {
    return off <= FITS ? "fit.good" : off <= STRETCHES ? "fit.fair" : "fit.bad";
  }

  private boolean aside(LocateFit fit, CourseKey key) {
    return line.doubts().stream()
        .anyMatch(
            doubt ->
                doubt.key() == key
                    && doubt.arguments().getFirst() instanceof Argument.Label(String label)
                    && label.equals(fit.entry().label()));
  }

  /** The same with how far off it is: a spot beside the course, a depth below or above it. */
  String locateInFull(LocateFit fit) {
    List<String> told = new ArrayList<>();
    String fits = locate(fit);
    if (!fits.equals(Html.EMPTY)) {
      told.add(fits);
    }
    Double across = fit.across();
    if (across != null) {
      told.add(
          words.say(
              "fit.beside",
              new Argument.Text(
                  words.say(
                      across >= 0 ? "side.left" : "side.right",
                      new Argument.Length(Math.abs(across))))));
    }
    Double deeper = fit.depthResidual();
    if (deeper != null) {
      told.add(
          words.say(
              deeper >= 0 ? "fit.deeper" : "fit.shallower", new Argument.Length(Math.abs(deeper))));
    }
    return told.isEmpty() ? Html.EMPTY : String.join("; ", told);
  }

  /** How a tie fits the network, component by component. */
  String tie(String label) {
    return line.survey() instanceof Adjusted adjusted ? network(label, adjusted.fit()) : Html.EMPTY;
  }

  /** How a level fits. */
  String level(String label) {
    return line.levels() instanceof LevelAdjusted adjusted
        ? network(label, adjusted.fit())
        : Html.EMPTY;
  }

  private String network(String label, Fit fit) {
    List<Residual> of =
        fit.residuals().stream().filter(residual -> residual.entry().equals(label)).toList();
    if (fit.setAside().contains(label)) {
      return words.word("fit.put_aside");
    }
    if (of.isEmpty()) {
      return Html.EMPTY;
    }
    Optional<Residual> worst =
        of.stream()
            .filter(residual -> residual.standardised() != null)
            .max((a, b) -> Double.compare(off(a), off(b)));
    return worst
        .map(
            residual ->
                words.word(how(off(residual)))
                    + "; "
                    + words.say(
                        "fit.off",
                        size(residual),
                        new Argument.Number(Math.rint(off(residual) * 10) / 10)))
        .orElseGet(() -> words.word("fit.unchecked"));
  }

  private static double off(Residual residual) {
    Double standardised = residual.standardised();
    return standardised == null ? 0 : Math.abs(standardised);
  }

  private static Argument size(Residual residual) {
    double off = Math.abs(residual.residual());
    return residual.quantity().angular()
        ? new Argument.Quantity(Dimension.ANGLE, off)
        : new Argument.Length(off);
  }
}
