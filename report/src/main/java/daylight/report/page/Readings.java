package daylight.report.page;

import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.course.LocateFit;
import daylight.line.measure.Argument;
import daylight.line.measure.FilePlace;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Every reading that the line was worked out from, each in a row that answers lead back to: as it
 * was written, when and by whom, where it stands in the book, and how it fits the others.
 *
 * <p>Of findings, tests, pushes, points, reaches and visits, which say more than readings, only
 * those are listed that something on the page leads to.
 */
public final class Readings {
  private final FieldBook book;
  private final Words words;
  private final ReadingWords says;
  private final ReadingFits fits;
  private final Map<UUID, LocateFit> locates = new HashMap<>();
  private final Set<UUID> referred;
  private final Where where;
  private final List<Group> groups = new ArrayList<>();

  /** Where an entry stands, and where it can be put right. */
  public interface Where {
    /** Where in a file; empty where that is not known. */
    Optional<FilePlace> stands(UUID entry);

    /** The address of a form in which it can be put right; empty where there is none. */
    Optional<String> form(Visit visit, @Nullable Pass pass, Entry entry);
  }

  private record Group(String heading, List<Row> rows) {}

  private record Row(
      Entry entry, @Nullable Visit visit, @Nullable Pass pass, String says, String fits) {}

  /**
   * The readings of a book.
   *
   * @param referred the entries that something leads to
   */
  public Readings(Subject subject, Set<UUID> referred, Where where) {
    this.book = subject.book();
    this.words = subject.words();
    this.says = new ReadingWords(words, book);
    this.fits = new ReadingFits(words, subject.line());
    this.referred = Set.copyOf(referred);
    this.where = where;
    subject.line().locates().forEach(fit -> locates.put(fit.entry().uuid(), fit));
  }

  /** A table for each sort of reading, each under a heading of that rank. */
  public List<Tag> told(String rank) {
    take("locate", Visit::locates, says::of, this::located);
    take("exposure", Visit::exposures, says::of, this::located);
    take("tie", Visit::ties, says::of, tie -> fits.tie(tie.label()));
    take("level", Visit::levels, says::of, level -> fits.level(level.label()));
    takePasses("bend", Pass::bends, says::of);
    takePasses("counter_check", Pass::counterChecks, says::of);
    takePasses("finding", pass -> only(pass.findings()), says::of);
    take("pass", visit -> only(visit.passes()), says::of, _ -> Html.EMPTY);
    take("test", visit -> only(visit.tests()), says::of, _ -> Html.EMPTY);
    takeSite("node", only(book.site().nodes()), says::of);
    takeSite("reach", only(book.site().reaches()), says::of);
    takeSite("visit", only(book.visits()), says::of);
    List<Tag> told = new ArrayList<>();
    for (Group group : groups) {
      if (!group.rows().isEmpty()) {
        told.add(Tag.of(rank, words.word(group.heading())));
        told.add(table(group));
      }
    }
    return told;
  }

  private <E extends Entry> List<E> only(List<E> entries) {
    return entries.stream().filter(entry -> referred.contains(entry.id().uuid())).toList();
  }

  private String located(Entry entry) {
    LocateFit fit = locates.get(entry.id().uuid());
    return fit == null ? words.word("fit.unused") : fits.locateInFull(fit);
  }

  private <E extends Entry> void take(
      String sort, Function<Visit, List<E>> of, Function<E, String> said, Function<E, String> fit) {
    List<Row> rows = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (E entry : of.apply(visit)) {
        Pass pass = entry instanceof Pass itself ? itself : null;
        rows.add(new Row(entry, visit, pass, said.apply(entry), fit.apply(entry)));
      }
    }
    groups.add(new Group("readings." + sort, rows));
  }

  private <E extends Entry> void takePasses(
      String sort, Function<Pass, List<E>> of, Function<E, String> said) {
    List<Row> rows = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        for (E entry : of.apply(pass)) {
          rows.add(new Row(entry, visit, pass, said.apply(entry), Html.EMPTY));
        }
      }
    }
    groups.add(new Group("readings." + sort, rows));
  }

  private <E extends Entry> void takeSite(String sort, List<E> of, Function<E, String> said) {
    groups.add(
        new Group(
            "readings." + sort,
            of.stream()
                .map(entry -> new Row(entry, null, null, said.apply(entry), Html.EMPTY))
                .toList()));
  }

  private Tag table(Group group) {
    boolean fitted = group.rows().stream().anyMatch(row -> !row.fits().equals(Html.EMPTY));
    List<String> heads =
        fitted
            ? List.of("column.label", "column.read", "column.when", "column.stands", "column.fit")
            : List.of("column.label", "column.read", "column.when", "column.stands");
    Tag head = Tag.of("tr");
    heads.forEach(one -> head.add(Tag.of("th", words.word(one)).with("scope", "col")));
    Tag body = Tag.of("tbody");
    for (Row row : group.rows()) {
      Tag line = Tag.of("tr").with("id", Anchors.entry(row.entry().id().uuid()));
      line.add(Tag.of("th", row.entry().label()).with("scope", "row"));
      line.add(cell("column.read", row.says()));
      line.add(cell("column.when", when(row)));
      line.add(stands(row));
      if (fitted) {
        line.add(cell("column.fit", row.fits()));
      }
      body.add(line);
    }
    return Tag.of("table")
        .with("class", "readings")
        .add(Tag.of("caption", words.word(group.heading() + ".caption")))
        .add(Tag.of("thead").add(head))
        .add(body);
  }

  private Tag cell(String head, String text) {
    return Html.cell(text.isEmpty() ? Html.EMPTY : text).with("data-label", words.word(head));
  }

  /** The day, the crew, and the push it belongs to. */
  private String when(Row row) {
    Visit visit = row.visit();
    if (visit == null) {
      return row.entry() instanceof Visit itself
          ? ReadingWords.day(words, itself).orElse(itself.label())
          : "";
    }
    List<String> parts = new ArrayList<>();
    parts.add(ReadingWords.day(words, visit).orElse(visit.label()));
    if (!visit.crew().isEmpty()) {
      parts.add(String.join(", ", visit.crew()));
    }
    Pass pass = row.pass();
    if (pass != null && !pass.equals(row.entry())) {
      parts.add(words.say("readings.push", new Argument.Label(pass.label())));
    }
    return String.join("; ", parts);
  }

  /** File and line, and the form where it can be put right. */
  private Tag stands(Row row) {
    Optional<FilePlace> place = where.stands(row.entry().id().uuid());
    Visit visit = row.visit();
    Optional<String> form =
        visit == null ? Optional.empty() : where.form(visit, row.pass(), row.entry());
    String text = place.map(Readings::line).orElse("");
    Tag cell = form.isPresent() ? Tag.of("td", text) : cell("column.stands", text);
    form.ifPresent(
        address ->
            cell.text(text.isEmpty() ? "" : " ")
                .add(
                    Tag.of("a", words.word("readings.correct"))
                        .with("href", address)
                        .with(
                            "aria-label",
                            words.say(
                                "readings.correct_of", new Argument.Label(row.entry().label()))))
                .with("data-label", words.word("column.stands")));
    return cell;
  }

  private static String line(FilePlace place) {
    String file = place.file();
    if (place.line() == 0 || file == null) {
      return place.path();
    }
    int folder = Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\'));
    return file.substring(folder + 1) + ":" + place.line();
  }
}
