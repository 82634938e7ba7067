package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Place;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ProfileBreaksTest {
  /** So many findings within the first metres of a pipe of 120 m. */
  private static Subject crowd(int findings) {
    String rows =
        IntStream.rangeClosed(1, findings)
            .mapToObj(i -> "  - {label: F" + i + ", kind: crack, cable: " + (i * 0.6) + "}")
            .collect(Collectors.joining("\n"));
    return Typed.one(
        StripCases.PIPE, "end: {cable: 120, why: outlet-reached, node: N2}\nfindings:\n" + rows);
  }

  @Test
  void aLongStretchWithNothingInItIsLeftOutForACrowd() {
    AsDrawn drawn = new AsDrawn(ProfileDrawing.draw(crowd(20)));
    List<Element> gaps = drawn.all("g").filter(g -> g.hasAttribute("data-gap-from")).toList();

    assertThat(gaps).hasSize(1);
    double from = AsDrawn.number(gaps.getFirst(), "data-gap-from");
    double to = AsDrawn.number(gaps.getFirst(), "data-gap-to");
    assertThat(from).isBetween(12.0, 25.0);
    assertThat(to).isBetween(95.0, 119.0);
    assertThat(LabelOverlaps.words(ProfileDrawing.draw(crowd(20))))
        .contains("left out: nothing to tell in between");
    assertThat(Clashes.of(ProfileDrawing.draw(crowd(20)))).isEmpty();
  }

  @Test
  void aFewFindingsThatHaveRoomBreakNothing() {
    assertThat(ProfileBreaks.of(crowd(2), crowd(2).route(), 500, crowd(2).words().shown()).gaps())
        .isEmpty();
  }

  /** Beside the break distances are true, across it they go on rising. */
  @Test
  void thePlacesGoOnAcrossTheBreak() {
    Subject subject = crowd(20);
    Drawn profile = ProfileDrawing.drawn(subject);
    List<Double> x =
        IntStream.rangeClosed(0, 119)
            .mapToObj(i -> profile.at(new Place("R1", i)).orElseThrow().x())
            .toList();

    assertThat(x).isSorted();
    double metre = x.get(3) - x.get(2);
    assertThat(x.get(9) - x.get(1)).isCloseTo(8 * metre, within(1e-6));
    assertThat(x.get(119) - x.get(118)).isCloseTo(metre, within(1e-6));
    assertThat(x.get(119) - x.getFirst()).isLessThan(119 * metre / 1.5);
  }
}
