package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One reading of an invented yard is written wrong; the sentence names it and says how it may have
 * come about. All in feet: A at the zero, B 40 ft north of it, so that out from A–B is west.
 */
class MisreadTiesTest {
  private static final Map<String, double[]> AT =
      new TreeMap<>(
          Map.of(
              "A", new double[] {0, 0},
              "B", new double[] {0, 40},
              "C", new double[] {47.3, 36.2},
              "D", new double[] {44.1, -6.5},
              "E", new double[] {-21.7, 12.4},
              "L1", new double[] {19.6, 23.5}));

  @TempDir private Path folder = Path.of("");

  private static double[] at(String point) {
    return Objects.requireNonNull(AT.get(point));
  }

  private static double feet(String a, String b) {
    return Math.hypot(at(a)[0] - at(b)[0], at(a)[1] - at(b)[1]);
  }

  private static String row(String a, String b, double feet) {
    return String.format(
        Locale.ROOT, "    - {label: %s%s, from: %s, to: %s, tape: %.2f}", a, b, a, b, feet);
  }

  /** The yard with ties from some landmarks to L1, a piece of it written otherwise. */
  private Said yard(String ties, String more, String right, String wrong) throws IOException {
    List<String> rows = new ArrayList<>();
    List<String> corners = List.of("A", "B", "C", "D", "E");
    for (int i = 0; i < corners.size(); i++) {
      for (int j = 0; j < i; j++) {
        rows.add(row(corners.get(j), corners.get(i), feet(corners.get(j), corners.get(i))));
      }
    }
    rows.add("    - {point: C, side: {of: [A, B], on: right}}");
    for (String corner : ties.chars().mapToObj(Character::toString).toList()) {
      rows.add(row(corner, "L1", feet(corner, "L1")));
    }
    if (!more.isEmpty()) {
      rows.add("    - " + more);
    }
    String book =
        """
        daylight-book: 1
        units: {distance: ft, depth: ft}
        site:
          landmarks: [{label: A, base: yes}, {label: B, base: yes}, {label: C}, {label: D}, {label: E}]
        visit:
          locates: [{label: L1, depth: 2.5}]
          ties:
        """
            + String.join("\n", rows)
            + "\n";
    assertThat(book).contains(right);
    Path file = folder.resolve("field-book.yaml");
    Files.writeString(file, book.replace(right, wrong));
    Said said = Said.by("figure", "ties", file);
    assertThat(said.out()).doesNotContain("NaN");
    return said;
  }

  private static String flat(Said said) {
    return said.out().replaceAll("\\s+", " ");
  }

  @Test
  void aSoundYardContradictsNothing() throws IOException {
    Said said = yard("ABCDE", "", "40.00", "40.00");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
  }

  /** AL1 is 30.60 ft, BL1 25.62, CL1 30.47, DL1 38.73, EL1 42.77. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          tape: 30.60 | tape: 36.00 | AL1 | too much   | 30.60 ft with two figures swapped
          tape: 25.62 | tape: 26.52 | BL1 | too much   | 25.62 ft with two figures swapped
          tape: 30.47 | tape: 30.47 m | CL1 | too much | 30.47 ft, not 30.47 m
          tape: 38.73 | tape: 39.73 | DL1 | too much   | 1 ft over
          tape: 38.73 | tape: 37.73 | DL1 | too little | 1 ft under
          tape: 38.73 | tape: 48.73 | DL1 | too much   | 10 ft over
          tape: 42.77 | tape: 42.11 | EL1 | too little | E
          from: E, to: L1 | from: B, to: L1 | EL1 | too much | E was meant, not B
          tape: 30.60 | tape: 80.60 | AL1 | too much   | AL1
          tape: 38.73 | tape: 88.73 | DL1 | too much   | 38.73 ft with one figure taken for another
          """)
  void theReadingIsNamedWithALikelyReading(
      String right, String wrong, String entry, String how, String likely) throws IOException {
    Said said = yard("ABCDE", "", right, wrong);
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(flat(said))
        .contains(entry + ": the tape")
        .contains("does not fit the others")
        .contains(how)
        .contains(likely);
  }

  /** C–E is 72.99 ft, which is 72' 11 7/8". */
  @Test
  void feetAndInchesAreNotDecimalFeet() throws IOException {
    Said said = yard("ABCDE", "", "tape: 72.99", "tape: 72.11");
    assertThat(flat(said)).contains("CE: the tape").contains("72' 11\", not 72.11 ft");
    assertThat(yard("ABCDE", "", "tape: 38.73", "tape: 38' 9\"").code()).isEqualTo(ExitCode.DONE);
  }

  /** L1 lies 23.5 ft along the wall A–B and 19.6 ft east of it, which is out on the right. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wall: [A, B], along: 23.5, out: -19.6 | -                              | -
          wall: [A, B], along: 23.5, out: 19.6  | out    | it lies on the other side of the wall
          wall: [A, B], along: -19.6, out: 23.5 | along | along and out are exchanged
          wall: [A, B], along: 16.5, out: -19.6 | along  | measured from B, not from A
          """)
  void aWallReadingTheWrongWayRoundIsSeenThrough(String wall, String what, String likely)
      throws IOException {
    String row = "{label: W, point: L1, " + wall + "}";
    Said said = yard("ABCDE", row, "40.00", "40.00");
    if (what.equals("-")) {
      assertThat(said.code()).isEqualTo(ExitCode.DONE);
    } else {
      assertThat(flat(said)).contains("W: the distance " + what).contains(likely);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {label: W, from: A, to: L1, bearing: 219.83} | the bearing was read from the far end
          {label: W, from: A, to: L1, bearing: 129.83} | 90° over
          {label: W, at: A, from: B, to: L1, angle: 320.17} | the angle was read against the clock
          """)
  void bearingsAndAnglesTheWrongWayRoundAreSeenThrough(String row, String likely)
      throws IOException {
    assertThat(flat(yard("ABCDE", row, "40.00", "40.00"))).contains("W: the").contains(likely);
  }

  @Test
  void whereTheGeometryCannotTellEveryCandidateIsListed() throws IOException {
    Said said = yard("ABD", "", "tape: 38.73", "tape: 40.73");
    assertThat(flat(said))
        .contains("One of the readings")
        .contains("and the others can’t tell which")
        .contains("AL1")
        .contains("BL1")
        .contains("DL1");
  }

  @Test
  void twoTiesAreAskedAbout() throws IOException {
    Said said = yard("AB", "", "40.00", "40.00");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(flat(said))
        .contains("L1 could lie in two places: AL1 and BL1 fit both. Note on which side");
  }
}
