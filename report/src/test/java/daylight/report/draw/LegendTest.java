package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.measure.Shown;
import daylight.report.Example;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** The signs beside a drawing are those on it, and tell them apart without colour. */
class LegendTest {
  private static final List<String> SYMBOLS =
      List.of(
          "stop", "roots", "dirt", "water", "crack", "joint", "shape", "join", "bend", "change",
          "other");

  static Stream<Tag> drawings() {
    List<Subject> subjects = new ArrayList<>();
    subjects.add(Example.usual().subject());
    subjects.add(Example.usual(Shown.METRES).subject().turned(PlanTurn.ALONG));
    subjects.add(Example.deadly().subject());
    subjects.add(Yards.without());
    subjects.addAll(StripCases.all().values());
    IntStream.range(0, 8).mapToObj(DenseYard::subject).forEach(subjects::add);
    return subjects.stream()
        .flatMap(
            one ->
                Stream.of(PlanDrawing.draw(one), ProfileDrawing.draw(one), StripDrawing.draw(one)));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void whatStandsInTheLegendIsDrawnAndWhatIsDrawnStandsInTheLegend(Tag svg) {
    Inks inks = Inks.of(svg);

    assertThat(inks.strokesOfLegend()).isSubsetOf(inks.strokesDrawn());
    assertThat(inks.signsDrawn()).isSubsetOf(inks.signsOfLegend());
    Set<String> points = new TreeSet<>(inks.signsOfLegend());
    points.retainAll(pointSigns());
    assertThat(inks.signsDrawn()).containsAll(points);
  }

  /** As they are written, of all signs that stand at a place. */
  private static Set<String> pointSigns() {
    Set<String> all = new TreeSet<>();
    Tag svg = Tag.of("svg").with("viewBox", "0 0 9 9");
    for (String symbol : SYMBOLS) {
      svg.add(Symbols.finding(symbol, 1, 1));
    }
    for (Node.Kind kind : Node.Kind.values()) {
      svg.add(Symbols.node(kind, 1, 1));
    }
    svg.add(Symbols.landmark(Landmark.Kind.TREE, 1, 1));
    svg.add(Symbols.landmark(Landmark.Kind.OTHER, 1, 1));
    svg.add(Symbols.locate(1, 1), Symbols.otherLocate(1, 1), Symbols.otherFinding(1, 1));
    svg.add(Symbols.exposure(1, 1));
    all.addAll(Inks.of(svg).signsDrawn());
    assertThat(all).hasSize(SYMBOLS.size() + Node.Kind.values().length + 6);
    return all;
  }

  @Test
  void noTwoSignsLookAlikeWithoutColour() {
    Legend legend = new Legend(Words.of(Language.EN, Shown.METRES));
    Stream.of(Legend.Entry.values())
        // The band about a pipe is the same from above and from the side, and never on one drawing.
        .filter(entry -> entry != Legend.Entry.BOTTOM_BAND)
        // As are a pipe without arrows and one that was seen clearly, of which one has no arrow.
        .forEach(legend::use);
    Stream.of(Node.Kind.values()).forEach(legend::use);
    legend.use(Landmark.Kind.TREE);
    legend.use(Landmark.Kind.OTHER);
    Stream.of(Papers.Service.values()).forEach(legend::useWay);
    SYMBOLS.forEach(legend::use);

    List<String> signs =
        legend.signs().stream().map(sign -> colourless(sign.tag().write())).toList();
    assertThat(signs).doesNotHaveDuplicates().hasSizeGreaterThan(60);
  }

  private static String colourless(String svg) {
    return svg.replaceAll("#(?!ffffff)[0-9a-f]{6}", "#000000");
  }

  /** Web Content Accessibility Guidelines 2.2, 1.4.3 and 1.4.11, level AA (from memory). */
  @ParameterizedTest
  @MethodSource("drawings")
  void strokesAndLettersStandOutFromThePaper(Tag svg) {
    Inks inks = Inks.of(svg);

    assertThat(inks.strokes())
        .isNotEmpty()
        .allSatisfy(ink -> assertThat(InkTest.contrast(ink, Ink.PAPER)).isGreaterThanOrEqualTo(3));
    assertThat(inks.letters())
        .isNotEmpty()
        .allSatisfy(
            ink -> assertThat(InkTest.contrast(ink, Ink.PAPER)).isGreaterThanOrEqualTo(4.5));
  }

  /** A wash of colour alone would be no more than a shade of grey. */
  @ParameterizedTest
  @MethodSource("drawings")
  void everyWashHasItsPattern(Tag svg) {
    List<Element> paths = new AsDrawn(svg).all("path").toList();

    assertThat(paths)
        .filteredOn(path -> path.hasAttribute("fill-opacity"))
        .filteredOn(path -> !path.getAttribute("fill").startsWith("url("))
        .filteredOn(path -> !path.getAttribute("d").startsWith("M-9"))
        .allSatisfy(
            wash ->
                assertThat(paths)
                    .anyMatch(
                        other ->
                            other.getAttribute("fill").startsWith("url(")
                                && other.getAttribute("d").equals(wash.getAttribute("d"))));
  }
}
