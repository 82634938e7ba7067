package daylight.report;

import daylight.line.answer.Answers;
import daylight.line.answer.Rules;
import daylight.line.book.FieldBook;
import daylight.line.condition.CodeTable;
import daylight.line.course.Line;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Shown;
import daylight.report.draw.PlanTurn;
import daylight.report.draw.Subject;
import daylight.report.page.Paper;
import daylight.report.page.Sender;
import daylight.report.shots.Shots;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.List;

/**
 * What is to be handed over.
 *
 * @param line estimated from the book
 * @param answers judged from both
 * @param rules by which they were judged
 * @param codes by which somebody else calls what was found
 * @param shots what footage lends
 * @param complaints about the book that do not stand in the way of answering it
 * @param language of the reader
 * @param shown the reader's units
 * @param paper the sheet for what is printed
 * @param plan which way up the plan lies
 * @param sender whose report it is
 */
public record Handout(
    FieldBook book,
    Line line,
    Answers answers,
    Rules rules,
    CodeTable codes,
    Shots shots,
    List<Complaint> complaints,
    Language language,
    Shown shown,
    Paper paper,
    PlanTurn plan,
    Sender sender) {
  public Handout {
    complaints = List.copyOf(complaints);
  }

  /** One from nobody, whose plan lies as it fits. */
  public Handout(
      FieldBook book,
      Line line,
      Answers answers,
      Rules rules,
      CodeTable codes,
      Shots shots,
      List<Complaint> complaints,
      Language language,
      Shown shown,
      Paper paper) {
    this(
        book,
        line,
        answers,
        rules,
        codes,
        shots,
        complaints,
        language,
        shown,
        paper,
        PlanTurn.AS_IT_FITS,
        Sender.NOBODY);
  }

  /** One in our words alone. */
  public Handout(
      FieldBook book,
      Line line,
      Answers answers,
      Rules rules,
      Shots shots,
      List<Complaint> complaints,
      Language language,
      Shown shown,
      Paper paper) {
    this(book, line, answers, rules, CodeTable.NONE, shots, complaints, language, shown, paper);
  }

  /** The same with its plan another way up. */
  public Handout turned(PlanTurn way) {
    return new Handout(
        book, line, answers, rules, codes, shots, complaints, language, shown, paper, way, sender);
  }

  /** The same from somebody. */
  public Handout from(Sender whose) {
    return new Handout(
        book, line, answers, rules, codes, shots, complaints, language, shown, paper, plan, whose);
  }

  /** The same for another reader: nothing is estimated or judged anew. */
  public Handout in(Language readers, Shown units) {
    return new Handout(
        book, line, answers, rules, codes, shots, complaints, readers, units, paper, plan, sender);
  }

  /** What is drawn and told of it, in the reader's language and units. */
  public Subject subject() {
    return new Subject(
        book,
        line,
        answers,
        rules,
        codes,
        shots,
        complaints.stream().map(Handout::withoutFolder).toList(),
        Words.of(language, shown),
        plan);
  }

  /** What is handed over names a file, not the folders of the machine that it lay on. */
  private static Complaint withoutFolder(Complaint complaint) {
    FilePlace place = complaint.place();
    String file = place.file();
    if (file == null) {
      return complaint;
    }
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    return new Complaint(
        complaint.code(),
        place.withPosition(name, place.line(), place.column()),
        complaint.arguments());
  }
}
