package daylight.report.words;

import daylight.line.answer.Caution;
import daylight.line.answer.StopOrder;
import daylight.line.book.Boundary;
import daylight.line.book.Papers;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.dig.Clearance;
import daylight.line.dig.DigBox;
import daylight.line.dig.DigLimits;
import daylight.line.dig.DigTarget;
import daylight.line.dig.DigTicket;
import daylight.line.dig.Digger;
import daylight.line.dig.GroundSide;
import daylight.line.dig.MarkNear;
import daylight.line.dig.TapeTies;
import daylight.line.dig.TurnedTie;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a crew reads before it digs, the ticket first and the cautions last: the same rows on paper,
 * on a page, in files and on the command line.
 */
public final class DigWords {
  /** Below this a chance is not worth a line of its own; common practice, no source. */
  private static final double WORTH_A_LINE = 0.005;

  /**
   * What is further off than so many times what is asked about is in nobody's way; common practice,
   * no source.
   */
  private static final double FAR = 3;

  private final Line line;
  private final Site site;
  private final List<StopOrder> stops;
  private final DigLimits limits;
  private final List<Row> rows = new ArrayList<>();

  private DigWords(Line line, Site site, List<StopOrder> stops, DigLimits limits) {
    this.line = line;
    this.site = site;
    this.stops = stops;
    this.limits = limits;
  }

  /** What a row is about, in the order in which they are read. */
  public enum About {
    STOP,
    TICKET,
    SPOT,
    DEPTH,
    BOX,
    SERVICES,
    GROUND,
    OPEN,
    QUALITY,
    CARE
  }

  /**
   * One row.
   *
   * @param name of a figure, such as {@code tape-first}; empty for a sentence without one
   * @param key of its message
   * @param arguments what the message needs, the figure itself first
   * @param doubt whether the row says that something is missing or must not be done
   */
  public record Row(About about, String name, String key, List<Argument> arguments, boolean doubt) {
    public Row {
      arguments = List.copyOf(arguments);
    }
  }

  /** The rows of a place that can be dug for. */
  public static List<Row> of(
      DigTarget target, Line line, Site site, List<StopOrder> stops, DigLimits limits) {
    DigWords words = new DigWords(line, site, stops, limits);
    words.say(target);
    return List.copyOf(words.rows);
  }

  /** The row about a ticket by itself, for a place that cannot be dug for. */
  public static Row of(DigTicket ticket) {
    return switch (ticket) {
      case DigTicket.Good(var number, var expires) ->
          row(
              About.TICKET,
              "ticket-good",
              false,
              new Argument.Text(number),
              new Argument.Day(expires));
      case DigTicket.Undated(var number) ->
          row(About.TICKET, "ticket-undated", true, new Argument.Text(number));
      case DigTicket.Expired(var number, var expired) ->
          row(
              About.TICKET,
              "ticket-expired",
              true,
              new Argument.Text(number),
              new Argument.Day(expired));
      case DigTicket.None() -> row(About.TICKET, "ticket-none", true, new Argument.Count(0));
    };
  }

  private static Row row(About about, String name, boolean doubt, Argument... arguments) {
    return new Row(about, name, "figure.dig." + name, List.of(arguments), doubt);
  }

  private void add(About about, String name, Argument... arguments) {
    rows.add(row(about, name, false, arguments));
  }

  private void say(About about, Statement statement, boolean doubt) {
    rows.add(new Row(about, "", statement.key().key(), statement.arguments(), doubt));
  }

  private void say(DigTarget target) {
    stops.forEach(stop -> stop(stop.finding()));
    rows.add(of(target.ticket()));
    add(
        About.SPOT,
        "place",
        new Argument.Length(target.place().distance()),
        new Argument.Label(target.place().reach()));
    ties(target.ties(), target.turned());
    heading(target);
    depth("crown", target.crown());
    depth("invert", target.invert());
    DigBox box = target.box();
    add(
        About.BOX,
        "box",
        new Argument.Length(box.along()),
        new Argument.Length(box.across()),
        new Argument.Length(limits.margin()));
    trench(target.trench());
    marks(target.marks());
    Digger.sides(line, site, target.place()).forEach(this::side);
    Digger.clearances(line, site, target.place(), limits.clearance()).stream()
        .filter(one -> one.estimate() <= FAR * limits.clearance() || one.nearer() >= WORTH_A_LINE)
        .forEach(this::clearance);
    target.told().forEach(told -> say(About.OPEN, told, true));
    restsOn(target.place());
    say(About.QUALITY, Statement.of(target.quality()), false);
    cautions(target);
  }

  /** What must not be dug, cut or jetted at goes before all else. */
  private void stop(PlacedFinding finding) {
    rows.add(
        row(
            About.STOP,
            "stop",
            true,
            new Argument.Term("kind." + finding.finding().kind()),
            new Argument.Label(finding.from().reach()),
            new Argument.Length(finding.from().distance())));
  }

  /**
   * What is doubted of the places found before and behind, which the spot and its depth rest on.
   */
  private void restsOn(Place place) {
    List<LocateFit> here =
        line.locates().stream()
            .filter(fit -> fit.place().reach().equals(place.reach()))
            .sorted(Comparator.comparingDouble(fit -> fit.place().distance()))
            .toList();
    Set<String> near = new LinkedHashSet<>();
    for (LocateFit fit : here.reversed()) {
      if (near.isEmpty() && fit.place().distance() <= place.distance()) {
        near.add(fit.entry().label());
      }
    }
    here.stream()
        .filter(fit -> fit.place().distance() >= place.distance())
        .findFirst()
        .ifPresent(fit -> near.add(fit.entry().label()));
    line.doubts().stream()
        .filter(
            doubt ->
                !doubt.arguments().isEmpty()
                    && doubt.arguments().getFirst() instanceof Argument.Label(String label)
                    && near.contains(label))
        .forEach(doubt -> say(About.OPEN, doubt, true));
  }

  /** Which way the box lies: the pipe against the line between the landmarks of the tapes. */
  private void heading(DigTarget target) {
    TapeTies ties = target.ties();
    if (ties == null || !(line.survey() instanceof Adjusted plan)) {
      return;
    }
    PlanPoint a = plan.point(ties.first().landmark());
    PlanPoint b = plan.point(ties.second().landmark());
    double sd =
        line.findRun(target.place().reach())
            .map(Run::path)
            .map(
                path ->
                    path instanceof Run.Path.Found found
                        ? found.nearest(target.place().distance()).bearingSd()
                        : 0.0)
            .orElse(0.0);
    double turn = target.box().bearing() - a.bearingTo(b);
    double half = turn - Math.PI * Math.rint(turn / Math.PI);
    add(
        About.SPOT,
        half < 0 ? "heading-left" : "heading-right",
        new Argument.UncertainAngle(new Measured(Math.abs(half), Math.max(sd, 1e-6))),
        new Argument.Label(ties.first().landmark()),
        new Argument.Label(ties.second().landmark()));
  }

  private void ties(@Nullable TapeTies ties, @Nullable TurnedTie turned) {
    if (ties != null) {
      tape("tape-first", ties.first());
      tape("tape-second", ties.second());
      add(
          About.SPOT,
          ties.left() ? "meet-left" : "meet-right",
          new Argument.Quantity(Dimension.ANGLE, ties.meet()),
          new Argument.Label(ties.first().landmark()),
          new Argument.Label(ties.second().landmark()));
    }
    if (turned != null) {
      add(
          About.SPOT,
          "turned",
          new Argument.UncertainAngle(turned.right()),
          new Argument.Label(turned.from()),
          new Argument.Label(turned.toward()),
          new Argument.UncertainLength(turned.distance()));
    }
  }

  private void tape(String name, TapeTies.Tape tape) {
    add(
        About.SPOT,
        name,
        new Argument.UncertainLength(tape.length()),
        new Argument.Label(tape.landmark()));
  }

  private void depth(String name, @Nullable Measured depth) {
    if (depth != null) {
      add(
          About.DEPTH,
          name,
          new Argument.Length(Math.max(0, depth.lower95())),
          new Argument.Length(Math.max(0, depth.upper95())));
    }
  }

  private void trench(DigTarget.Trench trench) {
    switch (trench) {
      case SHALLOW, UNKNOWN -> {}
      case WAY_OUT -> add(About.BOX, "way-out", new Argument.Length(limits.wayOut()));
      case PROTECT -> add(About.BOX, "protect", new Argument.Length(limits.protect()));
    }
  }

  private void marks(List<MarkNear> marks) {
    if (marks.isEmpty()) {
      add(About.SERVICES, "mark-none", new Argument.Count(0));
    }
    for (MarkNear mark : marks) {
      Argument service = new Argument.Term(service(mark.service()));
      Argument label = new Argument.Label(mark.label());
      Double away = mark.away();
      if (away == null) {
        add(About.SERVICES, "mark-open", service, label);
      } else {
        String name = away == 0 ? "mark-crosses" : mark.byHand() ? "mark-hand" : "mark";
        add(About.SERVICES, name, new Argument.Length(away), service, label);
      }
    }
  }

  private static String service(Papers.Service service) {
    return "service." + service.name().toLowerCase(Locale.ROOT);
  }

  /** The likelier side, and the other where it cannot be left out. */
  private void side(GroundSide side) {
    Boundary boundary = side.boundary();
    if (side.left() >= WORTH_A_LINE) {
      side("side-left", side.left(), boundary, boundary.left());
    }
    if (side.right() >= WORTH_A_LINE) {
      side("side-right", side.right(), boundary, boundary.right());
    }
  }

  private void side(String name, double chance, Boundary boundary, @Nullable String whose) {
    add(
        About.GROUND,
        name,
        new Argument.Probability(chance),
        new Argument.Term("boundary." + boundary.kind().name().toLowerCase(Locale.ROOT)),
        new Argument.Label(boundary.label()),
        whose == null ? new Argument.Term("figure.dig.whose-unknown") : new Argument.Text(whose));
  }

  private void clearance(Clearance clearance) {
    add(
        About.GROUND,
        "clearance",
        new Argument.Length(clearance.estimate()),
        new Argument.Term(clearance.kind()),
        new Argument.Label(clearance.label()),
        new Argument.Length(clearance.least()),
        new Argument.Length(clearance.most()),
        new Argument.Length(clearance.limit()),
        new Argument.Probability(clearance.nearer()));
  }

  private void cautions(DigTarget target) {
    caution(Caution.NOTIFY_BEFORE_DIGGING);
    caution(Caution.HAND_DIG);
    caution(Caution.LOCATES_APPROXIMATE);
    if (target.trench() != DigTarget.Trench.SHALLOW) {
      caution(Caution.TRENCH);
    }
    boolean storm =
        site.findReach(target.place().reach())
            .filter(reach -> reach.use() == Reach.Use.STORM)
            .isPresent();
    if (!storm) {
      caution(Caution.SEWAGE);
      caution(Caution.GAS);
    }
    caution(Caution.LOCAL_CODES);
  }

  private void caution(Caution caution) {
    say(About.CARE, Statement.of(caution), false);
  }
}
