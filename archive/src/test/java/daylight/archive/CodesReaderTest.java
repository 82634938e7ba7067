package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Catalogue;
import daylight.line.condition.CodeRow;
import daylight.line.condition.CodeTable;
import daylight.line.condition.Seen;
import daylight.line.measure.Complaint;
import daylight.line.measure.Reading;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A company's codes: the example of an invented one, and every complaint in its line at once. */
class CodesReaderTest {
  private static final Path EXAMPLE = Path.of("..", "docs", "codes-example.csv");
  private static final Catalogue CATALOGUE = Bundled.catalogue();

  private static CodeTable example() {
    ReadData<CodeTable> read = DataReader.codes(EXAMPLE, CATALOGUE);
    assertThat(read.complaints()).isEmpty();
    return Objects.requireNonNull(read.value());
  }

  private static ReadData<CodeTable> read(String text) {
    return DataReader.codes("ours.csv", text.getBytes(StandardCharsets.UTF_8), CATALOGUE);
  }

  private static String code(CodeTable table, Seen seen) {
    return table.find(seen).map(CodeRow::code).orElse("-");
  }

  @Test
  void theExampleHasACodeForEveryKind() {
    CodeTable table = example();
    assertThat(table.title()).contains("invented");
    assertThat(CATALOGUE.kinds())
        .allSatisfy(
            kind ->
                assertThat(code(table, Seen.of(kind.id(), Map.of(), Map.of(), null)))
                    .as(kind.id())
                    .isNotEqualTo("-"));
  }

  @ParameterizedTest
  @CsvSource({
    "roots, share, 0.05, W03",
    "roots, share, 0.1, W02",
    "roots, share, 0.4999, W02",
    "roots, share, 0.5, W01",
    "standing-water, depth, 0.02, W12",
    "standing-water, depth, 0.019, W13",
    "displaced-joint, offset, 0.01, P03",
    "displaced-joint, gap, 0.01, P04",
    "crack, width, 0.01, P10"
  })
  void aSizeChoosesAmongTheRowsOfAKind(String kind, String quantity, double size, String code) {
    Map<String, Reading> sizes = Map.of(quantity, new Reading(size, null, String.valueOf(size)));
    assertThat(code(example(), Seen.of(kind, sizes, Map.of(), null))).isEqualTo(code);
  }

  @Test
  void aParticularChoosesAndWhatNobodyNotedIsPassedOver() {
    CodeTable table = example();
    assertThat(code(table, Seen.of("crack", Map.of(), Map.of("direction", "Around"), null)))
        .isEqualTo("P08");
    assertThat(code(table, Seen.of("crack", Map.of(), Map.of(), null))).isEqualTo("P10");
  }

  @Test
  void withoutACatchAllItIsSaidThatTooLittleWasNoted() {
    CodeTable table = Objects.requireNonNull(read(HEAD + "A,roots,,,share,50 %,,\n").value());
    assertThat(table.wantsMore(Seen.of("roots", Map.of(), Map.of(), null))).isTrue();
    assertThat(table.wantsMore(Seen.of("grease", Map.of(), Map.of(), null))).isFalse();
    Map<String, Reading> few = new TreeMap<>(Map.of("share", new Reading(0.1, null, "10 %")));
    assertThat(table.wantsMore(Seen.of("roots", few, Map.of(), null))).isFalse();
    assertThat(table.title()).isEqualTo("ours.csv");
  }

  @Test
  void lettersComeFromTheCatalogueAndAreUnchecked() {
    CodeTable letters = CodeTable.letters(CATALOGUE);
    assertThat(letters.checked()).isFalse();
    // EN 13508-2:2003+A1:2011, BBA roots: from memory, as SOURCES says.
    assertThat(code(letters, Seen.of("roots", Map.of(), Map.of(), null))).isEqualTo("BBA");
    assertThat(code(letters, Seen.of("joint", Map.of(), Map.of(), null))).isEqualTo("-");
  }

  private static final String HEAD = "code,kinds,word,is,quantity,from,below,name\n";

  @Test
  void saysEverythingThatIsWrongAtOnceWithItsLine() {
    ReadData<CodeTable> read =
        read(
            HEAD
                + "A,rotos,,,,,,\n" // no such kind
                + "B,roots,,,diameter,5 mm,,\n" // a size that roots do not have
                + "# a remark\n"
                + "C,grease,,,,,,\n"
                + "C,vermin,,,,,,\n" // twice
                + "D,grease,,,share,10 %,,\n" // never reached
                + "E,crack,direction,,,,,\n" // a particular without texts
                + "F,crack,,,width,5 mm,2 mm,\n" // upside down
                + "G,crack,,,width,5 kg,,\n" // no length
                + ",bend,,,,,,\n"
                + "H,bend\n");
    assertThat(read.value()).isNull();
    assertThat(read.complaints().stream().map(CodesReaderTest::told))
        .containsExactly(
            "2 rows[0].kinds grades.kind-unknown",
            "3 rows[1].quantity grades.not-of-kind",
            "6 rows[3].code codes.code-twice",
            "7 rows[4].kinds codes.never-reached",
            "8 rows[5].is form.missing",
            "9 rows[6].below book.from-after-to",
            "10 rows[7].from form.not-a-quantity",
            "11 rows[8].code form.missing",
            "12 rows[9] form.row-length");
  }

  private static String told(Complaint complaint) {
    return complaint.place().line() + " " + complaint.place().path() + " " + complaint.code().key();
  }

  @Test
  void unknownColumnsAndTextsThatAreNoTableAreToldOnce() {
    List<Complaint> unknown = read("code,kinds,colour\nA,roots,red\n").complaints();
    assertThat(unknown).hasSize(1);
    assertThat(told(unknown.getFirst())).isEqualTo("2 rows[0].colour form.unknown-key");
    assertThat(read("code,code\nA,B\n").complaints().stream().map(CodesReaderTest::told))
        .containsExactly("0  form.not-csv");
    assertThat(read("code,kinds\n\"A,roots\n").complaints().stream().map(CodesReaderTest::told))
        .containsExactly("0  form.not-csv");
    assertThat(read(HEAD).complaints()).isNotEmpty();
    assertThat(read("").complaints()).isNotEmpty();
  }

  @Test
  void semicolonsDoWhereTheHeadHasThem() {
    CodeTable table = Objects.requireNonNull(read("code;kinds;name\nA;roots;\"a, b\"\n").value());
    assertThat(table.rows().getFirst().name()).isEqualTo("a, b");
  }
}
