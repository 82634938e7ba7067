package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.condition.Grade;
import daylight.line.condition.GradeRow;
import daylight.line.condition.GradeScheme;
import daylight.line.measure.Complaint;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A table of grades of one's own: what is taken, and every complaint in its place at once. */
class GradesReaderTest {
  private static final String HEAD =
      """
      daylight-grades: 1
      id: ours
      title: What we go by
      on-limit: better
      rows:
      """;
  private static final String SAID = "clause: x, source: x, mark: from-memory";

  private static ReadData<GradeScheme> read(String text) {
    return DataReader.grades(
        "ours.yaml",
        text.replace("SAID", SAID).getBytes(StandardCharsets.UTF_8),
        Bundled.catalogue());
  }

  private static List<String> wrong(String text) {
    ReadData<GradeScheme> read = read(text);
    assertThat(read.value()).isNull();
    return read.complaints().stream().map(GradesReaderTest::inALine).toList();
  }

  private static String inALine(Complaint complaint) {
    return complaint.code().key() + " " + complaint.place().line() + " " + complaint.place().path();
  }

  @Test
  void aTableOfOnesOwnIsTaken() {
    ReadData<GradeScheme> read =
        read(
            HEAD
                + """
                  - {kind: crack, aspect: structure, quantity: width, from: {at-once: 1/4 in}, below: long-term, SAID}
                  - {kind: crack, aspect: operation, class: with-other-works, SAID}
                  - {kind: open-joint, aspect: structure, bore-from: 4 in, bore-to: 4 in, quantity: gap, from: {short-term: 1 in}, below: long-term, SAID}
                  - {kind: open-joint, aspect: structure, bore-from: 6 in, quantity: gap, from: {short-term: 2 in}, below: long-term, SAID}
                """);
    assertThat(read.complaints()).isEmpty();
    GradeScheme ours = Objects.requireNonNull(read.value());
    assertThat(ours.onLimit()).isEqualTo(GradeScheme.OnLimit.BETTER);
    assertThat(ours.adaptedFor()).isNull();
    assertThat(ours.rows()).hasSize(4);
    assertThat(ours.rows().get(1).by()).isEqualTo(new GradeRow.By.Always(Grade.WITH_OTHER_WORKS));
    assertThat(ours.immediate()).isEmpty();
  }

  @Test
  void whatIsWrongWithRowsIsToldAtOnceInItsPlace() {
    assertThat(
            wrong(
                HEAD
                    + """
                      - {kind: crock, aspect: structure, class: at-once, SAID}
                      - {kind: foreign-pipe, aspect: operation, class: at-once, SAID}
                      - {kind: crack, aspect: structure, quantity: offset, from: {at-once: 5 mm}, below: long-term, SAID}
                      - {kind: crack, aspect: structure, quantity: width, from: {at-once: 5 mm, short-term: 5 mm}, below: long-term, SAID}
                      - {kind: crack, aspect: structure, quantity: width, from: {at-once: 5 %, short-term: 0 mm}, below: long-term, SAID}
                      - {kind: crack, aspect: structure, quantity: width, from: {short-term: 5 mm}, below: at-once, SAID}
                      - {kind: crack, aspect: structure, class: at-once, below: long-term, SAID}
                      - {kind: crack, aspect: structure, SAID}
                      - {kind: crack, aspect: structure, quantity: width, of: section, from: {at-once: 1 mm}, below: long-term, SAID}
                      - {kind: roots, aspect: operation, quantity: share, from: {at-once: 5 %}, below: long-term, SAID}
                      - {kind: standing-water, aspect: operation, quantity: share, of: height, or: since, from: {at-once: 5 %}, below: long-term, SAID}
                      - {kind: roots, aspect: operation, word: thru, is: [joint], class: at-once, SAID}
                      - {kind: roots, aspect: operation, word: through, without: held-by, class: at-once, SAID}
                      - {kind: crack, aspect: structure, bore-from: 8 in, bore-to: 4 in, class: at-once, SAID}
                      - {kind: crack, aspect: structure, bore-to: 4 in, bore-below: 4 in, class: at-once, SAID}
                      - {kind: crack, aspect: strength, class: 1, clause: x, source: x}
                      - {kind: crack, aspect: structure, class: at-once, clause: x, mark: looked-up}
                      - {kind: crack, aspect: structure, quantity: width, from: {worst: 5 mm}, below: long-term, SAID}
                      - {kind: crack, aspect: structure, quantity: width, from: {}, below: long-term, SAID}
                    """))
        .containsExactly(
            "grades.kind-unknown 6 rows[0].kind",
            "grades.kind-outranks 7 rows[1].kind",
            "grades.not-of-kind 8 rows[2].quantity",
            "grades.not-falling 9 rows[3].from.short-term",
            "form.not-a-quantity 10 rows[4].from.at-once",
            "form.not-positive 10 rows[4].from.short-term",
            "grades.below-not-milder 11 rows[5].below",
            "book-file.one-of 12 rows[6].class",
            "book-file.one-of 13 rows[7].kind",
            "form.unknown-key 14 rows[8].of",
            "form.missing 15 rows[9].of",
            "grades.not-a-height 16 rows[10].or",
            "grades.not-of-kind 17 rows[11].word",
            "form.missing 18 rows[12].is",
            "grades.not-of-kind 18 rows[12].without",
            "book.from-after-to 19 rows[13].bore-to",
            "book-file.one-of 20 rows[14].bore-below",
            "form.missing 21 rows[15].mark",
            "form.not-a-choice 21 rows[15].aspect",
            "form.not-a-choice 21 rows[15].class",
            "form.missing 22 rows[16].source",
            "form.unknown-key 23 rows[17].from.worst",
            "form.missing 24 rows[18].from");
  }

  @Test
  void rowsForTheSameFindingsAreTold() {
    assertThat(
            wrong(
                HEAD
                    + """
                      - {kind: crack, aspect: structure, bore-below: 300 mm, class: at-once, SAID}
                      - {kind: crack, aspect: structure, bore-from: 300 mm, bore-to: 600 mm, class: at-once, SAID}
                      - {kind: crack, aspect: structure, bore-from: 500 mm, class: at-once, SAID}
                      - {kind: crack, aspect: structure, bore-below: 300 mm, class: long-term, SAID}
                      - {kind: roots, aspect: operation, word: through, is: [joint, pipe], class: at-once, SAID}
                      - {kind: roots, aspect: operation, word: through, is: [crack], class: at-once, SAID}
                      - {kind: roots, aspect: operation, word: through, is: [Pipe], class: at-once, SAID}
                      - {kind: hole, aspect: structure, class: at-once, SAID}
                      - {kind: hole, aspect: structure, class: at-once, SAID}
                    immediate:
                      - {kind: crack, quantity: width, over: 5 mm, SAID}
                      - {kind: crack, quantity: length, over: 1 m, SAID}
                      - {kind: crack, quantity: width, over: 6 mm, SAID}
                      - {kind: crack, over: 6 mm, SAID}
                      - {kind: hole, quantity: diameter, SAID}
                    """))
        .containsExactly(
            "grades.rows-overlap 8 rows[2].kind",
            "grades.row-twice 9 rows[3].kind",
            "grades.rows-overlap 12 rows[6].kind",
            "grades.row-twice 14 rows[8].kind",
            "grades.row-twice 18 immediate[2].kind",
            "form.missing 19 immediate[3].quantity",
            "form.missing 20 immediate[4].over");
  }

  @Test
  void aTableSaysWhatItIsAndWhereValuesOnALimitBelong() {
    assertThat(wrong("daylight-grades: 2\nrows: []\n"))
        .containsExactly(
            "form.missing 1 id",
            "form.missing 1 on-limit",
            "form.missing 1 title",
            "book-file.version-unknown 1 daylight-grades");
    assertThat(wrong("daylight-grades: 1\nid: x\ntitle: x\non-limit: worse\n"))
        .containsExactly("form.missing 1 rows");
  }
}
