package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.archive.Bundled;
import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Indoors;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.fall.Fall;
import daylight.line.frost.Frost;
import daylight.line.frost.FrostAlong;
import daylight.line.frost.FrostDepth;
import daylight.line.frost.Froster;
import daylight.line.frost.Ground;
import daylight.line.frost.Surface;
import daylight.line.frost.Winter;
import daylight.line.measure.Measured;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Frost along the lines of small books, and what is answered. */
class FrostAlongTest {
  private static final double DAY = 86_400;

  @TempDir private Path folder = Path.of("");

  private static Handout answered(Path book) {
    Job.Outcome outcome = Job.answer(book, Job.Settings.USUAL);
    assertThat(outcome).isInstanceOf(Job.Outcome.Answered.class);
    return ((Job.Outcome.Answered) outcome).handout();
  }

  private static Handout corpus(String number) {
    return answered(CorpusBook.of(number).file());
  }

  private Handout altered(String number, String from, String to) throws IOException {
    String text = CorpusBook.of(number).text();
    assertThat(text).contains(from);
    Path file = folder.resolve(number + ".yaml");
    Files.writeString(file, text.replace(from, to), StandardCharsets.UTF_8);
    return answered(file);
  }

  private static Answer freeze(Handout handout) {
    Answers.LineAnswers line = handout.answers().lines().getFirst();
    return line.to(Question.FREEZE);
  }

  private static FrostAlong along(Handout handout, double celsiusDays) {
    Winter winter =
        new Winter(
            new Measured(celsiusDays, 0.1 * celsiusDays),
            new Measured(4, 0.5),
            new Measured(130 * DAY, 5 * DAY));
    Ground ground =
        new Ground(Ground.Grain.FINE, new Measured(1550, 40), new Measured(0.22, 0.02), null);
    Surface surface = new Surface(new Measured(0.7, 0.07), null);
    FrostDepth.Reaches frost =
        (FrostDepth.Reaches) Frost.depth(winter, ground, surface, new Measured(1, 0.05));
    Line line = handout.line();
    Fall fall = handout.answers().fall();
    return Froster.along(line, fall, frost, 130 * DAY, Bundled.priors(), "drain", place -> false);
  }

  @Test
  void theWorstPlaceIsWhereCoverIsLeastBesideItsDoubt() {
    Handout handout = corpus("S81");
    FrostAlong along = along(handout, 1200);
    FrostAlong.Spot worst = along.worst().orElseThrow();
    assertThat(along.unknown()).isEmpty();
    assertThat(along.spots())
        .allSatisfy(
            spot ->
                assertThat(spot.margin().reached()).isLessThanOrEqualTo(worst.margin().reached()));
    Station there =
        handout.line().runs().getFirst().stations().stream()
            .filter(station -> station.place().equals(worst.place()))
            .findFirst()
            .orElseThrow();
    Measured depth = Objects.requireNonNull(there.depth());
    assertThat(worst.margin().below().value()).isCloseTo(depth.value() - 0.1016, within(1e-9));
  }

  @Test
  void aColderWinterGetsFurtherEverywhere() {
    Handout handout = corpus("S82");
    FrostAlong mild = along(handout, 300);
    FrostAlong hard = along(handout, 1200);
    for (int i = 0; i < mild.spots().size(); i++) {
      assertThat(hard.spots().get(i).margin().reached())
          .isGreaterThanOrEqualTo(mild.spots().get(i).margin().reached());
    }
    FrostAlong.Wet wet = hard.worstWet().orElseThrow();
    assertThat(wet.solid()).isLessThanOrEqualTo(wet.reached());
    assertThat(hard.wet()).anySatisfy(one -> assertThat(one.finding()).isEqualTo("F1"));
    assertThat(mild.worstWet().orElseThrow().reached()).isLessThan(wet.reached());
  }

  @Test
  void aShallowBellyFreezesAndSaysHowToTakeCare() {
    Answer answer = freeze(corpus("S82"));
    assertThat(answer.state()).isEqualTo(State.ANSWERED);
    assertThat(answer.headline().key()).isEqualTo(AnswerKey.FREEZE_WATER);
    assertThat(answer.cautions())
        .contains(Caution.THAWING, Caution.ELECTRICITY, Caution.LOCAL_CODES);
  }

  @Test
  void whatIsMissingIsNamed() throws IOException {
    assertThat(freeze(corpus("S83")).missing())
        .extracting(one -> one.key())
        .containsExactly(AnswerKey.MISSING_FROST);
    Answer noSoil = freeze(altered("S81", "    soil: {kind: silty clay, surface: lawn}\n", ""));
    assertThat(noSoil.missing())
        .extracting(one -> one.key())
        .containsExactly(AnswerKey.MISSING_SOIL);
    Answer odd = freeze(altered("S81", "silty clay", "builder's fill"));
    assertThat(odd.missing())
        .extracting(one -> one.key())
        .containsExactly(AnswerKey.MISSING_SOIL_NAME);
    Answer noMean = freeze(altered("S81", "mean-temperature: 47 °F, season: 102 d, ", ""));
    assertThat(noMean.missing())
        .extracting(one -> one.key())
        .containsExactlyInAnyOrder(AnswerKey.MISSING_MEAN_TEMPERATURE, AnswerKey.MISSING_SEASON);
  }

  /** Under a cellar a foot of ground is no cover, and none is needed. */
  @Test
  void underAFloorIndoorsNoFrostIsCounted() throws IOException {
    Handout inside = altered("S82", "depth: 2.3}", "depth: 2.3, surface: cellar floor}");
    Place above = inside.line().runs().getFirst().at(2);
    Place beyond = inside.line().runs().getFirst().at(15);
    assertThat(Indoors.of(inside.book(), inside.line()).holds(above)).isTrue();
    assertThat(Indoors.of(inside.book(), inside.line()).holds(beyond)).isFalse();
    assertThat(freeze(inside).reasons())
        .extracting(one -> one.key())
        .contains(AnswerKey.FREEZE_INDOORS)
        .doesNotContain(AnswerKey.FREEZE_LEFT_OUT);
    Path all = folder.resolve("all.yaml");
    String text = CorpusBook.of("S82").text();
    Files.writeString(all, text.replaceAll("(depth: 2\\.[368])}", "$1, surface: basement}"));
    Answer warm = freeze(answered(all));
    assertThat(warm.headline().key()).isEqualTo(AnswerKey.FREEZE_ALL_INDOORS);
    assertThat(warm.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(warm.missing()).isEmpty();
  }

  /**
   * In the invented house the receiver stood on the cellar's floor at 4' 7" and on the lawn at 8'
   * 7"; the wall is at 6' 1".
   */
  @Test
  void aWallEndsWhatIsIndoors() {
    Handout house = answered(Path.of("src/main/resources/daylight/app/demo/house-sewer.yaml"));
    Indoors indoors = Indoors.of(house.book(), house.line());
    Run run = house.line().findRun("R1").orElseThrow();
    assertThat(indoors.holds(run.at(5.8 * 0.3048))).isTrue();
    assertThat(indoors.holds(run.at(6.4 * 0.3048))).isFalse();
    assertThat(indoors.holds(run.at(30 * 0.3048))).isFalse();
  }

  @Test
  void aSurfaceThatNobodyKnowsIsNamedAndAskedAbout() throws IOException {
    Answer odd = freeze(altered("S82", "surface: asphalt drive", "surface: river cobbles"));
    assertThat(odd.reasons())
        .extracting(one -> one.key())
        .contains(AnswerKey.FREEZE_SURFACE_WORD)
        .doesNotContain(AnswerKey.FREEZE_SURFACE_UNKNOWN);
    assertThat(odd.missing()).extracting(one -> one.key()).contains(AnswerKey.MISSING_SURFACE);
  }

  @Test
  void permafrostIsNoNumber() {
    Answer answer = freeze(corpus("S84"));
    assertThat(answer.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(answer.headline().key()).isEqualTo(AnswerKey.FREEZE_NOT_HELD);
    assertThat(answer.missing())
        .extracting(one -> one.key())
        .containsExactly(AnswerKey.MISSING_GROUND_TEMPERATURE);
  }

  @Test
  void snowThatLiesAllWinterHelps() throws IOException {
    Handout bare = corpus("S86");
    Handout snowy =
        altered(
            "S86",
            "season: 150 d, source: invented",
            "season: 150 d, snow: 2 ft, source: invented");
    assertThat(freeze(bare).state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(freeze(snowy).state()).isEqualTo(State.WITHIN_LIMITS);
  }
}
