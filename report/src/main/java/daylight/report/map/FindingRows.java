package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.book.Place;
import daylight.line.condition.Aspect;
import daylight.line.condition.CodeRow;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Seen;
import daylight.line.condition.Verdict;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import daylight.report.draw.Between;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.words.GradeWords;
import daylight.report.words.SoonWords;
import daylight.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was seen in the pipe, each at its place. */
final class FindingRows {
  private final Making making;
  private final Subject subject;
  private final Words words;

  FindingRows(Making making) {
    this.making = making;
    this.subject = making.subject();
    this.words = subject.words();
  }

  List<Row> all() {
    return Captions.findings(subject).stream().map(this::finding).toList();
  }

  private Row finding(PlacedFinding placed) {
    Place from = placed.from();
    Filling row =
        making
            .row(Layer.FINDING, placed.finding().label(), words.word(Caution.LOCATES_APPROXIMATE))
            .text("uuid", placed.finding().id().uuid().toString())
            .text("visit", placed.visit())
            .day("visited", making.day(placed.visit()))
            .text("kind", placed.finding().kind())
            .text("sentence", words.finding(placed))
            .text("remark", placed.finding().remark())
            .text("code", code(placed))
            .text("reach", from.reach())
            .number("distance", from.distance())
            .number("distance_sd", placed.sd())
            .number("distance_to", placed.to() == null ? null : placed.to().distance())
            .yesNo("stop_here", Captions.isStop(subject, placed));
    grade(row, placed);
    return making
        .run(from.reach())
        .map(run -> placed(row, run, placed))
        .orElseGet(() -> row.text("missing", making.say("map.missing.course")).done());
  }

  private Row placed(Filling row, Run run, PlacedFinding placed) {
    double distance = placed.from().distance();
    PlanPoint at = Between.spot(run, distance);
    Measured invert = Between.measured(run, distance, Station::invert);
    Measured depth = Between.measured(run, distance, Station::depth);
    return row.spot(at)
        .measured("invert", invert)
        .measured("ground", Between.measured(run, distance, Station::ground))
        .measured("depth", depth)
        .ellipse(at, spread(run, placed))
        .text("quality", making.quality(placed.from()))
        .text("missing", making.missing(depth))
        .shape(new Shape.Dot(at, invert == null ? null : invert.value()))
        .done();
  }

  /** That of the pipe there, and how far along it the finding itself may be off. */
  private static Covariance2 spread(Run run, PlacedFinding placed) {
    Station near = ((Run.Path.Found) run.path()).nearest(placed.from().distance());
    double e = placed.sd() * StrictMath.sin(near.bearing());
    double n = placed.sd() * StrictMath.cos(near.bearing());
    Covariance2 c = near.spread();
    return new Covariance2(c.xx() + e * e, c.xy() + e * n, c.yx() + e * n, c.yy() + n * n);
  }

  private void grade(Filling row, PlacedFinding placed) {
    FindingGrade grade = subject.rules().grade(placed, subject.line());
    number(row, "class_structure", grade.verdicts().get(Aspect.STRUCTURE));
    number(row, "class_operation", grade.verdicts().get(Aspect.OPERATION));
    row.text("grade", new GradeWords(words).grade(grade).orElse(null));
    row.text(
        "how_soon",
        new SoonWords(words)
            .say(subject.rules().howSoon(placed, subject.book(), subject.line()))
            .orElse(null));
  }

  private static void number(Filling row, String name, @Nullable Verdict verdict) {
    if (verdict instanceof Verdict.Graded graded) {
      row.whole(name, graded.grade().number());
    }
  }

  private @Nullable String code(PlacedFinding placed) {
    return subject.codes().isEmpty()
        ? null
        : subject.codes().find(Seen.of(placed.finding(), null)).map(CodeRow::code).orElse(null);
  }
}
