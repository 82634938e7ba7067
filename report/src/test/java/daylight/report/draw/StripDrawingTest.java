package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Shown;
import daylight.report.Dense;
import daylight.report.Example;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class StripDrawingTest {
  private static final Map<String, Subject> CASES = StripCases.all();

  static Stream<String> cases() {
    return CASES.keySet().stream();
  }

  private static Subject subject(String name) {
    return java.util.Objects.requireNonNull(CASES.get(name), name);
  }

  @ParameterizedTest
  @EnumSource(Shown.class)
  void noTextCoversAnotherOrIsCutOff(Shown shown) {
    assertThat(LabelOverlaps.of(StripDrawing.draw(DrawingsTest.subject(Example.usual(shown)))))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void hardLinesKeepTheirTextsApartAndShowEveryFinding(String name) {
    keepsApartAndShowsAll(subject(name));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void crowdedLinesKeepTheirTextsApartAndShowEveryFinding(int seed) {
    Subject subject = DrawingsTest.subject(Dense.handout(seed));

    keepsApartAndShowsAll(subject);
    keepsApartAndShowsAll(
        Typed.pictured(
            subject, Captions.findings(subject).stream().map(f -> f.finding().label()).limit(40)));
  }

  private static void keepsApartAndShowsAll(Subject subject) {
    Tag svg = StripDrawing.draw(subject);
    AsDrawn drawn = new AsDrawn(svg);

    assertThat(LabelOverlaps.of(svg)).isEmpty();
    assertThat(Captions.drawn(subject))
        .filteredOn(placed -> drawn.at(placed.from()).isEmpty())
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void everyNumberOfTheKeyStandsOnTheDrawing(int seed) {
    List<String> words =
        LabelOverlaps.words(StripDrawing.draw(DrawingsTest.subject(Dense.handout(seed))));
    List<String> numbers = words.stream().filter(word -> word.matches("\\d{1,2}")).toList();

    assertThat(numbers)
        .allSatisfy(number -> assertThat(numbers.stream().filter(number::equals)).hasSize(2));
  }

  @Test
  void theSameSubjectGivesTheSameDrawing() {
    assertThat(StripDrawing.draw(StripCases.sixty()).write())
        .isEqualTo(StripDrawing.draw(StripCases.sixty()).write());
  }

  @Test
  void waterAndBoreAreDrawnToTheScaleThatIsStated() {
    Tag svg = StripDrawing.draw(subject("300 m"));
    AsDrawn drawn = new AsDrawn(svg);
    Place from = finding(subject("300 m"), "standing-water").from();
    Box water = AsDrawn.filled(drawn.at(from), Ink.WATER).getFirst();
    double bore = drawn.bores().getFirst().height();

    // 30 mm of water in a pipe of 100 mm.
    assertThat(water.height() / bore).isCloseTo(0.3, within(0.005));
    assertThat(String.join(" ", LabelOverlaps.words(svg))).contains("drawn 70 times larger");
    assertThat(bore / 0.1 / drawn.pointsPerMetre()).isCloseTo(70, within(0.05));
  }

  @Test
  void depositsAndBoresStandInTheirProportion() {
    AsDrawn drawn = new AsDrawn(StripDrawing.draw(subject("changes")));
    Place crust = finding(subject("changes"), "deposit-hard").from();
    List<Box> bores = drawn.bores();
    double heightOfCrust =
        drawn.at(crust).stream()
            .flatMap(group -> AsDrawn.in(group, "rect"))
            .map(AsDrawn::box)
            .mapToDouble(Box::height)
            .max()
            .orElseThrow();

    assertThat(bores.get(1).height() / bores.get(0).height()).isCloseTo(1.5, within(0.005));
    // 15 % of a bore of 150 mm.
    assertThat(heightOfCrust / bores.get(1).height()).isCloseTo(0.15, within(0.005));
  }

  @Test
  void greaseHangsFromTheCrownAndCrustLiesAtTheBottom() {
    Subject changes = subject("changes");
    AsDrawn drawn = new AsDrawn(StripDrawing.draw(changes));
    Box bore = drawn.bores().getFirst();

    Box grease = AsDrawn.filled(drawn.at(finding(changes, "grease").from()), Ink.PAPER).getFirst();
    Box crust =
        AsDrawn.filled(drawn.at(finding(changes, "deposit-hard").from()), Ink.PAPER).getFirst();

    assertThat(grease.y()).isCloseTo(bore.y(), within(0.02));
    assertThat(crust.bottom()).isCloseTo(bore.bottom(), within(0.02));
  }

  @ParameterizedTest
  @ValueSource(strings = {"against the water", "pumped", "changes", "two metres"})
  void theWaterRunsToTheRight(String name) {
    Subject subject = subject(name);
    AsDrawn drawn = new AsDrawn(StripDrawing.draw(subject));
    List<PlacedFinding> down =
        subject.line().findings().stream()
            .sorted((a, b) -> Double.compare(a.from().distance(), b.from().distance()))
            .toList();
    List<Double> x = new ArrayList<>();
    down.forEach(placed -> x.add(dot(drawn.at(placed.from()))));

    assertThat(x).hasSizeGreaterThan(1).isSorted();
  }

  /** Where the dot stands from which a finding's distance is read. */
  private static double dot(List<Element> groups) {
    return groups.stream()
        .flatMap(group -> AsDrawn.in(group, "circle"))
        .filter(circle -> circle.getAttribute("r").equals("1.6"))
        .mapToDouble(circle -> AsDrawn.number(circle, "cx"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPushAgainstTheWaterIsTurnedAndItsDistancesAreThoseOfTheWater() {
    Subject subject = subject("against the water");
    List<String> words = LabelOverlaps.words(StripDrawing.draw(subject));

    // The camera noted the crack from 2 m to 5 m of some 12 m.
    assertThat(words).contains("N2 → N1", "Crack, 6.97 m to 9.96 m");
  }

  @Test
  void leftAndRightAreThoseOfOneWhoLooksWithTheWater() {
    String rows =
        "end: {cable: 9, why: outlet-reached, node: N2}\nfindings:\n  - {label: F1, kind: crack, cable: 4, clock: 3}";
    Subject with = Typed.one(StripCases.PIPE, rows);
    Subject against = Typed.one(StripCases.PIPE.replace("forward", "backward"), rows);

    assertThat(LabelOverlaps.words(StripDrawing.draw(with)))
        .anyMatch(w -> w.startsWith("Crack right"));
    assertThat(LabelOverlaps.words(StripDrawing.draw(against)))
        .anyMatch(w -> w.startsWith("Crack left"));
  }

  @Test
  void signsStandAsHighOnTheDrawingAsOnTheWall() {
    Subject subject =
        Typed.one(
            StripCases.PIPE,
            """
            end: {cable: 9, why: outlet-reached, node: N2}
            findings:
              - {label: F1, kind: crack, cable: 2, clock: 12}
              - {label: F2, kind: crack, cable: 4, clock: 9}
              - {label: F3, kind: crack, cable: 6, clock: 6}
            """);
    AsDrawn drawn = new AsDrawn(StripDrawing.draw(subject));
    Box bore = drawn.bores().getFirst();
    List<Double> heights =
        subject.line().findings().stream().map(f -> signHeight(drawn.at(f.from()))).toList();

    assertThat(heights).isSorted();
    assertThat(heights.get(1)).isCloseTo(bore.middleY(), within(0.02));
  }

  private static double signHeight(List<Element> groups) {
    return groups.stream()
        .flatMap(group -> AsDrawn.in(group, "g"))
        .map(sign -> sign.getAttribute("transform"))
        .filter(move -> move.startsWith("translate"))
        .mapToDouble(
            move -> Double.parseDouble(move.substring(move.indexOf(' ') + 1, move.indexOf(')'))))
        .findFirst()
        .orElseThrow();
  }

  private static PlacedFinding finding(Subject subject, String kind) {
    return subject.line().findings().stream()
        .filter(placed -> placed.finding().kind().equals(kind))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatNoCameraSawIsSaid() {
    assertThat(LabelOverlaps.words(StripDrawing.draw(subject("branches"))))
        .contains("not seen", "no camera came there", "Not on this drawing: R4.");
    assertThat(LabelOverlaps.words(StripDrawing.draw(subject("pumped"))))
        .contains("nothing to be seen", "sight not noted")
        .doesNotContain("not seen");
  }

  @Test
  void aBranchThatWasLookedIntoHasAStripOfItsOwn() {
    List<String> words = LabelOverlaps.words(StripDrawing.draw(subject("branches")));

    assertThat(words).contains("N1 → N2", "N3 → N4", "Crack left, 1.99 m", "a bend");
  }

  @Test
  void whatIsNotKnownIsSaidAndNoArrowIsInvented() {
    Tag svg = StripDrawing.draw(subject("one finding"));
    String said = String.join(" ", LabelOverlaps.words(svg));

    assertThat(said)
        .contains("which way the water runs is not known", "the pipe is drawn as one of 100 mm")
        .doesNotContain("way of the water");
    assertThat(LabelOverlaps.words(StripDrawing.draw(subject("nothing"))))
        .contains("Nothing can be drawn yet");
  }

  @Test
  void placesOnTheWallAreNotDrawnWhereTheHeadMayHaveRolled() {
    String rows =
        "head: unknown\nend: {cable: 9, why: outlet-reached, node: N2}\nfindings:\n  - {label: F1, kind: crack, cable: 4, clock: 3}";
    List<String> words =
        LabelOverlaps.words(
            StripDrawing.draw(
                Typed.book(
                    "    - {label: R1, line: main, from: N1, to: N2" + StripCases.PIPE + "}\n",
                    "      - label: P1\n        walk: [R1]\n        zero: {reads: 0}\n"
                        + rows.indent(8))));

    assertThat(words).anyMatch(w -> w.startsWith("Crack, 3.98 m"));
    assertThat(String.join(" ", words)).contains("places on the wall are not drawn");
  }

  @Test
  void onlyAJunctionOnTheWaySaysFromWhichSideThePipeJoins() {
    String reaches =
        """
            - {label: R1, line: main, from: N1, to: N4, water: forward, bore: 100}
            - {label: R2, line: main, from: N4, to: N2, water: forward, bore: 100}
            - {label: R3, line: main, from: N3, to: N4, water: forward, bore: 75}
        """;
    String passes =
        """
              - label: P1
                entry: N2
                walk: [R2, R1]
                zero: {reads: 0}
                head: self-righting
                end: {cable: 9, why: enough, node: N1}
                findings:
                  - {label: F1, kind: junction, cable: 4, node: N4, clock: 3}
              - label: P2
                entry: N3
                walk: [R3, R2]
                zero: {reads: 0}
                head: self-righting
                end: {cable: 5, why: enough}
                findings:
                  - {label: F2, kind: junction, cable: 3, node: N4, clock: 9}
        """;

    List<String> words = LabelOverlaps.words(StripDrawing.draw(Typed.book(reaches, passes)));

    // On the right of a camera that goes against the water is on the left with the water. What the
    // branch meets there is not a pipe that joins the branch.
    assertThat(words).contains("N4, from the left", "N4").doesNotContain("N4, from the right");
  }

  @Test
  void aBendSaysHowFarItTurnsAndWhichWay() {
    assertThat(LabelOverlaps.words(StripDrawing.draw(subject("changes"))))
        .anyMatch(w -> w.startsWith("Bend 45° left, 6.97 m"));
  }

  @Test
  void aStopOrderComesFirst() {
    assertThat(LabelOverlaps.words(StripDrawing.draw(DrawingsTest.subject(Example.deadly()))))
        .first()
        .isEqualTo("STOP: Another pipe through the bore, 26' 11\" along the pipe from CO1.");
  }
}
