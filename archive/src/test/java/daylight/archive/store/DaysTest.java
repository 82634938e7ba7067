package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries found by the day that stands in them. */
class DaysTest {
  private static final By BY = new By("Kim", "laptop", Instant.parse("2026-11-27T10:00:00Z"));
  private static final LocalDate TODAY = LocalDate.parse("2026-11-27");

  private final UUID book = UUID.randomUUID();
  private final UUID visit = UUID.randomUUID();

  @TempDir private Path folder = Path.of("");
  private Archive archive;

  @BeforeEach
  void begin() {
    archive = ((ArchiveOpening.Opened) Archive.open(folder.resolve("archive"))).archive();
    enter(book, null, "", "{daylight-book: '1'}");
    enter(UUID.randomUUID(), book, "site", "{name: Mill (invented), zone: UTC}");
    enter(
        visit,
        book,
        "visits",
        "{\"complaint\": \"It said date: 2020-01-01\\ndate: 2020-01-02\", \"date\": \"2026-11-28\"}");
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private void enter(UUID entry, @Nullable UUID parent, String section, String content) {
    String whole = content.replaceFirst("\\{", "{id: \"" + entry + "\", ");
    List<Entering> came =
        archive.enter(book, List.of(new Entered(entry, parent, section, 0, whole)), BY);
    assertThat(came).containsExactly(new Entering.Kept(1));
  }

  private List<Dated> near() {
    return archive.dated(TODAY.minusDays(1), TODAY.plusDays(1));
  }

  @Test
  void aVisitIsToComeUntilSomethingIsMeasuredInIt() {
    assertThat(near())
        .extracting(Dated::visit, Dated::what, Dated::day)
        .containsExactly(tuple(visit, Dated.What.VISIT_TO_COME, LocalDate.parse("2026-11-28")));

    enter(UUID.randomUUID(), visit, "consents", "{who: owner, what: camera}");
    assertThat(near()).hasSize(1);
    enter(UUID.randomUUID(), visit, "works", "{kind: cleaning, how: jetted}");
    assertThat(near()).isEmpty();
  }

  @Test
  void aTicketIsFoundByItsLastDayWithTheVisitItBelongsTo() {
    UUID ticket = UUID.randomUUID();
    enter(ticket, visit, "tickets", "{number: 'A 1', issued: 2026-11-01, expires: 2026-11-28}");
    enter(UUID.randomUUID(), visit, "tickets", "{number: 'A 2', expires: 2026-12-28}");
    enter(UUID.randomUUID(), visit, "tickets", "{number: 'expires: 2026-11-27'}");

    assertThat(near())
        .filteredOn(one -> one.what() == Dated.What.TICKET_EXPIRES)
        .extracting(Dated::entry, Dated::visit)
        .containsExactly(tuple(ticket, visit));
  }

  @Test
  void daysThatALineOfTextNamesAreNone() {
    assertThat(archive.dated(LocalDate.parse("2020-01-01"), LocalDate.parse("2020-12-31")))
        .isEmpty();
  }

  @Test
  void daysAreFoundByTheirIndexAndNotByReadingWhatEveryBookHolds() {
    assertThat(plan("visits", "date: ", "entry, entry")).contains("INDEX visit_of_day");
    assertThat(plan("tickets", "expires: ", "parent, entry")).contains("INDEX ticket_of_day");
  }

  /** How the database goes about it, in its own words. */
  private String plan(String section, String key, String visit) {
    return Database.connect(Database.file(folder.resolve("archive")))
        .withHandle(
            handle ->
                handle
                    .createQuery("EXPLAIN QUERY PLAN " + Days.between(section, key, visit))
                    .bind("from", "2026-11-01")
                    .bind("to", "2026-11-30")
                    .map((row, _) -> row.getString("detail"))
                    .list()
                    .toString());
  }
}
