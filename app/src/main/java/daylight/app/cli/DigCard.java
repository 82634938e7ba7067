package daylight.app.cli;

import daylight.line.answer.Caution;
import daylight.line.book.Boundary;
import daylight.line.book.Papers;
import daylight.line.book.Reach;
import daylight.line.course.PlacedFinding;
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
import daylight.report.Handout;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a crew reads before it digs, the ticket first and the cautions last. */
final class DigCard {
  /** Below this a chance is not worth a line of its own; common practice, no source. */
  private static final double WORTH_A_LINE = 0.005;

  private final Figured figured;
  private final Handout handout;
  private final DigLimits limits;

  DigCard(Figured figured, Handout handout, DigLimits limits) {
    this.figured = figured;
    this.handout = handout;
    this.limits = limits;
  }

  void say(DigTarget target) {
    handout.answers().stops().forEach(stop -> stop(stop.finding()));
    ticket(target.ticket());
    figured.with(
        "place",
        new Argument.Length(target.place().distance()),
        new Argument.Label(target.place().reach()));
    ties(target.ties(), target.turned());
    depth("crown", target.crown());
    depth("invert", target.invert());
    trench(target.trench());
    DigBox box = target.box();
    figured.with(
        "box",
        new Argument.Length(box.along()),
        new Argument.Length(box.across()),
        new Argument.Length(limits.margin()));
    marks(target.marks());
    Digger.sides(handout.line(), handout.book().site(), target.place()).forEach(this::side);
    Digger.clearances(handout.line(), handout.book().site(), target.place(), limits.clearance())
        .forEach(this::clearance);
    target.told().forEach(figured::saying);
    if (!target.told().isEmpty()) {
      figured.contradicted();
    }
    figured.saying(Statement.of(target.quality()));
    cautions(target);
  }

  /** What must not be dug, cut or jetted at goes before all else. */
  private void stop(PlacedFinding finding) {
    figured
        .with(
            "stop",
            new Argument.Term("kind." + finding.finding().kind()),
            new Argument.Label(finding.from().reach()),
            new Argument.Length(finding.from().distance()))
        .contradicted();
  }

  private void ticket(DigTicket ticket) {
    switch (ticket) {
      case DigTicket.Good(var number, var expires) ->
          figured.with("ticket-good", new Argument.Text(number), new Argument.Day(expires));
      case DigTicket.Undated(var number) ->
          figured.with("ticket-undated", new Argument.Text(number)).contradicted();
      case DigTicket.Expired(var number, var expired) ->
          figured
              .with("ticket-expired", new Argument.Text(number), new Argument.Day(expired))
              .contradicted();
      case DigTicket.None() -> figured.with("ticket-none", new Argument.Count(0)).contradicted();
    }
  }

  private void ties(@Nullable TapeTies ties, @Nullable TurnedTie turned) {
    if (ties != null) {
      tape("tape-first", ties.first());
      tape("tape-second", ties.second());
      figured.with(
          ties.left() ? "meet-left" : "meet-right",
          new Argument.Quantity(Dimension.ANGLE, ties.meet()),
          new Argument.Label(ties.first().landmark()),
          new Argument.Label(ties.second().landmark()));
    }
    if (turned != null) {
      figured.with(
          "turned",
          new Argument.UncertainAngle(turned.right()),
          new Argument.Label(turned.from()),
          new Argument.Label(turned.toward()),
          new Argument.UncertainLength(turned.distance()));
    }
  }

  private void tape(String name, TapeTies.Tape tape) {
    figured.with(
        name, new Argument.UncertainLength(tape.length()), new Argument.Label(tape.landmark()));
  }

  private void depth(String name, @Nullable Measured depth) {
    if (depth != null) {
      figured.with(
          name,
          new Argument.Length(Math.max(0, depth.lower95())),
          new Argument.Length(Math.max(0, depth.upper95())));
    }
  }

  private void trench(DigTarget.Trench trench) {
    switch (trench) {
      case SHALLOW, UNKNOWN -> {}
      case WAY_OUT -> figured.with("way-out", new Argument.Length(limits.wayOut()));
      case PROTECT -> figured.with("protect", new Argument.Length(limits.protect()));
    }
  }

  private void marks(List<MarkNear> marks) {
    if (marks.isEmpty()) {
      figured.with("mark-none", new Argument.Count(0));
    }
    for (MarkNear mark : marks) {
      Argument service = new Argument.Term(service(mark.service()));
      Argument label = new Argument.Label(mark.label());
      Double away = mark.away();
      if (away == null) {
        figured.with("mark-open", service, label);
      } else {
        String name = away == 0 ? "mark-crosses" : mark.byHand() ? "mark-hand" : "mark";
        figured.with(name, new Argument.Length(away), service, label);
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
    figured.with(
        name,
        new Argument.Probability(chance),
        new Argument.Term("boundary." + boundary.kind().name().toLowerCase(Locale.ROOT)),
        new Argument.Label(boundary.label()),
        whose == null ? new Argument.Term("figure.dig.whose-unknown") : new Argument.Text(whose));
  }

  private void clearance(Clearance clearance) {
    figured.with(
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
        handout
            .book()
            .site()
            .findReach(target.place().reach())
            .filter(reach -> reach.use() == Reach.Use.STORM)
            .isPresent();
    if (!storm) {
      caution(Caution.SEWAGE);
      caution(Caution.GAS);
    }
    caution(Caution.LOCAL_CODES);
  }

  private void caution(Caution caution) {
    figured.saying(Statement.of(caution));
  }
}
