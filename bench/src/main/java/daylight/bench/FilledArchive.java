package daylight.bench;

import daylight.archive.store.Archive;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An archive of invented sites, entered as devices enter them: every site with four visits, of
 * which the last is still to come; in each of the others a push with findings and a walk.
 */
final class FilledArchive {
  static final int VISITS_EACH = 4;

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);
  private static final By BY = new By("Kim", "bench", Instant.parse("2026-11-27T12:00:00Z"));

  private static final List<String> STREETS =
      List.of("Elder Row", "Larch Bend", "Mill Lane", "Quarry Hill", "Weir Walk", "Ash Court");
  private static final List<String> KINDS =
      List.of("roots", "joint", "crack", "grease", "joint", "displaced-joint", "break");

  private final Archive archive;
  private final Random chance = new Random(11);
  private final List<Place> places = new ArrayList<>();

  /**
   * Where pages of it lie.
   *
   * @param site path of a site
   * @param visit path of its last visit in which something was measured
   * @param pass path of the push of that visit
   */
  record Place(String site, String visit, String pass, String word) {}

  private FilledArchive(Archive archive) {
    this.archive = archive;
  }

  /**
   * Fills an empty archive.
   *
   * @param visits how many in all
   */
  static List<Place> fill(Archive archive, int visits) {
    FilledArchive filled = new FilledArchive(archive);
    for (int i = 0; i < visits / VISITS_EACH; i++) {
      filled.site(i);
    }
    return filled.places;
  }

  private UUID id() {
    return new UUID(
        (chance.nextLong() & ~0xF000L) | 0x4000L,
        (chance.nextLong() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L);
  }

  private void site(int number) {
    List<Entered> all = new ArrayList<>();
    UUID book = id();
    UUID site = id();
    String word = STREETS.get(number % STREETS.size());
    String address = (number + 1) + " " + word + ", Springmouth (invented)";
    add(
        all,
        book,
        null,
        "",
        "daylight-book: '1', id: %s, units: {distance: ft, depth: ft, bore: in}".formatted(book));
    add(
        all,
        site,
        book,
        "site",
        "name: '%s', address: '%s', zone: America/New_York, invented: yes"
            .formatted(address, address));
    add(all, id(), site, "landmarks", "label: A, kind: corner, base: yes");
    add(all, id(), site, "landmarks", "label: B, kind: corner, base: yes");
    add(all, id(), site, "nodes", "label: C1, kind: access, what: cleanout in the floor");
    add(all, id(), site, "nodes", "label: O1, kind: outlet");
    add(
        all,
        id(),
        site,
        "reaches",
        "label: R1, from: C1, to: O1, water: forward, bore: 4 in, material: clay");
    UUID visit = book;
    UUID pass = book;
    for (int v = 1; v < VISITS_EACH; v++) {
      visit = id();
      pass = id();
      visit(
          all, book, visit, pass, v, TODAY.minusDays(40L + 300L * (VISITS_EACH - v) + number % 90));
    }
    UUID next = id();
    LocalDate day = TODAY.plusDays(number % 200);
    add(all, next, book, "visits", "label: V4, date: %s, complaint: Slow again.".formatted(day));
    add(
        all,
        id(),
        next,
        "tickets",
        "number: INVENTED-%d, expires: %s".formatted(number, day.plusDays(9)));
    List<Entering> outcomes = archive.enter(book, all, BY);
    outcomes.stream()
        .filter(one -> !(one instanceof Entering.Kept))
        .findFirst()
        .ifPresent(
            one -> {
              throw new IllegalStateException(one.toString());
            });
    String path = "/site/" + book;
    places.add(
        new Place(
            path, path + "/visit/" + visit, path + "/pass/" + pass, (number + 1) + " " + word));
  }

  private void visit(
      List<Entered> all, UUID book, UUID visit, UUID pass, int number, LocalDate day) {
    add(
        all,
        visit,
        book,
        "visits",
        "label: V%d, date: %s, complaint: It backs up when it rains.".formatted(number, day));
    add(
        all,
        pass,
        visit,
        "passes",
        ("label: P%d, entry: C1, walk: [R1], zero: {reads: 0 ft}, head: self-righting,"
                + " sight: [{from: 0 ft, to: 46 ft, clarity: clear}],"
                + " end: {cable: 46 ft, why: enough}")
            .formatted(number));
    for (int i = 0; i < 12; i++) {
      String kind = KINDS.get(chance.nextInt(KINDS.size()));
      add(
          all,
          id(),
          pass,
          "findings",
          "label: F%d-%d, kind: %s, cable: %d.%d ft"
              .formatted(number, i, kind, 3 * i + 2, chance.nextInt(10)));
    }
    for (int i = 1; i <= 6; i++) {
      add(
          all,
          id(),
          visit,
          "locates",
          ("label: L%d-%d, pass: P%d, cable: %d ft, wall: [A, B], along: %d ft, out: %d ft,"
                  + " depth: 3.%d ft")
              .formatted(number, i, number, 7 * i, 12, 7 * i - 1, chance.nextInt(5)));
    }
  }

  private static void add(
      List<Entered> all, UUID entry, @Nullable UUID parent, String section, String keys) {
    String own = parent == null ? keys : "id: " + entry + ", " + keys;
    all.add(new Entered(entry, parent, section, 0, "{" + own + "}"));
  }
}
