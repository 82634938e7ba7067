package daylight.report;

import daylight.archive.Bundled;
import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Opening;
import daylight.line.answer.OpeningKey;
import daylight.line.answer.Question;
import daylight.line.answer.Rules;
import daylight.line.answer.State;
import daylight.line.answer.StopOrder;
import daylight.line.answer.Sureness;
import daylight.line.book.Catalogue;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.cause.Ask;
import daylight.line.cause.Strength;
import daylight.line.course.Contribution;
import daylight.line.course.Source;
import daylight.line.fall.Draws;
import daylight.line.fall.Fall;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallRules;
import daylight.line.fall.FallStretch;
import daylight.line.fall.Held;
import daylight.line.fall.Ponding;
import daylight.line.fall.WaterCause;
import daylight.line.fall.WaterSeen;
import daylight.line.fall.WaterSign;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.proving.Connection;
import daylight.line.proving.Proving;
import java.util.List;
import java.util.Map;

/** The answers of {@link Example}, set down by hand. */
final class ExampleAnswers {
  private static final FallLimit LIMIT =
      new FallLimit("IPC 2021", "Table 704.1", 1.0 / 96, "ipc-704-1", Mark.LOOKED_UP);
  private static final Argument LENGTH = new Argument.UncertainLength(new Measured(25.7, 0.08));
  private static final Argument DEPTH = new Argument.UncertainLength(new Measured(1.28, 0.06));
  private static final Argument LEAST = new Argument.UncertainLength(new Measured(0.9, 0.05));
  private static final Argument CLEANOUT = new Argument.Text("the cleanout by the door");
  private static final Argument DITCH = new Argument.Text("the end in the ditch");
  private static final Argument ROOTS = new Argument.Term("kind.roots");
  private static final Argument SLOPE = new Argument.UncertainSlope(new Measured(0.012, 0.002));
  private static final Argument BLOCKED = new Argument.Quantity(Dimension.SHARE, 0.35);
  private static final Argument SEEN = new Argument.Quantity(Dimension.SHARE, 0.93);
  private static final Argument ROOTS_AT = new Argument.Length(9.75);

  private ExampleAnswers() {}

  static Answers answers(boolean deadly) {
    return new Answers(
        "V1",
        deadly
            ? List.of(
                new StopOrder(
                    ExampleLine.finding("F11", "foreign-pipe", "R1", 8.2, null, "share", null)))
            : List.of(),
        new Opening(
            "The floor drain in the shop backs up when it rains hard, and it smells.",
            List.of(
                Statement.of(
                    OpeningKey.TAKEN_FROM_WORDS,
                    new Argument.Term("reported.back_up"),
                    new Argument.Text("“backs up”"))),
            List.of(
                new Opening.Ranked(
                    "roots",
                    Strength.PROBABLE,
                    List.of(
                        Statement.of(OpeningKey.FOUND_SHARE, ROOTS, ROOTS_AT, CLEANOUT, BLOCKED)),
                    List.of(Statement.of(AnswerKey.TEST_ARRIVED, CLEANOUT, DITCH)),
                    List.of()),
                new Opening.Ranked(
                    "vent",
                    Strength.NOT_LOOKED_AT,
                    List.of(),
                    List.of(),
                    List.of(Statement.of(Ask.VENTS)))),
            List.of(),
            List.of(),
            List.of(figure(FigureKey.STATION, ROOTS_AT), figure(FigureKey.FILLED, BLOCKED)),
            List.of(Caution.SEWAGE)),
        List.of(
            new Answers.LineAnswers(
                "storm line",
                List.of(where(), clear(), sound(), drain(), cope(), freeze(), now()))),
        List.of(
            Caution.NOTIFY_BEFORE_DIGGING,
            Caution.HAND_DIG,
            Caution.LOCATES_APPROXIMATE,
            Caution.TRENCH,
            Caution.SEWAGE,
            Caution.LOCAL_CODES),
        fall(),
        proving(),
        List.of(),
        List.of());
  }

  private static Proving proving() {
    return new Proving(
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new Connection(
                "FX1",
                Connection.Kind.FIXTURE,
                "floor drain",
                "C1",
                "C1",
                Connection.Known.TESTED,
                List.of("Q1"),
                List.of()),
            new Connection(
                "RF1",
                Connection.Kind.ROOF,
                null,
                "C1",
                "C1",
                Connection.Known.ASSUMED,
                List.of(),
                List.of("Q2"))));
  }

  static Rules rules() {
    Catalogue.Kind roots = kind("roots", Catalogue.Bears.OPERATION, Dimension.SHARE);
    return new Rules(
        new Catalogue(
            List.of(
                roots,
                kind("joint", Catalogue.Bears.FEATURE, Dimension.SHARE),
                kind("displaced-joint", Catalogue.Bears.STRUCTURE, Dimension.LENGTH),
                kind("crack", Catalogue.Bears.STRUCTURE, Dimension.LENGTH),
                kind("break", Catalogue.Bears.STRUCTURE, Dimension.LENGTH),
                kind("deposit-loose", Catalogue.Bears.OPERATION, Dimension.SHARE),
                kind("junction", Catalogue.Bears.FEATURE, Dimension.SHARE),
                kind("standing-water", Catalogue.Bears.OPERATION, Dimension.LENGTH),
                kind("material-change", Catalogue.Bears.FEATURE, Dimension.SHARE),
                kind("foreign-pipe", Catalogue.Bears.OPERATION, Dimension.SHARE))),
        new FallRules(
            "IPC 2021", "International Plumbing Code, 2021, Table 704.1", List.of(), null),
        new Rules.Limits(0.95, 0.1, 1.2, 1.5, 0.3, 0.6),
        Bundled.priors(),
        Bundled.grades(),
        Bundled.urgency(),
        Bundled.causes(),
        Bundled.holdLimits(),
        Bundled.flow(),
        Bundled.frost());
  }

  private static Catalogue.Kind kind(String id, Catalogue.Bears bears, Dimension dimension) {
    String quantity =
        switch (id) {
          case "displaced-joint" -> "offset";
          case "crack" -> "width";
          case "break" -> "length";
          case "standing-water" -> "depth";
          default -> "share";
        };
    return new Catalogue.Kind(
        id,
        bears,
        id.equals("foreign-pipe") ? Catalogue.Hazard.STOP : Catalogue.Hazard.NONE,
        true,
        Map.of(quantity, dimension),
        List.of(),
        id,
        null);
  }

  private static final Held HELD =
      new Held(
          List.of(
              new Held.Share(WaterCause.GRADE, 0.93),
              new Held.Share(WaterCause.DAM, 0.04),
              new Held.Share(WaterCause.TAILWATER, 0.02),
              new Held.Share(WaterCause.NOT_SETTLED, 0.01)),
          0.9,
          List.of(WaterSign.STILL),
          List.of());

  private static Fall fall() {
    return new Fall(
        List.of(
            stretch("R1", 0, 14.1, 0.012, 0.003),
            stretch("R2", 0, 11.57, 0.0145, 0.0015),
            stretch("R3", 0, 7.74, 0.045, 0.005)),
        List.of(
            new WaterSeen(
                "F7",
                new Place("R2", 3.6),
                new Place("R2", 6.6),
                new Measured(0.06, 0.01),
                0.6,
                true,
                HELD)),
        new Ponding(
            List.of(),
            List.of(
                new Ponding.Pool(
                    new Place("R2", 3.4),
                    new Place("R2", 6.8),
                    0.97,
                    new Ponding.Range(0.03, 0.055, 0.09),
                    new Ponding.Range(0.004, 0.008, 0.015),
                    new Place("R2", 7))),
            List.of(new Ponding.Open(new Place("R3", 1), new Place("R3", 3), 0.2)),
            Draws.USUAL));
  }

  private static FallStretch stretch(
      String reach, double from, double to, double slope, double sd) {
    Measured fall = new Measured(slope, sd);
    return new FallStretch(
        new Place(reach, from),
        new Place(reach, to),
        true,
        fall.times(to - from),
        fall,
        LIMIT,
        fall.probabilityBelow(LIMIT.slope()),
        fall.probabilityBelow(0));
  }

  private static Answer where() {
    return answer(
        Question.WHERE,
        State.ANSWERED,
        Sureness.SURE,
        Statement.of(AnswerKey.WHERE_FOUND, LENGTH, CLEANOUT, DITCH, LEAST, DEPTH),
        List.of(
            Statement.of(AnswerKey.WHERE_OUTLET, DITCH),
            Statement.of(
                AnswerKey.WHERE_CROSSES,
                new Argument.Several(
                    List.of(
                        new Argument.Term("boundary.property_line"), new Argument.Label("fence"))),
                new Argument.Length(20.9),
                CLEANOUT,
                new Argument.Length(0.3))),
        List.of(
            figure(FigureKey.LENGTH, LENGTH),
            figure(FigureKey.DEPTH_LEAST, LEAST),
            figure(FigureKey.DEPTH_MOST, DEPTH),
            figure(FigureKey.STATION, new Argument.Length(20.9)),
            figure(FigureKey.CROSSING, new Argument.Length(0.3))),
        List.of(
            new Contribution(locate("L5", Source.Part.SPOT), 0.52),
            new Contribution(new Source.OfPrior(Priors.Kind.STRAIGHT_RIGID), 0.31),
            new Contribution(locate("L4", Source.Part.CABLE), 0.17)),
        List.of(Caution.LOCATES_APPROXIMATE),
        List.of());
  }

  private static Answer clear() {
    return answer(
        Question.CLEAR,
        State.NO,
        Sureness.SURE,
        Statement.of(AnswerKey.CLEAR_NO_SHARE, ROOTS, ROOTS_AT, CLEANOUT, BLOCKED),
        List.of(),
        List.of(
            new Evidence.Seen("F4", "roots", new Place("R1", 9.75), BLOCKED),
            figure(FigureKey.STATION, ROOTS_AT),
            figure(FigureKey.FILLED, BLOCKED),
            figure(FigureKey.SEEN_SHARE, SEEN)),
        List.of(),
        List.of(),
        List.of());
  }

  private static Answer sound() {
    return answer(
        Question.SOUND,
        State.NO,
        Sureness.LIKELY,
        Statement.of(
            AnswerKey.SOUND_DEFECTS,
            new Argument.Count(3),
            new Argument.Term("kind.displaced-joint"),
            new Argument.Length(4.6),
            CLEANOUT),
        List.of(
            Statement.of(
                AnswerKey.ALSO_FOUND,
                new Argument.Term("kind.break"),
                new Argument.Length(22.03),
                CLEANOUT)),
        List.of(
            figure(FigureKey.COUNT, new Argument.Count(3)),
            new Evidence.Seen(
                "F2", "displaced-joint", new Place("R1", 4.6), new Argument.Small(0.008)),
            figure(FigureKey.STATION, new Argument.Length(4.6)),
            figure(FigureKey.STATION, new Argument.Length(22.03)),
            new Evidence.Seen("F8", "break", new Place("R2", 7.9), new Argument.Small(0.05))),
        List.of(),
        List.of(Caution.CAMERA_PROVES_NO_TIGHTNESS),
        List.of());
  }

  private static Answer drain() {
    Argument limit = new Argument.Quantity(Dimension.SLOPE, 1.0 / 96);
    return answer(
        Question.DRAIN,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        Statement.of(AnswerKey.DRAIN_OPEN, SLOPE, limit),
        List.of(
            Statement.of(AnswerKey.DRAIN_WATER_DEPTH, new Argument.Small(0.06)),
            Statement.of(AnswerKey.DRAIN_RULE_NEW_WORK)),
        List.of(
            figure(FigureKey.SLOPE, SLOPE),
            figure(FigureKey.WATER_DEPTH, new Argument.Small(0.06)),
            new Evidence.Rule("IPC 2021", "Table 704.1", limit, "ipc-704-1")),
        List.of(
            new Contribution(new Source.OfPrior(Priors.Kind.LEVEL), 0.64),
            new Contribution(locate("L2", Source.Part.DEPTH), 0.36)),
        List.of(),
        List.of(
            Statement.of(
                AnswerKey.MISSING_LEVELS,
                new Argument.Several(
                    List.of(new Argument.Label("L3"), new Argument.Label("L4"))))));
  }

  private static Answer cope() {
    return answer(
        Question.COPE,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        Statement.of(AnswerKey.COPE_OPEN),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(Statement.of(AnswerKey.MISSING_AREA), Statement.of(AnswerKey.MISSING_RAIN)));
  }

  private static Answer freeze() {
    return answer(
        Question.FREEZE,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        Statement.of(AnswerKey.FREEZE_OPEN),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(Statement.of(AnswerKey.MISSING_FROST)));
  }

  private static Answer now() {
    return answer(
        Question.WHAT_NOW,
        State.ANSWERED,
        Sureness.LIKELY,
        Statement.of(AnswerKey.NOW_FIRST_DEEP, ROOTS, ROOTS_AT, CLEANOUT, LEAST),
        List.of(),
        List.of(
            new Evidence.Seen("F4", "roots", new Place("R1", 9.75), BLOCKED),
            figure(FigureKey.STATION, ROOTS_AT),
            figure(FigureKey.DEPTH, LEAST)),
        List.of(),
        List.of(Caution.NOTIFY_BEFORE_DIGGING, Caution.SEWAGE),
        List.of());
  }

  private static Answer answer(
      Question question,
      State state,
      Sureness sure,
      Statement headline,
      List<Statement> reasons,
      List<Evidence> evidence,
      List<Contribution> contributions,
      List<Caution> cautions,
      List<Statement> missing) {
    return new Answer(
        question, state, headline, sure, reasons, evidence, null, contributions, cautions, missing);
  }

  /** A reading of a locate of the example. */
  static Source locate(String label, Source.Part part) {
    return ExampleBook.book().visits().stream()
        .flatMap(visit -> visit.locates().stream())
        .filter(locate -> locate.label().equals(label))
        .map(locate -> new Source.OfEntry(locate.id(), Source.Sort.LOCATE, part))
        .findFirst()
        .orElseThrow();
  }

  private static Evidence figure(FigureKey what, Argument figure) {
    return new Evidence.Figure(what, figure, null);
  }
}
