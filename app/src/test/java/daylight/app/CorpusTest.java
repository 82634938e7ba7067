package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FieldBookReader;
import daylight.archive.FieldBookWriter;
import daylight.archive.ReadBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Small field books, one situation each: text in, the answer in one line. The readings were made
 * from invented pipes, so that what is so is known apart from what is answered. A book that
 * Daylight is known to answer wrongly says so in a line {@code wrong}, which must go when it is
 * right.
 *
 * <p>After a change that is meant, run with {@code -Ddaylight.corpus.write=true} and read what
 * changed.
 */
class CorpusTest {
  private static Stream<DynamicTest> each(Check check) {
    return CorpusBook.all().stream()
        .map(book -> DynamicTest.dynamicTest(book.name(), () -> check.of(book)));
  }

  /** Something that every book must pass. */
  private interface Check {
    void of(CorpusBook book) throws IOException;
  }

  @Test
  void everyBookHasANameASentenceAndAnAnswer() {
    List<CorpusBook> books = CorpusBook.all();
    assertThat(books).hasSizeGreaterThanOrEqualTo(16);
    assertThat(books)
        .allSatisfy(
            book -> {
              assertThat(book.name()).matches("S\\d\\d-[a-z-]+");
              assertThat(book.text()).startsWith("# " + book.name().substring(0, 3) + " ");
              assertThat(book.text().lines().findFirst().orElseThrow()).endsWith(".");
              assertThat(book.answer()).isNotEmpty();
            });
    assertThat(books).extracting(book -> book.name().substring(0, 3)).doesNotHaveDuplicates();
  }

  @TestFactory
  Stream<DynamicTest> theAnswerIsTheOneWrittenInTheBook() {
    return each(
        book -> {
          String line = CorpusLine.of(Job.answer(book.file(), Job.Settings.USUAL));
          if (Boolean.getBoolean("daylight.corpus.write")) {
            write(book, line);
          } else {
            assertThat(line).isEqualTo(book.answer());
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> theAnswerHoldsWhatWasSo() {
    return each(
        book -> {
          if (Job.answer(book.file(), Job.Settings.USUAL)
              instanceof Job.Outcome.Answered(var handout, var _, var _, var _, var _)) {
            List<String> violated = CorpusTruth.violated(book, handout);
            if (book.wrong() == null) {
              assertThat(violated).isEmpty();
            } else {
              assertThat(violated).as("right by now: take the line 'wrong' out").isNotEmpty();
            }
          } else {
            assertThat(book.truth()).isEmpty();
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> readAndWrittenItIsTheSameBook() {
    return each(
        book -> {
          ReadBook read = FieldBookReader.read(book.file());
          assertThat(read.sound()).isTrue();
          String written = FieldBookWriter.write(Objects.requireNonNull(read.book()));
          ReadBook again =
              FieldBookReader.read("again", written.getBytes(StandardCharsets.UTF_8), null);
          assertThat(again.book()).isEqualTo(read.book());
        });
  }

  private static void write(CorpusBook book, String line) throws IOException {
    Files.writeString(
        book.file(), book.text().replaceFirst("(?m)^# answer: .*$", "# answer: " + line));
  }
}
