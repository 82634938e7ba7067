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

/**
 * What of the findings may be behind a complaint of which nobody knows what kind it is.
 *
 * @param causes likeliest first
 * @param against what speaks against them
 */
record Unranked(List<Statement> causes, List<Statement> against) {
  private static final double SURE = 0.95;

  /** More causes than this explain nothing. */
  private static final int MOST_CAUSES = 3;

  static Unranked of(Visit visit, List<Case> cases, Laid laid) {
    List<Statement> causes = new ArrayList<>();
    List<Statement> against = new ArrayList<>();
    for (Case one : cases) {
      causes(one, laid, causes);
      against(one, against);
    }
    if (causes.isEmpty()) {
      causes.add(Statement.of(AnswerKey.CAUSE_NONE));
    }
    return new Unranked(causes, against);
  }

  /**
   * What may explain it, likeliest first: what fills the bore, water that stands, then defects.
   * Only the first few are told; the rest stand under their own questions.
   */
  private static void causes(Case one, Laid laid, List<Statement> causes) {
    List<Statement> all = new ArrayList<>();
    double from = one.rules().limits().obstruction();
    one.findings(Catalogue.Bears.OPERATION).stream()
        .filter(placed -> !placed.finding().kind().endsWith("-water"))
        .filter(placed -> Clear.share(placed) >= from)
        .sorted((a, b) -> Double.compare(Clear.share(b), Clear.share(a)))
        .forEach(placed -> all.add(cause(laid, placed)));
    int at = Math.min(1, all.size());
    for (WaterSeen water : one.fall().water()) {
      Place to = water.to();
      if (one.has(water.from().reach()) && to != null) {
        all.add(
            at,
            Statement.of(
                AnswerKey.CAUSE_WATER,
                laid.station(water.from()),
                laid.station(to),
                laid.from(water.from())));
      }
    }
    one.findings(Catalogue.Bears.STRUCTURE).forEach(placed -> all.add(cause(laid, placed)));
    all.addAll(falls(one, laid));
    causes.addAll(all.subList(0, Math.min(MOST_CAUSES, all.size())));
  }

  /** Stretches that surely run backward, or surely are flatter than the rule. */
  private static List<Statement> falls(Case one, Laid laid) {
    List<Statement> falls = new ArrayList<>();
    for (FallStretch stretch : one.fall().stretches()) {
      Double below = stretch.belowLimit();
      boolean flat = stretch.adverse() >= SURE || (below != null && below >= SURE);
      if (flat && one.has(stretch.from().reach())) {
        falls.add(
            Statement.of(
                AnswerKey.CAUSE_FALL,
                laid.station(stretch.from()),
                laid.station(stretch.to()),
                laid.from(stretch.from())));
      }
    }
    return falls;
  }

  private static Statement cause(Laid laid, PlacedFinding placed) {
    return Statement.of(
        AnswerKey.CAUSE_FINDING,
        laid.finding(placed),
        laid.station(placed.from()),
        laid.from(placed.from()));
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
