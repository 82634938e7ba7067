package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A book that cannot be used is refused with exit code 2; every complaint names file, line and
 * column, and nothing is written.
 */
class BrokenBookTest {
  private static final Duration SOON = Duration.ofSeconds(10);
  private static final String HEAD =
      """
      daylight-book: 1
      units: {distance: ft, depth: ft, bore: in, level: ft}
      """;

  @TempDir private Path folder = Path.of("");

  private List<String> refused(Path book) {
    var before = Books.below(folder).keySet();
    long begun = System.nanoTime();
    Said said = Said.by("answer", book, "-o", folder.resolve("out"));
    assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(SOON);
    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).doesNotContain("Exception");
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(Books.below(folder).keySet()).isEqualTo(before);
    List<String> lines = said.err().lines().toList();
    assertThat(lines.getLast()).endsWith("nothing was written.");
    return lines.subList(0, lines.size() - 1);
  }

  /** Refuses the text without its mark {@code ^}, complaining where the mark stood. */
  private void refusedAtMark(String marked, String said) {
    int mark = marked.indexOf('^');
    String before = marked.substring(0, mark);
    long line = 1 + before.chars().filter(character -> character == '\n').count();
    int column = mark - before.lastIndexOf('\n');
    String text = before + marked.substring(mark + 1);
    refusedAt(text.getBytes(StandardCharsets.UTF_8), line + ":" + column, said);
  }

  private void refusedAt(byte[] bytes, String place, String said) {
    Path book = written(bytes);
    List<String> complaints = refused(book);
    Pattern placed = Pattern.compile(Pattern.quote(book.toString()) + ":\\d+:\\d+[: ].*");
    assertThat(complaints).allMatch(line -> placed.matcher(line).matches());
    assertThat(complaints)
        .anySatisfy(line -> assertThat(line).startsWith(book + ":" + place).contains(said));
  }

  private Path written(byte[] bytes) {
    try {
      return Files.write(folder.resolve("field-book.yaml"), bytes);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "not YAML              | it is not YAML | site: {landmarks: ^]",
        "unit of no length     | 3 furlong      | visit: {locates: [{cable: 1, out: 2, along: ^3 furlong}]}",
        "unit of a bare number | parsec         | site: {reaches: [{from: a, to: b, bore: ^1 parsec}]}",
        "negative depth        | 2' 0\"          | visit: {locates: [{cable: 3, along: 1, out: 1, depth: ^-2}]}",
        "unknown landmark      | Q              | visit: {ties: [{from: ^Q, to: B, tape: 3}]}",
        "duplicate label       | A              | site: {landmarks: [{label: A}, {label: ^A}]}",
        "tie to itself         | A              | site: {landmarks: [{label: A}]}~visit: {ties: [{from: A, to: ^A, tape: 3}]}",
        "past the end          | 30' 0\"         | visit: {end: {cable: 20, why: enough}, locates: [{cable: ^30, along: 1, out: 1}]}",
        "unknown key           | depth?         | visit: {locates: [{cable: 30, ^dephth: 1}]}",
        "several documents     |                | site: {name: x}~^---~site: {name: y}",
        "duplicate key         | site           | site: {name: x}~^site: {name: y}",
        "alias                 |                | site: ^&a {name: x}",
        "leaves the folder     | ../x.mp4       | visit: {media: [{file: ^../x.mp4}]}",
        "tab                   |                | site:~^\tname: x",
        "bend over half a turn | 200            | visit: {bends: [{cable: 3, angle: ^200°}]}",
        "wrong shape           |                | site: ^[1, 2]",
        "unknown word          | corner         | site: {landmarks: [{kind: ^korner}]}",
        "pass without a reach  | R9             | visit: {passes: [{entry: entry, walk: [^R9]}]}",
        "clock that is none    | 13             | visit: {findings: [{kind: crack, cable: 3, clock: ^13}]}",
        "length for a share    | 300 m          | visit: {findings: [{kind: roots, cable: 3, share: ^300 m}]}",
        "ends before it begins |                | visit: {sight: [{from: 9, to: ^3, clarity: clear}]}",
        "day that is none      | 2026-02-30     | visit: {date: ^2026-02-30}",
      })
  void isRefusedInItsPlace(String row) {
    String[] parts = row.split(" *\\| *", 3);
    refusedAtMark(HEAD + parts[2].replace("~", "\n").replace("\\t", "\t") + "\n", parts[1]);
  }

  @Test
  void aVersionFromTheFuture() {
    refusedAtMark("daylight-book: ^99\n", "99");
  }

  @Test
  void aNumberWithoutAUnit() {
    refusedAtMark(
        "daylight-book: 1\nvisit: {locates: [{cable: 1 ft, along: 1 ft, out: ^2}]}\n", "2");
  }

  @Test
  void aLoopOfReaches() {
    refusedAtMark(
        HEAD
            + """
            site:
              nodes: [{label: a, kind: access}, {label: b, kind: junction}, {label: c, kind: outlet}]
              reaches:
                - {from: a, to: b}
                - {from: b, to: c}
                - {from: c, to: ^a}
            """,
        "loop");
  }

  @Test
  void aTimeThatTheClocksShowedTwice() {
    refusedAtMark(
        HEAD
            + """
            site: {zone: America/Toronto}
            visit: {locates: [{cable: 1, along: 1, out: 1, time: ^2026-11-01 01:30}]}
            """,
        "2026-11-01 01:30");
  }

  @Test
  void whatIsNotUtf8() {
    byte[] text = (HEAD + "site: {name: caf\u00e9}\n").getBytes(StandardCharsets.ISO_8859_1);
    refusedAt(text, "3:17", "UTF-8");
  }

  @Test
  void aFileThatWasChangedAfterItsDigestWasWritten() throws IOException {
    Files.writeString(folder.resolve("clip.txt"), "changed");
    String digest = "0".repeat(64);
    refusedAtMark(
        HEAD + "visit: {media: [{file: clip.txt, sha256: ^" + digest + "}]}\n", "clip.txt");
  }

  @Test
  void aHundredThousandBracketsAndLaughs() {
    refusedAt((HEAD + "site: " + "[".repeat(100_000)).getBytes(StandardCharsets.UTF_8), "3:", "");
    StringBuilder laughs = new StringBuilder(HEAD + "a0: &a0 [lol, lol, lol]\n");
    for (int i = 1; i < 40; i++) {
      laughs.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9)));
    }
    refusedAt(laughs.toString().getBytes(StandardCharsets.UTF_8), "3:", "");
  }

  @Test
  void aBookWithoutAVisit() {
    refusedAtMark("^daylight-book: 1\n", "visit");
  }

  /** Complaints of a file as a whole name no line. */
  private void refusedWhole(Path book) {
    assertThat(refused(book)).hasSize(1).allMatch(line -> line.startsWith(book + ": "));
  }

  @Test
  void aFileThatIsNotThere() {
    refusedWhole(folder.resolve("none.yaml"));
  }

  @Test
  void aFolderWithoutABook() {
    assertThat(refused(folder)).hasSize(1).allMatch(line -> line.contains("field-book.yaml: "));
  }

  @Test
  void anEmptyFile() {
    refusedWhole(written(new byte[0]));
  }

  @Test
  void fiftyMegabytesOfZeros() throws IOException {
    Path zeros = folder.resolve("zeros.yaml");
    try (RandomAccessFile file = new RandomAccessFile(zeros.toFile(), "rw")) {
      file.setLength(50L << 20);
    }
    long begun = System.nanoTime();
    Said said = Said.by("answer", zeros, "-o", folder.resolve("out"));
    assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(SOON);
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).startsWith(zeros + ": ");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void aFileOfPriorsThatIsNone() throws IOException {
    Path priors =
        Files.writeString(folder.resolve("priors.yaml"), "daylight-priors: 1\nrowss: []\n");
    Said said =
        Said.by(
            "answer", Books.copied("S01", folder), "-o", folder.resolve("out"), "--priors", priors);
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).startsWith(priors + ":2:1");
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
