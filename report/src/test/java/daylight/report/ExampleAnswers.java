package daylight.report;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Evidence;
import daylight.line.answer.Opening;
import daylight.line.answer.Question;
import daylight.line.answer.Rules;
import daylight.line.answer.State;
import daylight.line.answer.StopOrder;
import daylight.line.answer.Sureness;
import daylight.line.book.Catalogue;
import daylight.line.book.Place;
import daylight.line.course.Contribution;
import daylight.line.fall.Fall;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallRules;
import daylight.line.fall.FallStretch;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.Map;

/** The answers of {@link Example}, set down by hand. */
final class ExampleAnswers {
  private static final FallLimit LIMIT =
      new FallLimit("IPC 2021", "Table 704.1", 1.0 / 96, "ipc-704-1", FallLimit.Mark.LOOKED_UP);
  private static final Argument LENGTH = new Argument.UncertainLength(new Measured(25.7, 0.1));
  private static final Argument DEPTH = new Argument.UncertainLength(new Measured(1.28, 0.06));
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
                    ExampleLine.finding("F11", "foreign_pipe", "R1", 8.2, null, "share", null)))
            : List.of(),
        new Opening(
            "The floor drain in the shop backs up when it rains hard, and it smells.",
            List.of(say("opening.roots_hold_water", ROOTS_AT, new Argument.Small(0.06))),
            List.of(say("opening.no_belly"))),
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
        List.of());
  }

  static Rules rules() {
    Catalogue.Kind roots = kind("roots", Catalogue.Bears.OPERATION, "roots", Dimension.SHARE);
    return new Rules(
        new Catalogue(
            List.of(
                roots,
                kind("joint", Catalogue.Bears.FEATURE, "joint", Dimension.SHARE),
                kind("offset_joint", Catalogue.Bears.STRUCTURE, "joint", Dimension.LENGTH),
                kind("crack", Catalogue.Bears.STRUCTURE, "crack", Dimension.LENGTH),
                kind("broken", Catalogue.Bears.STRUCTURE, "crack", Dimension.LENGTH),
                kind("deposit", Catalogue.Bears.OPERATION, "dirt", Dimension.SHARE),
                kind("connection", Catalogue.Bears.FEATURE, "join", Dimension.SHARE),
                kind("standing_water", Catalogue.Bears.OPERATION, "water", Dimension.LENGTH),
                kind("material_change", Catalogue.Bears.FEATURE, "change", Dimension.SHARE),
                kind("foreign_pipe", Catalogue.Bears.OPERATION, "stop", Dimension.SHARE))),
        new FallRules("IPC 2021", "International Plumbing Code, 2021, Table 704.1", List.of()),
        new Rules.Limits(0.95, 0.1, 1.2, 1.5));
  }

  private static Catalogue.Kind kind(
      String id, Catalogue.Bears bears, String symbol, Dimension dimension) {
    String quantity =
        switch (id) {
          case "offset_joint" -> "offset";
          case "crack" -> "width";
          case "broken" -> "length";
          case "standing_water" -> "depth";
          default -> "share";
        };
    return new Catalogue.Kind(
        id,
        bears,
        id.equals("foreign_pipe") ? Catalogue.Hazard.STOP : Catalogue.Hazard.NONE,
        true,
        Map.of(quantity, dimension),
        List.of(),
        symbol,
        null);
  }

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
                true)));
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
        say(
            "answer.where.runs",
            LENGTH,
            new Argument.Text("the cleanout by the door"),
            new Argument.Text("the end in the ditch"),
            DEPTH),
        List.of(figure("figure.length", LENGTH), figure("figure.depth", DEPTH)),
        List.of(
            new Contribution("L5", false, 0.52),
            new Contribution("straight_rigid", true, 0.31),
            new Contribution("L4", false, 0.17)),
        List.of(Caution.LOCATES_APPROXIMATE),
        List.of());
  }

  private static Answer clear() {
    return answer(
        Question.CLEAR,
        State.NO,
        Sureness.SURE,
        say("answer.clear.blocked", new Argument.Term("kind.roots"), BLOCKED, ROOTS_AT),
        List.of(
            new Evidence.Seen("F4", "roots", new Place("R1", 9.75), BLOCKED),
            figure("figure.seen", SEEN)),
        List.of(),
        List.of(),
        List.of());
  }

  private static Answer sound() {
    return answer(
        Question.SOUND,
        State.NO,
        Sureness.LIKELY,
        say("answer.sound.cracked", new Argument.Term("kind.broken"), new Argument.Length(22.03)),
        List.of(new Evidence.Seen("F8", "broken", new Place("R2", 7.9), new Argument.Small(0.05))),
        List.of(),
        List.of(Caution.CAMERA_PROVES_NO_TIGHTNESS),
        List.of());
  }

  private static Answer drain() {
    return answer(
        Question.DRAIN,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        say("answer.drain.flat", SLOPE, new Argument.Probability(0.22)),
        List.of(
            figure("figure.fall", SLOPE),
            new Evidence.Rule(
                "IPC 2021",
                "Table 704.1",
                new Argument.Quantity(Dimension.SLOPE, 1.0 / 96),
                "ipc-704-1")),
        List.of(new Contribution("level", true, 0.64), new Contribution("L2", false, 0.36)),
        List.of(),
        List.of(say("answer.missing.level", new Argument.Length(14.1))));
  }

  private static Answer cope() {
    return answer(
        Question.COPE,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        say("answer.cope.not_measured"),
        List.of(),
        List.of(),
        List.of(),
        List.of(say("answer.missing.roof")));
  }

  private static Answer freeze() {
    return answer(
        Question.FREEZE,
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        say("answer.freeze.cover", DEPTH),
        List.of(figure("figure.depth", DEPTH)),
        List.of(),
        List.of(),
        List.of(say("answer.missing.winter")));
  }

  private static Answer now() {
    return answer(
        Question.WHAT_NOW,
        State.ANSWERED,
        Sureness.LIKELY,
        say("answer.now.clean", ROOTS_AT),
        List.of(new Evidence.Seen("F4", "roots", new Place("R1", 9.75), BLOCKED)),
        List.of(),
        List.of(Caution.SEWAGE),
        List.of());
  }

  private static Answer answer(
      Question question,
      State state,
      Sureness sure,
      Statement headline,
      List<Evidence> evidence,
      List<Contribution> contributions,
      List<Caution> cautions,
      List<Statement> missing) {
    return new Answer(
        question, state, headline, sure, List.of(), evidence, contributions, cautions, missing);
  }

  private static Evidence figure(String key, Argument argument) {
    return new Evidence.Figure(() -> key, argument, null);
  }

  private static Statement say(String key, Argument... arguments) {
    return Statement.of(() -> key, arguments);
  }
}
