package daylight.app.web;

import daylight.line.book.FieldBook;
import daylight.line.book.Visit;
import daylight.report.draw.Captions;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A visit that can be judged.
 *
 * @param label as the book names it
 * @param word the same in an address, where each visit of a book has another
 */
record VisitChoice(String label, String word) {
  /** Stands in an address between a book and a visit; in neither of the two. */
  static final String APART = "--";

  /** All visits of a book, in its order. */
  static List<VisitChoice> of(FieldBook book) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    List<VisitChoice> choices = new ArrayList<>();
    for (Visit visit : book.visits()) {
      String word = Property.word(visit.label());
      int times = taken.merge(word, 1, Integer::sum);
      choices.add(new VisitChoice(visit.label(), times == 1 ? word : word + "-" + times));
    }
    return choices;
  }

  /** Links to the page of each visit; none where there is but one. */
  static List<Tag> links(Property property, Reading.Answered answered) {
    FieldBook book = answered.handout().book();
    List<VisitChoice> choices = of(book);
    if (choices.size() < 2) {
      return List.of();
    }
    Words words = answered.subject().words();
    String judged = answered.handout().answers().visit();
    Tag group =
        Tag.of("nav").with("class", "switch visits").with("aria-label", words.word("web.visits"));
    List<String> days = book.visits().stream().map(one -> Captions.visit(words, one)).toList();
    for (int i = 0; i < choices.size(); i++) {
      VisitChoice choice = choices.get(i);
      String day = days.get(i);
      boolean alone = Collections.frequency(days, day) == 1;
      Tag link =
          Tag.of("a", alone ? day : day + " (" + choice.label() + ")")
              .with("href", address(property, choice));
      group.add(choice.label().equals(judged) ? link.with("aria-current", "page") : link);
    }
    return List.of(Tag.of("p", words.word("web.visits.why")).with("class", "quiet"), group);
  }

  private static String address(Property property, VisitChoice choice) {
    int apart = property.name().lastIndexOf(APART);
    String book = apart < 0 ? property.name() : property.name().substring(0, apart);
    return "/property/" + book + APART + choice.word() + "/";
  }
}
