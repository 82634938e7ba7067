package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Complaint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every broken book says in its first line what must be complained of, and nothing else: code, line
 * and column, path; several with semicolons between them.
 */
class BrokenBooksTest {
  private static final Path FOLDER = Path.of("src/test/resources/daylight/archive/broken");

  static List<Path> books() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void isComplainedOfInItsPlace(Path file) throws IOException {
    String expected = Files.readAllLines(file).getFirst().substring(2);
    ReadBook read = FieldBookReader.read(file);
    assertThat(read.complaints().stream().map(BrokenBooksTest::inALine))
        .containsExactlyInAnyOrderElementsOf(Arrays.asList(expected.split("; ", -1)));
    assertThat(read.complaints()).isSorted();
    assertThat(read.complaints())
        .allSatisfy(complaint -> assertThat(complaint.place().file()).isEqualTo(file.toString()));
  }

  private static String inALine(Complaint complaint) {
    String place = complaint.place().line() + ":" + complaint.place().column();
    return (complaint.code().key() + " " + place + " " + complaint.place().path()).strip();
  }
}
