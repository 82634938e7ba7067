package daylight.report.page;

import daylight.line.book.Visit;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The marks of other services on record, and how near each comes to the drain. */
public final class ServiceTable {
  private final Subject subject;
  private final Words words;

  public ServiceTable(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  Tag section(Exhibits exhibits) {
    String caption = words.word("report.services.caption");
    return Html.section(Exhibits.SERVICES, words.word("report.services"))
        .addAll(told(exhibits.has(Exhibits.SERVICES) ? exhibits.caption("services", caption) : ""));
  }

  /** What to beware of, and the table where anything is on record, under a caption. */
  public List<Tag> told(String caption) {
    List<ServiceFound> all = Digger.services(subject.book(), subject.line());
    List<Tag> told = new ArrayList<>();
    if (all.isEmpty()) {
      told.add(Tag.of("p", words.word("report.services.none")));
      return told;
    }
    told.add(
        Tag.of("div")
            .with("class", "care")
            .add(
                Tag.of("ul")
                    .add(Tag.of("li", words.word("caution.hand_dig")))
                    .add(Tag.of("li", words.word("report.services.depth")))
                    .add(Tag.of("li", words.word("report.services.others")))));
    List<String> heads =
        List.of(
            "column.label", "column.service", "column.crosses", "column.nearest", "column.seen");
    told.add(
        Html.table(
            caption,
            heads.stream().map(words::word).toList(),
            all.stream().map(this::row).map(Html::row).toList()));
    return told;
  }

  private List<String> row(ServiceFound found) {
    return List.of(
        found.mark().label(),
        words.word("paint." + found.mark().service().name().toLowerCase(java.util.Locale.ROOT)),
        crosses(found),
        nearest(found),
        seen(found.visit()));
  }

  private String crosses(ServiceFound found) {
    if (found.points().isEmpty()) {
      return words.word("report.services.open");
    }
    if (found.crossings().isEmpty()) {
      return Html.EMPTY;
    }
    List<String> places = new ArrayList<>();
    for (Crossing crossing : found.crossings()) {
      places.add(
          words.say(
              "report.services.crosses",
              new Argument.Text(subject.distance(crossing.place())),
              new Argument.Length(Measured.Z95 * crossing.along().sd())));
    }
    return words.beside(places);
  }

  private String nearest(ServiceFound found) {
    ServiceFound.@Nullable Nearest nearest = found.nearest();
    if (nearest == null || !found.crossings().isEmpty()) {
      return Html.EMPTY;
    }
    return words.say(
        "report.services.nearest",
        new Argument.Length(nearest.away()),
        new Argument.Text(subject.distance(nearest.place())),
        new Argument.Length(nearest.least()));
  }

  private String seen(String visit) {
    LocalDate date =
        subject.book().visits().stream()
            .filter(one -> one.label().equals(visit))
            .map(Visit::date)
            .findFirst()
            .orElse(null);
    return date == null ? visit : words.figure(new Argument.Day(date));
  }
}
