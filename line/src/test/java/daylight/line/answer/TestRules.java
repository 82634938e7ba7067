package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.Catalogue.Bears;
import daylight.line.book.Catalogue.Hazard;
import daylight.line.book.Material;
import daylight.line.book.Reported;
import daylight.line.cause.Ask;
import daylight.line.cause.CauseRules;
import daylight.line.cause.CauseTable;
import daylight.line.cause.Sign;
import daylight.line.cause.WordList;
import daylight.line.condition.Applies;
import daylight.line.condition.Aspect;
import daylight.line.condition.Cited;
import daylight.line.condition.Grade;
import daylight.line.condition.GradeRow;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.ImmediateRow;
import daylight.line.condition.Sized;
import daylight.line.course.TestPriors;
import daylight.line.fall.FallRules;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.frost.FrostTables;
import daylight.line.frost.Ground;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.proving.HoldLimit;
import daylight.line.proving.HoldLimits;
import daylight.line.urgency.Consequence;
import daylight.line.urgency.Occasion;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import daylight.line.urgency.UrgencyTable;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** A few kinds, one rule and the thresholds that are shipped. */
final class TestRules {
  private TestRules() {}

  static Rules rules() {
    return new Rules(
        catalogue(),
        eighth(),
        new Rules.Limits(0.95, 0.05, 1.2192, 1.524, 0.3, 0.6096),
        TestPriors.shipped(),
        cracks(),
        urgency(),
        causes(),
        holds(),
        flow(),
        frost());
  }

  /** One soil and the surfaces that must be there; of our own. */
  static FrostTables frost() {
    FrostTables.Cited ours = new FrostTables.Cited("common-practice", Mark.COMMON_PRACTICE, null);
    return new FrostTables(
        List.of(
            new FrostTables.Soil(
                "silt",
                List.of("silty clay"),
                Ground.Grain.FINE,
                new Measured(1550, 50),
                new Measured(0.2, 0.03),
                ours)),
        List.of(
            new FrostTables.Cover("unknown", List.of(), new Measured(0.7, 0.15), ours),
            new FrostTables.Cover("snow", List.of(), new Measured(1, 0.05), ours),
            new FrostTables.Cover("turf", List.of("lawn"), new Measured(0.5, 0.1), ours)),
        new FrostTables.Row(new Measured(0.225, 0.06), ours),
        List.of(),
        new FrostTables.Row(new Measured(1, 0.1), ours));
  }

  /** One wall by either law, one fitting and roofs; of our own. */
  private static FlowTables flow() {
    FlowTables.Origin ours = new FlowTables.Origin("common-practice", Mark.COMMON_PRACTICE, null);
    FlowTables.State used = FlowTables.State.USED;
    return new FlowTables(
        List.of(
            new FlowTables.Wall(
                Material.UNKNOWN, used, FrictionLaw.MANNING, 0.012, 0.010, 0.014, ours),
            new FlowTables.Wall(
                Material.UNKNOWN, used, FrictionLaw.HAZEN_WILLIAMS, 140, 130, 150, ours)),
        List.of(new FlowTables.Fitting("check-valve", 2, 1, 3, ours)),
        List.of(),
        List.of(new FlowTables.Surface("roof", 0.9, 0.8, 1, ours)));
  }

  /** At once where sewage can come up, a year elsewhere; of our own. */
  static UrgencyTable urgency() {
    SortedMap<Grade, UrgencyTable.Row> rows = new TreeMap<>();
    for (Grade grade : Grade.values()) {
      SortedMap<Consequence, Urgency> urgency = new TreeMap<>();
      for (Consequence one : Consequence.values()) {
        boolean worst = one == Consequence.SEWAGE_INSIDE || grade == Grade.AT_ONCE;
        urgency.put(one, worst ? Urgency.AT_ONCE : Urgency.WITHIN_A_YEAR);
      }
      rows.put(grade, new UrgencyTable.Row(urgency, "common-practice", Mark.COMMON_PRACTICE, null));
    }
    return new UrgencyTable("test", UrgencyTable.WhenUnknown.SAY, 2, rows, times());
  }

  /** As they are shipped. */
  static TimeLimits times() {
    SortedMap<Urgency, TimeLimits.Limit> within = new TreeMap<>();
    within.put(Urgency.AT_ONCE, limit(Period.ZERO));
    within.put(Urgency.WITHIN_WEEKS, limit(Period.ofWeeks(6)));
    within.put(Urgency.WITHIN_A_YEAR, limit(Period.ofYears(1)));
    within.put(Urgency.WATCH, limit(Period.ofYears(2)));
    SortedMap<Occasion, TimeLimits.Limit> again = new TreeMap<>();
    again.put(Occasion.NOT_SEEN_WHOLE, limit(Period.ofMonths(3)));
    again.put(Occasion.CLEANED, limit(Period.ofYears(1)));
    again.put(Occasion.WORK_DUE, limit(Period.ofYears(1)));
    again.put(Occasion.NOTHING_FOUND, limit(Period.ofYears(5)));
    return new TimeLimits(within, again);
  }

  private static TimeLimits.Limit limit(Period time) {
    return new TimeLimits.Limit(time, "common-practice", Mark.COMMON_PRACTICE, null);
  }

  /** Roots, grease and standing water behind a back-up; of our own. */
  static CauseRules causes() {
    CauseTable table =
        new CauseTable(
            "test",
            new CauseTable.Said(5, 0.2),
            new CauseTable.Limits(5, 0.9, 1.5),
            List.of(cause("roots", 8), cause("grease", 6), cause("standing-water", 4)));
    SortedMap<Reported.Kind, List<String>> phrases = new TreeMap<>();
    phrases.put(Reported.Kind.BACK_UP, List.of("back* up"));
    return new CauseRules(table, new WordList("en", phrases, List.of("never", "not")));
  }

  private static CauseTable.Row cause(String kind, double times) {
    return new CauseTable.Row(
        kind,
        List.of(Reported.Kind.BACK_UP),
        List.of(),
        CauseTable.Reach.ON_THE_WAY,
        List.of(
            sign(Sign.FOUND, times, List.of(kind)),
            sign(Sign.NOT_FOUND, 0.1, List.of()),
            sign(Sign.ARRIVED, 0.7, List.of())),
        List.of(Ask.CAMERA),
        "common-practice",
        Mark.COMMON_PRACTICE,
        null);
  }

  private static CauseTable.SignRow sign(Sign sign, double times, List<String> kinds) {
    return new CauseTable.SignRow(sign, times, kinds, null, null, List.of(), null);
  }

  /**
   * 0.15 L from a square metre of wall in 30 minutes under 1.02 to 5.10 m of water: EN 1610, method
   * W, as a maker of pipes tells it (looked up; SOURCES).
   */
  static HoldLimits holds() {
    return new HoldLimits(
        List.of(
            new HoldLimit(
                "en-1610-w",
                "EN 1610",
                new HoldLimit.Allows.BySurface(0.15e-3 / 1800),
                1800.0,
                1.02,
                5.1,
                "13.3",
                "en-1610-w",
                Mark.LOOKED_UP,
                null)));
  }

  /**
   * A crack of 2 mm is class 2: Stein & Stein, Instandhaltung von Kanalisationen, 2001, Table
   * 4.7.4.3.1-1 (looked up at unitracc.de). One of 10 mm calls for action at once: ATV-M 149:1999,
   * class 0, after Table 4.7.4.1.1-1 of the same.
   */
  static GradeScheme cracks() {
    Sized width = new Sized("width", Dimension.LENGTH, null, null);
    Cited cited = new Cited("Table 4.7.4.3.1-1", "stein-h5", Mark.LOOKED_UP, null);
    Cited atv = new Cited("Table 4.7.4.1.1-1", "atv-m-149", Mark.LOOKED_UP, null);
    GradeRow.Limit from = new GradeRow.Limit(Grade.SHORT_TERM, new Reading(0.002, null, "2 mm"));
    return new GradeScheme(
        "h5",
        "five classes",
        "small drains",
        GradeScheme.OnLimit.WORSE,
        List.of(
            new GradeRow(
                "crack",
                Aspect.STRUCTURE,
                Applies.ALWAYS,
                new GradeRow.By.Limits(width, List.of(from), Grade.MEDIUM_TERM),
                cited)),
        List.of(
            new ImmediateRow(
                "crack",
                Applies.ALWAYS,
                new ImmediateRow.Over(width, new Reading(0.01, null, "10 mm")),
                atv)),
        null);
  }

  static Catalogue catalogue() {
    return new Catalogue(
        List.of(
            kind("crack", Bears.STRUCTURE, Hazard.NONE, Map.of("width", Dimension.LENGTH)),
            kind("roots", Bears.OPERATION, Hazard.NONE, Map.of("share", Dimension.SHARE)),
            kind("grease", Bears.OPERATION, Hazard.NONE, Map.of("share", Dimension.SHARE)),
            kind("foreign-cable", Bears.OPERATION, Hazard.STOP, Map.of()),
            kind("standing-water", Bears.OPERATION, Hazard.NONE, Map.of("depth", Dimension.LENGTH)),
            kind("junction", Bears.FEATURE, Hazard.NONE, Map.of())));
  }

  private static Catalogue.Kind kind(
      String id, Bears bears, Hazard hazard, Map<String, Dimension> quantities) {
    return new Catalogue.Kind(id, bears, hazard, true, quantities, List.of(), id, null);
  }

  /**
   * An eighth of an inch in a foot for pipes of 3 to 6 in: International Plumbing Code, Table
   * 704.1, as adopted by the city of Chicago (looked up).
   */
  static FallRules eighth() {
    return new FallRules(
        "ipc-704.1",
        "Table 704.1",
        List.of(
            new FallRules.Row(
                0.0762, 0.1524, List.of(), 1 / 96.0, "Table 704.1", "ipc-704.1", Mark.LOOKED_UP)),
        null);
  }
}
