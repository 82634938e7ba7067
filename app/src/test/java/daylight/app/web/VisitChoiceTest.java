package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Another visit of a book, judged at an address of its own. */
class VisitChoiceTest {
  private static final String BOOK =
      """
      daylight-book: 1
      units: {distance: m, depth: m, bore: mm, level: m}
      site: {name: An invented yard, invented: yes}
      visits:
        - {label: "First, by hand", date: 2026-05-02, complaint: It backs up.}
        - {label: first by hand, date: 2026-06-03, complaint: It smells.}
        - {label: V3, complaint: It is wet.}
      """;

  @TempDir private Path folder = Path.of("");

  private final AtomicInteger answered = new AtomicInteger();
  private Path book;
  private Workspace.Running running;

  @BeforeEach
  void open() throws IOException {
    book = Files.writeString(folder.resolve("yard.yaml"), BOOK);
    Property property =
        new Property(
            "yard",
            new Opened(book, Job.Settings.USUAL),
            (file, settings, progress) -> {
              answered.incrementAndGet();
              return Job.answer(file, settings);
            });
    running = Workspace.start(List.of(property), 0);
  }

  @AfterEach
  void close() {
    running.close();
  }

  private String page(String path) {
    return Asked.text(Asked.get(running, path));
  }

  @Test
  void eachVisitHasItsPageAndThePageSaysWhichItIs() {
    assertThat(page("/property/yard/"))
        .contains(
            "It is wet.",
            "<a href=\"/property/yard--first-by-hand/\">Visit of May 2, 2026</a>",
            "<a href=\"/property/yard--first-by-hand-2/\">Visit of June 3, 2026</a>",
            "<a href=\"/property/yard--v3/\" aria-current=\"page\">Visit V3, no day recorded</a>");
    assertThat(page("/property/yard--first-by-hand/"))
        .contains("It backs up.")
        .contains("<a href=\"/property/yard--first-by-hand/\" aria-current=\"page\">")
        .doesNotContain("It is wet.");
    assertThat(page("/property/yard--first-by-hand-2/")).contains("It smells.");
    assertThat(page("/property/yard--v3/")).contains("It is wet.");
  }

  @Test
  void visitsOfOneDayAreToldApart() throws IOException {
    Files.writeString(book, BOOK.replace("2026-06-03", "2026-05-02"));

    assertThat(page("/property/yard/"))
        .contains(
            ">Visit of May 2, 2026 (First, by hand)</a>",
            ">Visit of May 2, 2026 (first by hand)</a>");
  }

  /** The visit that the book itself was judged by, and each that was asked for. */
  @Test
  void aVisitIsJudgedOnceUntilTheBookChanges() throws IOException {
    page("/property/yard--v3/");
    page("/property/yard--v3/");
    assertThat(answered).hasValue(2);

    Files.writeString(book, BOOK.replace("It is wet.", "It is very wet indeed."));
    assertThat(page("/property/yard--v3/")).contains("It is very wet indeed.");
  }

  @ParameterizedTest
  @CsvSource({
    "/property/yard--v3/answers.json, 200",
    "/property/yard--v3/why, 200",
    "/property/yard--v4/, 404",
    "/property/yard--/, 404",
    "/property/--v3/, 404",
    "/property/yard--v3--v3/, 404"
  })
  void whatNoVisitIsCalledIsNotThere(String path, int status) {
    assertThat(Asked.get(running, path).statusCode()).isEqualTo(status);
  }

  @Test
  void whileTheBookMustBeMendedItStandsForItsVisits() throws IOException {
    Files.writeString(book, BOOK.replace("units: {distance: m", "units: {distance: oxen"));

    assertThat(page("/property/yard--v3/")).contains("oxen");
  }

  @Test
  void oneVisitLeavesNothingToChoose() throws IOException {
    Files.writeString(
        book,
        BOOK.lines().filter(line -> !line.contains("2026-0")).reduce("", (a, b) -> a + b + "\n"));

    assertThat(page("/property/yard/")).contains("It is wet.").doesNotContain("yard--");
  }
}
