package daylight.archive.store;

import static daylight.archive.store.Pages.LAPTOP;
import static daylight.archive.store.Pages.PHONE;
import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FieldBookReader;
import daylight.archive.FileTrouble;
import daylight.archive.form.FormTrouble;
import daylight.line.book.BookFault;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.measure.ComplaintCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EnterTest {
  @TempDir private Path folder = Path.of("");
  private final Pages pages = new Pages("willow");
  private @Nullable Archive begun;

  @BeforeEach
  void begin() {
    begun = Pages.opened(folder);
    assertThat(begun.enter(pages.book, pages.begun(), PHONE))
        .containsOnly(new Entering.Kept(1))
        .hasSameSizeAs(pages.begun());
  }

  private Archive archive() {
    return Objects.requireNonNull(begun);
  }

  private List<Entering> enter(Entered... entries) {
    return archive().enter(pages.book, List.of(entries), PHONE);
  }

  private FieldBook book() {
    return Objects.requireNonNull(archive().book(pages.book).orElseThrow().book());
  }

  private List<String> findings() {
    return book().visits().getFirst().passes().getFirst().findings().stream()
        .map(Finding::id)
        .map(Id::label)
        .toList();
  }

  private static List<ComplaintCode> codes(Entering outcome) {
    return outcome instanceof Entering.Wrong(var complaints)
        ? complaints.stream().map(daylight.line.measure.Complaint::code).toList()
        : List.of();
  }

  @Test
  void aNewBookIsThereAndSoIsItsSite() {
    KeptSite site = archive().sites("willow").getFirst();

    assertThat(site.book()).isEqualTo(pages.book);
    assertThat(site.address()).isEqualTo("Nowhere 1");
    assertThat(site.visits()).isEqualTo(1);
    assertThat(site.changed()).isEqualTo(PHONE.at());
    assertThat(book().id().uuid()).isEqualTo(pages.book);
    assertThat(archive().book(pages.book).orElseThrow().complaints()).isEmpty();
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void nothingStandsInABookThatIsNotThere() {
    Pages other = new Pages("other");
    List<Entered> begun = other.begun();

    assertThat(archive().enter(other.book, begun.subList(1, 3), PHONE))
        .allSatisfy(one -> assertThat(codes(one)).containsExactly(EntryTrouble.NO_PARENT));
    assertThat(archive().written(other.book)).isEmpty();
    assertThat(archive().sites("")).hasSize(1);

    Entered book = begun.getFirst();
    Entered unversioned = new Entered(book.entry(), null, "", 0, "{label: X}");
    assertThat(archive().enter(other.book, List.of(unversioned), PHONE))
        .satisfiesExactly(
            one -> assertThat(codes(one)).containsExactly(FileTrouble.VERSION_NOT_FIRST));
    assertThat(archive().enter(other.book, List.of(book), PHONE))
        .containsExactly(new Entering.Kept(1));
    assertThat(archive().enter(other.book, begun.subList(1, 9), PHONE))
        .containsOnly(new Entering.Kept(1));
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void whatIsWrittenOutIsWhatWasEntered() {
    enter(pages.finding(1, 0, "12.5"), pages.finding(2, 0, "4' 7\\\""));

    Finding second = book().visits().getFirst().passes().getFirst().findings().get(1);
    assertThat(second.id().uuid()).isEqualTo(pages.findingId(2));
    assertThat(second.remark()).isEqualTo("é #2: yes");
    String out = archive().written(pages.book).orElseThrow();
    assertThat(out).contains("4' 7\"", "id: " + pages.findingId(1), "P1", "It gurgles.");
    var again = FieldBookReader.read("out", out.getBytes(StandardCharsets.UTF_8), null);
    assertThat(again.complaints()).isEmpty();
    assertThat(again.book()).isEqualTo(book());
  }

  @Test
  void theEntriesAreThoseOfNowInTheOrderOfTheBook() {
    enter(pages.finding(1, 0, "12"), pages.finding(2, 0, "9"), pages.finding(3, 0, "30"));
    enter(pages.finding(2, 1, "10"), pages.withdrawn(1, 1));

    List<KeptEntry> entries = archive().entries(pages.book);
    assertThat(entries).hasSize(pages.begun().size() + 2);
    assertThat(entries.getFirst().parent()).isNull();
    assertThat(entries.stream().map(KeptEntry::entry).toList())
        .endsWith(pages.visit, pages.push, pages.findingId(2), pages.findingId(3));
    KeptEntry changed = entries.get(entries.size() - 2);
    assertThat(changed.number()).isEqualTo(2);
    assertThat(changed.parent()).isEqualTo(pages.push);
    assertThat(changed.section()).isEqualTo("findings");
    assertThat(changed.content()).contains("cable: 10");
  }

  @Test
  void whatIsSentTwiceIsThereOnceHoweverItIsWritten() {
    enter(pages.finding(1, 0, "12"));
    String yaml = "kind: roots\ncable: 12\nlabel: F1\nremark: \"é #2: yes\"\nclock:\n";
    Entered other = new Entered(pages.findingId(1), pages.push, "findings", 0, yaml);

    assertThat(enter(pages.finding(1, 0, "12"), other))
        .containsExactly(new Entering.Same(1), new Entering.Same(1));
    assertThat(enter(pages.begun().toArray(Entered[]::new))).containsOnly(new Entering.Same(1));
    assertThat(archive().history(pages.book, pages.findingId(1))).hasSize(1);
  }

  @Test
  void aQueueThatIsSentTwiceIsThereOnce() {
    Entered[] queue = {
      pages.finding(1, 0, "12"),
      pages.finding(1, 1, "13"),
      pages.withdrawn(1, 2),
      pages.finding(1, 3, "14")
    };

    assertThat(enter(queue)).extracting(Object::toString).allMatch(said -> said.startsWith("Kept"));
    assertThat(enter(queue))
        .containsExactly(
            new Entering.Same(1), new Entering.Same(2), new Entering.Same(3), new Entering.Same(4));
    assertThat(archive().history(pages.book, pages.findingId(1))).hasSize(4);
  }

  @Test
  void whoWritesUponWhatIsNotTheLastIsToldWhatItSaysNow() {
    enter(pages.finding(1, 0, "12"), pages.finding(2, 0, "20"));
    archive().enter(pages.book, List.of(pages.finding(1, 1, "13")), LAPTOP);
    archive().enter(pages.book, List.of(pages.withdrawn(2, 1)), LAPTOP);

    List<Entering> outcomes =
        enter(
            pages.finding(1, 1, "14"),
            pages.finding(2, 1, "21"),
            pages.withdrawn(1, 1),
            pages.finding(3, 2, "30"),
            pages.finding(4, 0, "40"));

    assertThat(outcomes.get(0))
        .matches(
            o ->
                o instanceof Entering.Clash(int n, String now)
                    && n == 2
                    && now.contains("cable: 13"));
    assertThat(outcomes.get(1)).isEqualTo(new Entering.Clash(2, null));
    assertThat(outcomes.get(2)).isInstanceOf(Entering.Clash.class);
    assertThat(outcomes.get(3)).isEqualTo(new Entering.Clash(0, null));
    assertThat(outcomes.get(4)).isEqualTo(new Entering.Kept(1));
    assertThat(findings()).containsExactly("F1", "F4");
    assertThat(archive().sites("").getFirst().changed()).isEqualTo(PHONE.at());
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void whatIsTakenBackComesBackToItsPlace() {
    enter(pages.finding(1, 0, "1"), pages.finding(2, 0, "2"), pages.finding(3, 0, "3"));

    assertThat(enter(pages.withdrawn(2, 1))).containsExactly(new Entering.Kept(2));
    assertThat(findings()).containsExactly("F1", "F3");
    assertThat(enter(pages.withdrawn(2, 1), pages.withdrawn(9, 0)))
        .containsExactly(new Entering.Same(2), new Entering.Same(0));
    assertThat(enter(pages.finding(2, 2, "2"))).containsExactly(new Entering.Kept(3));
    assertThat(findings()).containsExactly("F1", "F2", "F3");
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void whatOthersStandInIsNotWithdrawnWithThemUnseen() {
    enter(pages.finding(1, 0, "1"));
    Entered push = new Entered(pages.push, pages.visit, "passes", 1, null);

    assertThat(codes(enter(push).getFirst())).containsExactly(EntryTrouble.HOLDS_OTHERS);
    assertThat(enter(push, pages.withdrawn(1, 1)))
        .containsExactly(new Entering.Kept(2), new Entering.Kept(2));
    assertThat(book().visits().getFirst().passes()).isEmpty();
  }

  @Test
  void wrongOnesDoNotKeepTheGoodOnesOut() {
    Entered noKind = new Entered(pages.findingId(2), pages.push, "findings", 0, "{cable: 3}");
    Entered notYaml = new Entered(pages.findingId(3), pages.push, "findings", 0, "{cable: [");
    Entered cut =
        new Entered(pages.findingId(4), pages.push, "findings", 0, "{kind: roots, remark: a #2\n}");
    Entered nowhere = new Entered(pages.findingId(5), Pages.id("no"), "findings", 0, "{}");
    Entered attic = new Entered(pages.findingId(6), pages.push, "attic", 0, "{}");
    Entered second = new Entered(Pages.id("second"), pages.book, "site", 0, "{name: Other}");
    Entered other =
        new Entered(pages.findingId(7), pages.push, "findings", 0, "{id: " + pages.push + "}");

    List<Entering> outcomes =
        enter(
            pages.finding(1, 0, "12"),
            noKind,
            notYaml,
            cut,
            nowhere,
            attic,
            second,
            other,
            pages.finding(8, 0, "twelve"),
            pages.finding(9, 0, "14"));

    assertThat(outcomes.getFirst()).isEqualTo(new Entering.Kept(1));
    assertThat(outcomes.getLast()).isEqualTo(new Entering.Kept(1));
    assertThat(outcomes.stream().map(EnterTest::codes).toList())
        .containsExactly(
            List.of(),
            List.of(FormTrouble.MISSING),
            List.of(FormTrouble.NOT_YAML),
            List.of(FormTrouble.CUT_BY_COMMENT),
            List.of(EntryTrouble.NO_PARENT),
            List.of(EntryTrouble.NO_SECTION),
            List.of(EntryTrouble.ONE_ALREADY),
            List.of(EntryTrouble.OTHER_ID),
            List.of(FormTrouble.NOT_A_QUANTITY),
            List.of());
    assertThat(outcomes.get(8))
        .matches(
            o ->
                o instanceof Entering.Wrong(var complaints)
                    && complaints.getFirst().place().path().equals("cable"));
    assertThat(findings()).containsExactly("F1", "F9");
  }

  @Test
  void whatOthersNameIsNotWithdrawn() {
    UUID reach = pages.begun().get(6).entry();
    Entered gone = new Entered(reach, pages.site, "reaches", 1, null);

    List<Entering> outcomes = enter(pages.finding(1, 0, "1"), gone, pages.finding(2, 0, "2"));

    assertThat(outcomes.get(0)).isEqualTo(new Entering.Kept(1));
    assertThat(codes(outcomes.get(1))).contains(BookFault.UNKNOWN_REACH);
    assertThat(outcomes.get(2)).isEqualTo(new Entering.Kept(1));
    assertThat(archive().book(pages.book).orElseThrow().complaints()).isEmpty();
  }

  @Test
  void whatWasWrongBeforeKeepsNothingOutAndDoubtsDoNot() throws IOException {
    String text =
        Files.readString(Path.of("..", "corpus", "S12-belly.yaml"))
            .replace("cable: 60.4, why", "cable: 20, why");
    var read = FieldBookReader.read("x", text.getBytes(StandardCharsets.UTF_8), null);
    assertThat(read.sound()).isFalse();
    FieldBook book = Objects.requireNonNull(read.book());
    archive().keep(book, PHONE, false);
    UUID visit = book.visits().getFirst().id().uuid();

    Entered ticket =
        new Entered(Pages.id("t"), visit, "tickets", 0, "{number: 1, expires: 2020-01-01}");
    assertThat(archive().enter(book.id().uuid(), List.of(ticket), PHONE))
        .containsExactly(new Entering.Kept(1));
  }

  @Test
  void theListOfSitesFollows() {
    Entered site =
        new Entered(pages.site, pages.book, "site", 1, "{name: Willow House, invented: yes}");
    Entered visit =
        new Entered(Pages.id("v2"), pages.book, "visits", 0, "{label: V2, date: 2026-05-02}");

    assertThat(archive().enter(pages.book, List.of(site, visit), LAPTOP))
        .containsExactly(new Entering.Kept(2), new Entering.Kept(1));
    KeptSite row = archive().sites("").getFirst();
    assertThat(row.name()).isEqualTo("Willow House");
    assertThat(row.visits()).isEqualTo(2);
    assertThat(row.lastVisit()).isEqualTo("2026-05-02");
    assertThat(row.changed()).isEqualTo(LAPTOP.at());
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void twoAtOnceBothGetInAndNothingIsThereTwice() throws Exception {
    try (ExecutorService both = Executors.newFixedThreadPool(2)) {
      List<Future<List<Entering>>> going = new ArrayList<>();
      for (int thread = 0; thread < 2; thread++) {
        int first = 100 * thread;
        Callable<List<Entering>> work =
            () -> {
              Archive own = Pages.opened(folder);
              List<Entering> all = new ArrayList<>();
              for (int i = 1; i <= 10; i++) {
                all.addAll(
                    own.enter(
                        pages.book,
                        List.of(pages.finding(first + i, 0, "5"), pages.finding(1000 + i, 0, "6")),
                        PHONE));
              }
              return all;
            };
        going.add(both.submit(work));
      }
      List<Entering> all = new ArrayList<>(going.get(0).get());
      all.addAll(going.get(1).get());
      assertThat(all).containsOnly(new Entering.Kept(1), new Entering.Same(1));
      assertThat(all.stream().filter(Entering.Same.class::isInstance)).hasSize(10);
    }
    assertThat(findings()).hasSize(30).doesNotHaveDuplicates();
    assertThat(archive().rebuild()).isFalse();
  }

  @Test
  void fourHundredComeTogetherInTheirOrder() {
    List<Entered> many =
        IntStream.rangeClosed(1, 400)
            .mapToObj(i -> pages.finding(i, 0, i == 200 ? "?" : "1"))
            .toList();
    List<String> labels =
        IntStream.rangeClosed(1, 400).filter(i -> i != 200).mapToObj(i -> "F" + i).toList();

    List<Entering> outcomes = archive().enter(pages.book, many, PHONE);

    assertThat(outcomes.get(199)).isInstanceOf(Entering.Wrong.class);
    assertThat(findings()).isEqualTo(labels);
    assertThat(archive().enter(pages.book, many.subList(0, 199), PHONE))
        .containsOnly(new Entering.Same(1));
  }

  @Test
  void nothingIsHalfEntered() throws Exception {
    try (var one =
            java.sql.DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
        var statement = one.createStatement()) {
      statement.executeUpdate("ALTER TABLE site_now RENAME TO elsewhere");
    }

    assertThat(enter(pages.finding(1, 0, "1"), pages.finding(2, 0, "2")))
        .hasSize(2)
        .hasOnlyElementsOfType(Entering.NotWritten.class);
    assertThat(findings()).isEmpty();
  }
}
