package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Why;
import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.course.Contribution;
import daylight.line.course.Source;
import daylight.line.course.Wanted;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every figure of every demo and of every tiny book can be walked back to what it comes from. */
class WhyOfEveryFigureTest {
  private static final Path DEMOS =
      SourceTree.ofThisProject().file("app/src/main/resources/daylight/app/demo");

  private static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(DEMOS)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static List<Path> books() throws IOException {
    List<Path> books = new ArrayList<>(demos());
    try (Stream<Path> files = Files.list(SourceTree.ofThisProject().file("corpus"))) {
      files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(books::add);
    }
    return books;
  }

  private static Stream<Handout> answered(Path book) {
    return Job.answerWithoutFootage(book, Job.Settings.USUAL)
            instanceof Job.Outcome.Answered(var handout, var _, var _, var _, var _)
        ? Stream.of(handout)
        : Stream.empty();
  }

  @TestFactory
  Stream<DynamicTest> sharesOfEveryFigureSumToOneAndLeadToEntriesOfTheBook() throws IOException {
    return books().stream()
        .map(
            book ->
                DynamicTest.dynamicTest(
                    String.valueOf(book.getFileName()),
                    () -> answered(book).forEach(WhyOfEveryFigureTest::holds)));
  }

  private static void holds(Handout handout) {
    Map<Source.Sort, Set<UUID>> entries = entries(handout.book());
    for (Why why : Why.all(handout.book(), handout.line(), handout.answers())) {
      if (why.now().sd() > 1e-5) {
        assertThat(why.rests()).as("%s", why.figure()).isNotEmpty();
        assertThat(why.rests().stream().mapToDouble(Contribution::share).sum())
            .as("%s", why.figure())
            .isCloseTo(1, within(1e-9));
      }
      assertThat(why.rests()).extracting(Contribution::source).doesNotHaveDuplicates();
      for (Contribution one : why.rests()) {
        if (one.source() instanceof Source.OfEntry entry) {
          assertThat(entries.get(entry.sort())).as("%s", entry).contains(entry.id().uuid());
        }
      }
      if (why.best() != null) {
        assertThat(why.best().then()).isLessThan(why.now().sd());
        assertThat(why.best().now()).isEqualTo(why.now());
      }
    }
  }

  @Test
  void everyDemoHasAReasonForEachAnswerThatTurnsOnAFigure() throws IOException {
    for (Path demo : demos()) {
      for (Handout handout : answered(demo).toList()) {
        List<Why> all = Why.all(handout.book(), handout.line(), handout.answers());
        for (Answers.LineAnswers line : handout.answers().lines()) {
          for (Answer answer : line.answers()) {
            Wanted leading = answer.leading();
            if (leading != null) {
              assertThat(all)
                  .filteredOn(why -> why.figure().equals(leading))
                  .first()
                  .satisfies(why -> assertThat(why.rests()).isEqualTo(answer.contributions()));
            }
          }
        }
        assertThat(all).anyMatch(why -> why.of() instanceof Why.Of.OfLocate);
        assertThat(all).anyMatch(why -> why.of() instanceof Why.Of.OfNode);
        assertThat(all).anyMatch(why -> why.of() instanceof Why.Of.OfDig);
      }
    }
  }

  /** All figures of a page, warm: a tenth of a second on a machine that does nothing else. */
  @Test
  @Tag("long")
  void allFiguresOfTheLargestDemoTakeATenthOfASecond() throws IOException {
    for (Path demo : demos()) {
      for (Handout handout : answered(demo).toList()) {
        double best = Double.POSITIVE_INFINITY;
        int figures = 0;
        for (int i = 0; i < 20; i++) {
          long begun = System.nanoTime();
          figures = Why.all(handout.book(), handout.line(), handout.answers()).size();
          best = Math.min(best, (System.nanoTime() - begun) / 1e6);
        }
        System.out.printf("%s: %d figures in %.1f ms%n", demo.getFileName(), figures, best);
        assertThat(best).as("%s", demo).isLessThan(100);
      }
    }
  }

  private static Map<Source.Sort, Set<UUID>> entries(FieldBook book) {
    Map<Source.Sort, Set<UUID>> entries = new EnumMap<>(Source.Sort.class);
    for (Source.Sort sort : Source.Sort.values()) {
      entries.put(sort, new HashSet<>());
    }
    take(entries, Source.Sort.NODE, book.site().nodes());
    take(entries, Source.Sort.REACH, book.site().reaches());
    take(entries, Source.Sort.VISIT, book.visits());
    for (Visit visit : book.visits()) {
      take(entries, Source.Sort.LOCATE, visit.locates());
      take(entries, Source.Sort.EXPOSURE, visit.exposures());
      take(entries, Source.Sort.TIE, visit.ties());
      take(entries, Source.Sort.LEVEL, visit.levels());
      take(entries, Source.Sort.PASS, visit.passes());
      for (Pass pass : visit.passes()) {
        take(entries, Source.Sort.FINDING, pass.findings());
        take(entries, Source.Sort.BEND, pass.bends());
        take(entries, Source.Sort.COUNTER_CHECK, pass.counterChecks());
      }
    }
    return entries;
  }

  private static void take(
      Map<Source.Sort, Set<UUID>> into, Source.Sort sort, List<? extends Entry> entries) {
    entries.forEach(entry -> into.getOrDefault(sort, new HashSet<>()).add(entry.id().uuid()));
  }
}
