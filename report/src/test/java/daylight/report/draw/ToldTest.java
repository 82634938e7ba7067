package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.course.PlacedFinding;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What finds no room on a crowded drawing stands in its key, and nothing is left off. */
class ToldTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 6, 12, 21})
  void everyFindingIsNamed(int seed) {
    Subject subject = DenseYard.subject(seed, 90, 260);
    String plan = said(PlanDrawing.draw(subject));
    String sheets = PlanDrawing.sheets(subject).stream().map(ToldTest::said).collect(JOINED);
    String profile = said(ProfileDrawing.draw(subject));

    assertThat(Captions.drawn(subject)).hasSizeGreaterThan(150);
    for (PlacedFinding placed : Captions.drawn(subject)) {
      String text = Captions.finding(subject, subject.route(), placed);
      if (subject.line().findRun(placed.from().reach()).orElseThrow().stations().isEmpty()) {
        continue;
      }
      assertThat(plan).contains(text);
      assertThat(sheets).contains(text);
      if (subject.route().station(placed.from()).isPresent()) {
        assertThat(profile).contains(text);
      }
    }
  }

  /** What may kill is never a mere number. */
  @ParameterizedTest
  @ValueSource(ints = {1, 6, 12, 21})
  void whatMayKillHasItsLabel(int seed) {
    Subject subject = DenseYard.subject(seed, 90, 260);
    for (Function<Subject, Tag> door :
        List.<Function<Subject, Tag>>of(PlanDrawing::draw, ProfileDrawing::draw)) {
      List<String> words = LabelOverlaps.words(door.apply(subject));
      Captions.drawn(subject).stream()
          .filter(placed -> Captions.isStop(subject, placed))
          .filter(placed -> subject.route().station(placed.from()).isPresent())
          .filter(
              placed ->
                  !subject.line().findRun(placed.from().reach()).orElseThrow().stations().isEmpty())
          .map(placed -> Captions.finding(subject, subject.route(), placed))
          .forEach(text -> assertThat(words).contains(text));
    }
  }

  private static final java.util.stream.Collector<CharSequence, ?, String> JOINED =
      Collectors.joining(" ");

  private static String said(Tag svg) {
    return String.join(" ", LabelOverlaps.words(svg));
  }
}
