package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** The strip without its colours. */
class StripInkTest {

  @Test
  void signsDifferBySomethingElseThanColour() {
    List<String> signs =
        Stream.of(Legend.Entry.values())
            .filter(entry -> entry.name().startsWith("STRIP_"))
            .map(entry -> colourless(StripSigns.of(entry).write()))
            .toList();

    assertThat(signs).doesNotHaveDuplicates().hasSizeGreaterThan(10);
  }

  /** Every ink but that of the paper becomes black. */
  private static String colourless(String svg) {
    return svg.replaceAll("#(?!ffffff)[0-9a-f]{6}", "#000000");
  }

  @ParameterizedTest
  @ValueSource(strings = {"300 m", "pumped", "changes"})
  void everyWashOfColourHasAPatternOverIt(String name) {
    AsDrawn drawn =
        new AsDrawn(
            StripDrawing.draw(java.util.Objects.requireNonNull(StripCases.all().get(name))));
    List<Element> washes =
        drawn.all("rect").filter(rect -> rect.hasAttribute("fill-opacity")).toList();

    assertThat(washes).allSatisfy(wash -> assertThat(patternsOver(drawn, wash)).isPositive());
    assertThat(drawn.all("rect").filter(r -> r.getAttribute("fill").startsWith("url(#")))
        .isNotEmpty();
  }

  private static long patternsOver(AsDrawn drawn, Element wash) {
    return drawn
        .all("rect")
        .filter(rect -> rect.getAttribute("fill").startsWith("url(#"))
        .filter(rect -> AsDrawn.box(rect).equals(AsDrawn.box(wash)))
        .count();
  }

  @Test
  void everyPatternThatIsUsedIsThere() {
    AsDrawn drawn = new AsDrawn(StripDrawing.draw(StripCases.sixty()));
    TreeSet<String> there = new TreeSet<>();
    drawn.all("pattern").forEach(pattern -> there.add("url(#" + pattern.getAttribute("id") + ")"));

    assertThat(
            drawn
                .all("rect")
                .map(rect -> rect.getAttribute("fill"))
                .filter(f -> f.startsWith("url")))
        .isSubsetOf(there);
  }

  @Test
  void theLegendNamesOnlyWhatIsDrawn() {
    Words words = Words.of(Language.EN, Shown.METRES);
    List<String> drawn = LabelOverlaps.words(StripDrawing.draw(StripCases.sixty()));

    assertThat(drawn).contains(words.word("draw.legend.strip_joint"), words.word("symbol.roots"));
    assertThat(drawn)
        .doesNotContain(
            words.word("draw.legend.strip_flowing"),
            words.word("draw.legend.strip_not_seen"),
            words.word("draw.legend.strip_guessed"),
            words.word("symbol.stop"));
  }
}
