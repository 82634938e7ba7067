package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.form.Desk;
import daylight.archive.form.Mark;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.archive.form.TreeWriter;
import daylight.line.book.FieldBook;
import daylight.line.measure.Reading;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written reads back the same: laws over books that nobody would write. */
class RoundTripLawsTest {
  @Test
  void aBookWrittenAndReadIsAnEqualBook() {
    for (long seed = 0; seed < 60; seed++) {
      FieldBook book = new GeneratedBook(seed).book();
      String written = FieldBookWriter.write(book);
      byte[] bytes = written.getBytes(StandardCharsets.UTF_8);
      FieldBook again = FieldBookReader.read("again.yaml", bytes, null).book();
      assertThat(values(Objects.requireNonNull(again).toString()))
          .as("seed %d", seed)
          .isEqualTo(values(book.toString()));
      assertThat(FieldBookWriter.write(again)).as("seed %d", seed).isEqualTo(written);
    }
  }

  /** A book in words without those its readings were written in, which exact texts replace. */
  private static String values(String book) {
    return book.replaceAll("written=[^\\]]*]", "]");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "no", "3:00", "MH #2", "a: b", "x:", "- x", "'", "\"", "[", "a\nb\n", "\t",
        "\u0000", "\u0085", "\u2028", "\uFEFF", "🚰", "012", "~", "a  b", "4' 7\"", "½", "#x",
        "x\\", "N 30 E"
      })
  void anyTextSurvivesAsKeyAndAsValue(String text) {
    Tree.Text value = new Tree.Text(text, false, false, Mark.NOWHERE);
    Tree.Keys tree =
        new Tree.Keys(Map.of("k" + text, new Tree.Member(Mark.NOWHERE, value)), Mark.NOWHERE);
    byte[] written = TreeWriter.write(tree).getBytes(StandardCharsets.UTF_8);
    Desk desk = new Desk("text");
    Tree.Keys read = (Tree.Keys) Objects.requireNonNull(TreeReader.read(written, desk));
    assertThat(desk.complaints()).isEmpty();
    Tree.Member member = Objects.requireNonNull(read.members().get("k" + text));
    assertThat(((Tree.Text) member.value()).text()).isEqualTo(text);
  }

  @Test
  void aBareNumberKeepsItsWordsAndItsMeaning() {
    String text =
        """
        daylight-book: 1
        units: {distance: ft, depth: in}
        visit: {locates: [{cable: 12, along: 8 m, out: 6, depth: 30}]}
        """;
    FieldBook book = Objects.requireNonNull(read(text));
    String written = FieldBookWriter.write(book);
    assertThat(written).contains("cable: 12\n").contains("depth: 30\n").contains("along: 8 m");
    assertThat(read(written)).isEqualTo(book);
  }

  @Test
  void aValueWhoseWordsMeanSomethingElseIsWrittenExactly() {
    Reading reading = new Reading(0.1 + 0.2, null, "about a foot");
    assertThat(new Amount(daylight.line.measure.Dimension.LENGTH, null).written(reading))
        .isEqualTo("0.30000000000000004 m");
  }

  private static FieldBook read(String text) {
    return Objects.requireNonNull(
        FieldBookReader.read("book.yaml", text.getBytes(StandardCharsets.UTF_8), null).book());
  }
}
