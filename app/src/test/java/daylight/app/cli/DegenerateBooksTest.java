package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole books that cannot be answered, through the command line: each names the measurement that is
 * missing, or what contradicts what, and every file is written without a number that is none.
 */
class DegenerateBooksTest {
  @TempDir private Path folder = Path.of("");

  private static final String HEAD =
      """
      daylight-book: 1
      units: {distance: ft, depth: ft, bore: in, level: ft}
      site:
        name: Little to go by
        invented: yes
        landmarks: [{label: A, kind: corner}, {label: B, kind: corner}, {label: D, kind: post}]
        nodes: [{label: C1, kind: access}, {label: O1, kind: outlet}]
        reaches:
          - {label: R1, line: drain, from: C1, to: O1, water: forward, use: sanitary, material: pvc, bore: 4 in}
      visit:
        date: 2026-04-18
        kit: {sonde-behind-lens: 14 in, sonde-above-invert: 1 in}
        passes: [{label: P1, entry: C1, walk: [R1], zero: {reads: 0}, head: self-righting}]
        end: {cable: 50, why: outlet-reached, node: O1}
        sight: [{from: 0, to: 50, clarity: clear}]
        findings: [{label: F1, kind: crack, cable: 25, width: 2 mm}]
      """;

  /** Rows of a visit, parted by semicolons; then how the course is answered, and what is asked. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          no locates            | ties: [{from: A, to: B, tape: 30}] | can’t say yet | Find the transmitter from the ground at two places or more
          nothing on the ground | tests: [] | can’t say yet | Find the transmitter from the ground at two places or more
          one at the entry      | ties: [{from: A, to: B, tape: 30}]; locates: [{label: L1, cable: 1.2, along: 6, out: 0, depth: 2.5}]; spots: [{of: C1, along: 6, out: 0}] | can’t say yet | at a second place, well away from
          two ties only         | ties: [{from: A, to: B, tape: 30}]; locates: [{label: L1, cable: 20, depth: 2.5, ties: {A: 19.8, B: 30.6}}, {label: L2, cable: 42, depth: 2.8, ties: {A: 41.2, B: 47.4}}] | can’t say yet | L1 could lie in two places
          landmarks in a row    | ties: [{from: A, to: B, tape: 30}, {from: A, to: D, tape: 56}, {from: B, to: D, tape: 26}]; locates: [{label: L1, cable: 20, depth: 2.5, ties: {A: 19.8, B: 30.6, D: 53.8}}, {label: L2, cable: 42, depth: 2.8, ties: {A: 41.2, B: 47.4, D: 65.0}}] | can’t say yet | L2 could lie in two places
          cable below the chord | ties: [{from: A, to: B, tape: 30}]; spots: [{of: C1, along: 6, out: 0}]; locates: [{label: L1, cable: 20, along: 6, out: 18.9, depth: 2.5}, {label: L2, cable: 32, along: 6, out: 48.8, depth: 2.8}] | answered, open | less cable than ground
          all at one spot       | ties: [{from: A, to: B, tape: 30}]; spots: [{of: C1, along: 6, out: 10}, {of: O1, along: 6, out: 10}]; locates: [{label: L1, cable: 20, along: 6, out: 10, depth: 2.5}, {label: L2, cable: 42, along: 6, out: 10, depth: 2.5}] | can’t say yet | at a second place, well away from
          over the corner       | ties: [{from: A, to: B, tape: 30}]; locates: [{label: L1, cable: 0, along: 0, out: 0, depth: 0}, {label: L2, cable: 0, along: 0, out: 0, depth: 0}] | can’t say yet | at a second place, well away from
          one wall alone        | locates: [{label: L1, cable: 20, along: 6, out: 18.9, depth: 2.5}, {label: L2, cable: 42, along: 6, out: 40.8, depth: 2.8}] | answered, likely | Nothing checks L1 and L2
          """)
  void everyBookIsAnsweredHonestly(String name, String visit, String where, String asked)
      throws IOException {
    Path book =
        Files.writeString(
            folder.resolve("field-book.yaml"),
            HEAD + visit.strip().replaceAll("; *", "\n").indent(2));
    Path out = folder.resolve("out");
    Said answer = Said.by("answer", book, "-o", out);
    Said leaving = Said.by("leaving", book);

    assertThat(answer.code()).as(answer.err()).isEqualTo(ExitCode.DONE);
    assertThat(answer.out()).as(name).contains("Where does it run? — " + where);
    assertThat(leaving.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat((leaving.out() + leaving.err()).replaceAll("\\s+", " "))
        .as(name)
        .contains(asked)
        .doesNotContain("Exception");
    for (String file : List.of("answers.json", "line.geojson")) {
      assertThat(Files.readString(out.resolve(file))).as(file).doesNotContain("NaN", "Infinity");
    }
    for (String file : List.of("plan.svg", "profile.svg", "strip.svg")) {
      assertThat(Files.readString(out.resolve(file)).replaceAll("(?s)<style>.*</style>", ""))
          .as(file)
          .doesNotContain("NaN", "Infinity");
    }
    Said dig = Said.by("figure", "dig", book, "--at", "R1:25 ft");
    assertThat(dig.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(dig.out()).doesNotContain("NaN");
  }
}
