package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Invented books that cannot answer, or that contradict themselves: each gets its honest sentence.
 */
class DegenerateTiesTest {
  @TempDir private Path folder = Path.of("");

  private Path book(String visit) throws IOException {
    return Files.writeString(
        folder.resolve("field-book.yaml"),
        """
        daylight-book: 1
        units: {distance: ft, depth: ft}
        site:
          landmarks: [{label: A, base: yes}, {label: B, base: yes}, {label: C}, {label: D}]
        visit:
        """
            + visit.strip().replaceAll("; *", "\n").indent(2));
  }

  private static String flat(Said said) {
    String all = said.out() + said.err();
    assertThat(all).isNotBlank().doesNotContain("NaN").doesNotContain("Exception");
    return all.replaceAll("\\s+", " ");
  }

  /** Rows of a visit, parted by semicolons. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          no locates                 | findings: [{kind: roots, cable: 12}]                                           | nothing was measured on the ground
          two ties only              | locates: [{label: L1, depth: 2, ties: {A: 20, B: 25}}]; ties: [{from: A, to: B, tape: 30}] | L1 could lie in two places
          two ties, base not taped   | locates: [{label: L1, depth: 2, ties: {A: 20, B: 25}}]                         | no measurement leads from the base to any point
          landmarks in a row         | locates: [{label: L1, depth: 2, ties: {A: 20, B: 25, C: 42}}]; ties: [{from: A, to: B, tape: 30}, {from: A, to: C, tape: 50}, {from: B, to: C, tape: 20}] | L1 could lie in two places
          everything at one spot     | locates: [{label: L1, depth: 2, ties: {A: 1, B: 1}}]; ties: [{from: A, to: B, tape: 0.001}] | the two base landmarks are one spot
          circles that do not meet   | locates: [{label: L1, depth: 2, ties: {A: 5, B: 6}}]; ties: [{from: A, to: B, tape: 30}] | L1
          one tie                    | locates: [{label: L1, depth: 2, ties: {A: 5}}]; ties: [{from: A, to: B, tape: 30}] | L1 could not be placed: it has one tie only
          """)
  void whatCannotBeSaidIsSaidSo(String name, String visit, String sentence) throws IOException {
    Path book = book(visit);
    Said ties = Said.by("figure", "ties", book);
    assertThat(flat(ties)).as(name).contains(sentence);
    assertThat(ties.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    Said json = Said.by("figure", "ties", book, "--json");
    assertThat(json.json().path("told").isEmpty()).isFalse();
    Said leaving = Said.by("leaving", book);
    assertThat(flat(leaving)).as(name).isNotBlank();
    assertThat(leaving.code()).isIn(ExitCode.SOMETHING_OPEN, ExitCode.BOOK_REFUSED);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          one wall    | locates: [{label: L1, along: 8, out: 6, depth: 2}, {label: L2, along: 9, out: 20, depth: 2}] | nothing checks it
          """)
  void oneWallPlacesItsSpotsAndSaysThatNothingChecksThem(String name, String visit, String sentence)
      throws IOException {
    Said ties = Said.by("figure", "ties", book(visit));
    assertThat(flat(ties)).as(name).contains(sentence).contains("L1:").contains("L2:");
    assertThat(ties.code()).isEqualTo(ExitCode.DONE);
  }

  /** Rows that name one point twice, and circles set up twice under one name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          the wall's own end      | ties: [{label: W, point: B, wall: [A, B], along: 30, out: 0}]            | 2
          an angle from C to C    | ties: [{label: W, at: A, from: C, to: C, angle: 30}]                     | 2
          a side of itself        | ties: [{label: W, point: A, side: {of: [A, B], on: left}}]               | 2
          a tape to itself        | ties: [{label: W, from: A, to: A, tape: 3}]                              | 2
          one set at two points   | ties: [{from: A, to: B, tape: 30}, {label: W, set: s, from: A, to: B, direction: 3}, {label: V, set: s, from: B, to: A, direction: 4}] | 0
          """)
  void rowsThatSayNothingAreRefusedOrDoNoHarm(String name, String visit, int code)
      throws IOException {
    Path book = book(visit);
    Said ties = Said.by("figure", "ties", book);
    assertThat(flat(ties)).as(name).isNotBlank();
    assertThat(ties.code()).as(name).isEqualTo(code);
    assertThat(Said.by("answer", book, "-o", folder.resolve("out")).code())
        .as(name)
        .isNotEqualTo(ExitCode.FAULT);
  }
}
