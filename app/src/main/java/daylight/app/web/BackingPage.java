package daylight.app.web;

import daylight.line.book.Bend;
import daylight.line.book.Entry;
import daylight.line.book.Exposure;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.measure.FilePlace;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.page.Readings;
import daylight.report.page.RulesUsed;
import daylight.report.page.WhyList;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What stands behind the answers: every figure and why, every reading, every rule. */
final class BackingPage {
  /** Its name beside the page of the answers. */
  static final String NAME = "why";

  private final Frame frame;
  private final Property property;
  private final Reading.Answered answered;
  private final Subject subject;
  private final Words words;

  BackingPage(int properties, Property property, Reading.Answered answered, Wish wish) {
    this.property = property;
    this.answered = answered;
    this.subject = answered.subject();
    this.words = subject.words();
    this.frame = new Frame(words, properties).under(property.home()).as(wish);
  }

  String write() {
    WhyList why = new WhyList(subject);
    List<Tag> sections = new ArrayList<>(Titles.stops(subject, "h2"));
    sections.add(
        Titles.header(subject)
            .add(
                Tag.of("p")
                    .add(
                        Tag.of("a", words.word("web.why.back"))
                            .with("class", "button")
                            .with("href", property.address("")))));
    add(sections, "why", why.told("h3"));
    add(sections, "readings", new Readings(subject, why.entries(), new Places()).told("h3"));
    add(sections, "rules", new RulesUsed(subject, why).told());
    return frame.write(subject.book().site().name(), sections);
  }

  private void add(List<Tag> sections, String id, List<Tag> told) {
    if (!told.isEmpty()) {
      sections.add(
          Pieces.section(id, words.word("web." + id))
              .add(Pieces.paragraph("quiet", words.word("web." + id + ".about")))
              .addAll(told));
    }
  }

  /** In the file of a book that was named; in the forms of an archive, whose file is nobody's. */
  private final class Places implements Readings.Where {
    @Override
    public Optional<FilePlace> stands(UUID entry) {
      return property.home() == null ? answered.place(entry) : Optional.empty();
    }

    @Override
    public Optional<String> form(Visit visit, @Nullable Pass pass, Entry entry) {
      Home home = property.home();
      if (home == null) {
        return Optional.empty();
      }
      String ofVisit = home.address() + "/visit/" + visit.id().uuid();
      return switch (entry) {
        case Locate _, Exposure _, Tie _ -> Optional.of(ofVisit + "/walk");
        case Level _ -> Optional.of(ofVisit + "/levels");
        case Bend _, Finding _, Pass.CounterCheck _ ->
            Optional.ofNullable(pass).map(of -> home.address() + "/pass/" + of.id().uuid());
        default -> Optional.empty();
      };
    }
  }
}
