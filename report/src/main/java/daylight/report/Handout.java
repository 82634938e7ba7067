package daylight.report;

import daylight.line.answer.Answers;
import daylight.line.answer.Rules;
import daylight.line.book.FieldBook;
import daylight.line.course.Line;
import daylight.line.measure.Complaint;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import java.util.List;

/**
 * What is to be handed over.
 *
 * @param line estimated from the book
 * @param answers judged from both
 * @param rules by which they were judged
 * @param complaints about the book that do not stand in the way of answering it
 * @param language of the reader
 * @param shown the reader's units
 */
public record Handout(
    FieldBook book,
    Line line,
    Answers answers,
    Rules rules,
    List<Complaint> complaints,
    Language language,
    Shown shown) {
  public Handout {
    complaints = List.copyOf(complaints);
  }
}
