package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Adjustment;
import daylight.line.survey.Covariance2;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.PlaneNetwork;
import daylight.line.survey.Residual;
import daylight.line.survey.Sighting;
import daylight.line.survey.Suspect;
import daylight.line.survey.Undetermined;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** An adjusted plane network, told as sentences or as JSON with every digit. */
final class TiesReport {
  private static final double NINETEEN_OF_TWENTY = 0.95;

  private final PlaneNetwork network;
  private final Adjustment plan;
  private final List<Statement> doubts;

  TiesReport(PlaneNetwork network, Adjustment plan, List<Statement> doubts) {
    this.network = network;
    this.plan = plan;
    this.doubts = doubts;
  }

  /** Whether anything does not fit or could not be placed. */
  boolean open() {
    return !doubts.isEmpty() || !(plan instanceof Adjusted);
  }

  List<String> sentences(Words words) {
    List<String> lines = new ArrayList<>();
    if (plan instanceof Adjusted adjusted) {
      lines.add(words.word("figure.ties.points"));
      adjusted.points().keySet().forEach(point -> lines.add("  " + point(adjusted, point, words)));
      lines.add("");
      lines.add(words.word("figure.ties.readings"));
      adjusted.fit().residuals().forEach(r -> lines.add("  " + reading(r, words)));
      lines.add("");
      adjusted
          .fit()
          .sigma0Ratio()
          .ifPresent(
              ratio ->
                  lines.add(
                      words.say(
                          "figure.ties.fit",
                          new Argument.Count(adjusted.fit().dof()),
                          new Argument.Text(fixed(ratio)))));
    }
    doubts.forEach(doubt -> lines.add(words.say(doubt)));
    if (doubts.isEmpty()) {
      lines.add(
          words.word(plan instanceof Adjusted ? "cli.no_contradiction" : "figure.ties.nothing"));
    }
    return lines;
  }

  private Set<String> fixed() {
    return network.sightings().stream()
        .filter(Sighting.Fixed.class::isInstance)
        .map(Sighting::entry)
        .collect(Collectors.toSet());
  }

  private String point(Adjusted adjusted, String label, Words words) {
    PlanPoint at = adjusted.point(label);
    Covariance2 c = adjusted.covariance(label, label);
    if (c.xx() <= 0 && c.yy() <= 0) {
      return words.say(
          "figure.ties.held",
          new Argument.Label(label),
          new Argument.Length(at.x()),
          new Argument.Length(at.y()));
    }
    ErrorEllipse ellipse = adjusted.ellipse(label, NINETEEN_OF_TWENTY);
    return words.say(
        "figure.ties.point",
        new Argument.Label(label),
        coordinate(at.x(), c.xx()),
        coordinate(at.y(), c.yy()),
        size(ellipse.semiMajor()),
        size(ellipse.semiMinor()),
        new Argument.Quantity(Dimension.ANGLE, ellipse.azimuth()));
  }

  /** A coordinate that the grid itself holds has no uncertainty. */
  private static Argument coordinate(double metres, double variance) {
    return variance > 0
        ? new Argument.UncertainLength(new Measured(metres, StrictMath.sqrt(variance)))
        : new Argument.Length(metres);
  }

  private static Argument size(double metres) {
    return metres < 0.15 ? new Argument.Small(metres) : new Argument.Length(metres);
  }

  private static Argument size(Residual residual, double value, Words words) {
    double size = Math.abs(value);
    if (!residual.quantity().angular()) {
      return size(size);
    }
    double degrees = StrictMath.toDegrees(size);
    return degrees < 0.1
        ? new Argument.Text(words.written(String.format(Locale.ROOT, "%.1f″", degrees * 3600)))
        : new Argument.Quantity(Dimension.ANGLE, size);
  }

  private String reading(Residual residual, Words words) {
    List<Argument> arguments = new ArrayList<>();
    arguments.add(new Argument.Label(residual.entry()));
    arguments.add(
        new Argument.Term("measured." + residual.quantity().name().toLowerCase(Locale.ROOT)));
    Double standardised = residual.standardised();
    Double detectable = residual.detectable();
    if (standardised == null || detectable == null) {
      return words.say("figure.ties.unchecked", arguments.toArray(Argument[]::new));
    }
    arguments.add(size(residual, residual.residual(), words));
    // Computed minus observed: above zero the reading is too small.
    arguments.add(
        new Argument.Term(residual.residual() < 0 ? "survey.too_much" : "survey.too_little"));
    arguments.add(new Argument.Text(words.written(fixed(Math.abs(standardised)))));
    arguments.add(new Argument.Text(words.written(Math.round(residual.redundancy() * 100) + " %")));
    arguments.add(size(residual, detectable, words));
    return words.say("figure.ties.reading", arguments.toArray(Argument[]::new));
  }

  private static String fixed(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  void json(ObjectNode reply, Words words) {
    reply.put("figure", "ties").put("adjusted", plan instanceof Adjusted);
    if (plan instanceof Adjusted adjusted) {
      points(reply, adjusted);
      readings(reply, adjusted);
      reply.put("degrees-of-freedom", adjusted.fit().dof());
      reply.put("weighted-sum-of-squares", adjusted.fit().weightedSumOfSquares());
      adjusted.fit().sigma0Ratio().ifPresent(ratio -> reply.put("sigma0-ratio", ratio));
      suspects(reply, adjusted);
      ArrayNode undetermined = reply.putArray("undetermined");
      adjusted.undetermined().forEach(u -> undetermined(undetermined.addObject(), u));
    }
    ArrayNode told = reply.putArray("told");
    for (Statement doubt : doubts) {
      told.addObject().put("key", doubt.key().key()).put("sentence", words.say(doubt));
    }
    if (doubts.isEmpty() && !(plan instanceof Adjusted)) {
      told.addObject()
          .put("key", "figure.ties.nothing")
          .put("sentence", words.word("figure.ties.nothing"));
    }
  }

  private void points(ObjectNode reply, Adjusted adjusted) {
    Set<String> fixed = fixed();
    ArrayNode points = reply.putArray("points");
    List<String> labels = List.copyOf(adjusted.points().keySet());
    for (String label : labels) {
      PlanPoint at = adjusted.point(label);
      Covariance2 c = adjusted.covariance(label, label);
      ErrorEllipse ellipse = adjusted.ellipse(label, NINETEEN_OF_TWENTY);
      points
          .addObject()
          .put("point", label)
          .put("fixed", fixed.contains(label))
          .put("east", at.x())
          .put("north", at.y())
          .put("sd-east", StrictMath.sqrt(Math.max(0, c.xx())))
          .put("sd-north", StrictMath.sqrt(Math.max(0, c.yy())))
          .put("covariance-east-north", c.xy())
          .putObject("ellipse-95")
          .put("semi-major", ellipse.semiMajor())
          .put("semi-minor", ellipse.semiMinor())
          .put("azimuth-degrees", StrictMath.toDegrees(ellipse.azimuth()));
    }
    List<String> free = labels.stream().filter(label -> !fixed.contains(label)).toList();
    ObjectNode joint = reply.putObject("covariance");
    free.forEach(joint.putArray("points")::add);
    ArrayNode matrix = joint.putArray("east-north-by-point");
    for (String a : free) {
      ArrayNode east = matrix.addArray();
      ArrayNode north = matrix.addArray();
      for (String b : free) {
        Covariance2 c = adjusted.covariance(a, b);
        east.add(c.xx()).add(c.xy());
        north.add(c.yx()).add(c.yy());
      }
    }
  }

  private static void readings(ObjectNode reply, Adjusted adjusted) {
    ArrayNode readings = reply.putArray("readings");
    for (Residual r : adjusted.fit().residuals()) {
      readings
          .addObject()
          .put("reading", r.entry())
          .put("quantity", r.quantity().name().toLowerCase(Locale.ROOT))
          .put("unit", r.quantity().angular() ? "rad" : "m")
          .put("read", r.read())
          .put("sd", r.readSd())
          .put("residual", r.residual())
          .put("residual-sd", r.sd())
          .put("standardised", r.standardised())
          .put("redundancy", r.redundancy())
          .put("detectable", r.detectable());
    }
  }

  private static void suspects(ObjectNode reply, Adjusted adjusted) {
    ArrayNode suspects = reply.putArray("suspects");
    for (Suspect suspect : adjusted.fit().suspects()) {
      ObjectNode one =
          suspects
              .addObject()
              .put("reading", suspect.entry())
              .put("quantity", suspect.quantity().name().toLowerCase(Locale.ROOT))
              .put("blunder", suspect.blunder())
              .put("blunder-sd", suspect.named().sd())
              .put("standardised", suspect.statistic())
              .put("set-aside", suspect.setAside());
      suspect.inseparable().forEach(one.putArray("inseparable")::add);
    }
  }

  private static void undetermined(ObjectNode into, Undetermined undetermined) {
    into.put("point", undetermined.point());
    switch (undetermined) {
      case Undetermined.Untied untied ->
          into.put("reason", untied.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      case Undetermined.Mirror mirror -> {
        into.put("reason", "mirror");
        ArrayNode candidates = into.putArray("candidates");
        mirror
            .candidates()
            .forEach(at -> candidates.addObject().put("east", at.x()).put("north", at.y()));
      }
    }
  }
}
