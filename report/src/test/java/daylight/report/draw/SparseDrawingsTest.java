package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.course.CourseKey;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.report.Example;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class SparseDrawingsTest {

  @Test
  void withoutHeightsThePipeIsDrawnAtItsDepthAndThatIsSaid() {
    Subject subject =
        with(
            run ->
                stations(
                    run,
                    s ->
                        new Station(
                            s.place(),
                            s.spot(),
                            s.spread(),
                            s.bearing(),
                            s.bearingSd(),
                            null,
                            null,
                            s.depth())));

    assertThat(said(ProfileDrawing.draw(subject))).contains("Heights are not known");
  }

  @Test
  void withoutDepthsTheFindingsStillHaveTheirDistances() {
    Subject subject =
        with(
            run ->
                stations(
                    run,
                    s ->
                        new Station(
                            s.place(),
                            s.spot(),
                            s.spread(),
                            s.bearing(),
                            s.bearingSd(),
                            null,
                            null,
                            null)));
    String profile = said(ProfileDrawing.draw(subject));

    assertThat(profile).contains("Depths are not known").contains("Roots 32' 0\"");
    assertThat(profile).doesNotContain("heights drawn");
  }

  @Test
  void aLineThatWasNotFoundIsNotDrawnButItsWantIsNamed() {
    Subject subject =
        with(
            run ->
                new Run(
                    run.reach(),
                    null,
                    new Run.Path.NotFound(
                        Statement.of(CourseKey.NO_SPOTS, new Argument.Label("storm line")))));

    assertThat(said(PlanDrawing.draw(subject))).contains("fixed on the ground yet");
    assertThat(said(ProfileDrawing.draw(subject))).contains("Nothing can be drawn yet");
  }

  private static String said(daylight.report.markup.Tag svg) {
    assertThat(LabelOverlaps.of(svg)).isEmpty();
    return String.join(" ", LabelOverlaps.words(svg));
  }

  private static Run stations(Run run, UnaryOperator<Station> change) {
    return new Run(
        run.reach(),
        run.length(),
        new Run.Path.Found(run.stations().stream().map(change).toList()));
  }

  private static Subject with(UnaryOperator<Run> change) {
    Subject usual = DrawingsTest.subject(Example.usual());
    Line line = usual.line();
    Line changed =
        new Line(
            line.survey(),
            line.levels(),
            line.runs().stream().map(change).toList(),
            line.findings(),
            line.sights(),
            line.passes(),
            line.locates(),
            line.gaps(),
            line.doubts(),
            line.joint());
    return new Subject(
        usual.book(),
        changed,
        usual.answers(),
        usual.rules(),
        usual.shots(),
        List.<daylight.line.measure.Complaint>of(),
        usual.words());
  }
}
