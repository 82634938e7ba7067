package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.Place;
import daylight.line.book.Test;
import daylight.line.book.Visit;
import daylight.line.course.PlacedFinding;
import daylight.line.fall.FallStretch;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;

/** The complaint, and what of the findings may lie behind it. */
final class Openings {
  private static final double SURE = 0.95;

  /** More causes than this explain nothing. */
  private static final int MOST_CAUSES = 3;

  private Openings() {}

  static Opening of(Visit visit, List<Case> cases) {
    List<Statement> causes = new ArrayList<>();
    List<Statement> against = new ArrayList<>();
    for (Case one : cases) {
      causes(one, causes);
      against(one, against);
    }
    if (causes.isEmpty()) {
      causes.add(Statement.of(AnswerKey.CAUSE_NONE));
    }
    return new Opening(visit.complaint(), causes, against);
  }

  /**
   * What may explain it, likeliest first: what fills the bore, water that stands, then defects.
   * Only the first few are told; the rest stand under their own questions.
   */
  private static void causes(Case one, List<Statement> causes) {
    List<Statement> all = new ArrayList<>();
    double from = one.rules().limits().obstruction();
    one.findings(Catalogue.Bears.OPERATION).stream()
        .filter(placed -> !placed.finding().kind().endsWith("-water"))
        .filter(placed -> Clear.share(placed) >= from)
        .sorted((a, b) -> Double.compare(Clear.share(b), Clear.share(a)))
        .forEach(placed -> all.add(cause(one, placed)));
    int at = Math.min(1, all.size());
    for (WaterSeen water : one.fall().water()) {
      Place to = water.to();
      if (one.has(water.from().reach()) && to != null) {
        all.add(
            at,
            Statement.of(
                AnswerKey.CAUSE_WATER,
                new Argument.Length(one.station(water.from())),
                new Argument.Length(one.station(to)),
                new Argument.Text(one.named(one.route(water.from()).from()))));
      }
    }
    one.findings(Catalogue.Bears.STRUCTURE).forEach(placed -> all.add(cause(one, placed)));
    all.addAll(falls(one));
    causes.addAll(all.subList(0, Math.min(MOST_CAUSES, all.size())));
  }

  /** Stretches that surely run backward, or surely are flatter than the rule. */
  private static List<Statement> falls(Case one) {
    List<Statement> falls = new ArrayList<>();
    for (FallStretch stretch : one.fall().stretches()) {
      Double below = stretch.belowLimit();
      boolean flat = stretch.adverse() >= SURE || (below != null && below >= SURE);
      if (flat && one.has(stretch.from().reach())) {
        falls.add(
            Statement.of(
                AnswerKey.CAUSE_FALL,
                new Argument.Length(one.station(stretch.from())),
                new Argument.Length(one.station(stretch.to())),
                new Argument.Text(one.named(one.route(stretch.from()).from()))));
      }
    }
    return falls;
  }

  private static Statement cause(Case one, PlacedFinding placed) {
    return Statement.of(
        AnswerKey.CAUSE_FINDING,
        new Argument.Term("kind." + placed.finding().kind()),
        new Argument.Length(one.station(placed.from())),
        new Argument.Text(one.named(one.route(placed.from()).from())));
  }

  private static void against(Case one, List<Statement> against) {
    for (Test test : one.visit().tests()) {
      for (Test.Seen seen : test.seen()) {
        boolean here = one.runs().stream().anyMatch(r -> r.reach().upstream().equals(test.at()));
        if (here && seen.arrived() && test.kind() == Test.Kind.WATER_RUN) {
          against.add(
              Statement.of(
                  AnswerKey.AGAINST_TEST,
                  new Argument.Text(one.named(test.at())),
                  new Argument.Text(one.named(seen.where()))));
        }
      }
    }
  }
}
