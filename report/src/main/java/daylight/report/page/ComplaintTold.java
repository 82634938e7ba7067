package daylight.report.page;

import daylight.line.answer.Caution;
import daylight.line.answer.Opening;
import daylight.line.cause.Strength;
import daylight.line.measure.Statement;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The complaint in the owner's words, and what may be behind it. */
public final class ComplaintTold {
  private final Opening opening;
  private final Words words;

  /** Of a subject. */
  public ComplaintTold(Subject subject) {
    this.opening = subject.answers().opening();
    this.words = subject.words();
  }

  /**
   * Everything under its heading.
   *
   * @param rank the tag of the headings within
   * @param below the tag of the headings within those
   */
  public List<Tag> told(String rank, String below) {
    List<Tag> told = new ArrayList<>();
    String own = opening.words();
    if (own != null) {
      told.add(Tag.of("blockquote").add(Tag.of("p", words.quoted(own))));
    } else if (opening.told().isEmpty()) {
      told.add(Tag.of("p", words.word("report.complaint.missing")));
    }
    told.addAll(kinds());
    told.addAll(opening.ranked().isEmpty() ? unranked(rank) : ranked(rank, below));
    return told;
  }

  /**
   * What may be behind it, under a heading that says so.
   *
   * @param rank the tag of the headings within
   */
  List<Tag> behind(String rank) {
    List<Tag> told = new ArrayList<>(kinds());
    if (opening.ranked().isEmpty()) {
      told.addAll(unranked(rank).subList(1, 4));
    } else {
      told.addAll(ranked(rank, rank).stream().skip(1).toList());
    }
    return told;
  }

  private List<Tag> kinds() {
    return opening.told().isEmpty() ? List.of() : List.of(Tag.of("p", sentences(opening.told())));
  }

  private List<Tag> unranked(String rank) {
    return List.of(
        Tag.of(rank, words.word("report.cause")),
        said(opening.causes(), "report.cause.missing"),
        Tag.of(rank, words.word("report.against")),
        said(opening.against(), "report.against.missing"));
  }

  private Tag said(List<Statement> statements, String none) {
    return statements.isEmpty()
        ? Tag.of("p", words.word(none))
        : Html.list(statements.stream().map(words::say).toList());
  }

  private List<Tag> ranked(String rank, String below) {
    List<Tag> told = new ArrayList<>();
    told.add(Tag.of(rank, words.word("report.cause")));
    Map<Opening.Ranked, List<String>> alike = new LinkedHashMap<>();
    for (Opening.Ranked cause : opening.ranked()) {
      alike.computeIfAbsent(unnamed(cause), first -> new ArrayList<>()).add(name(cause));
    }
    alike.forEach((cause, names) -> told.add(cause(cause, names, below)));
    List<Tag> care = Html.items(opening.cautions().stream().map(Caution::key).map(words::word));
    if (!care.isEmpty()) {
      told.add(
          Tag.of("div")
              .with("class", "care")
              .add(Tag.of(below, words.word("report.take_care")))
              .add(Tag.of("ul").addAll(care)));
    }
    told.add(Tag.of("p", words.word("report.cause.note")).with("class", "quiet"));
    return told;
  }

  /** Causes of which the same is known are told together. */
  private static Opening.Ranked unnamed(Opening.Ranked cause) {
    return new Opening.Ranked(
        "", cause.strength(), cause.speaksFor(), cause.speaksAgainst(), cause.missing());
  }

  /** A cause that no message knows is shown by its id; it came from a company's table. */
  private String name(Opening.Ranked cause) {
    String key = "cause." + cause.cause();
    return words.has(key) ? words.word(key) : cause.cause();
  }

  /** How likely a cause is, and which it is. */
  String named(Opening.Ranked cause) {
    return words.named(words.word(cause.strength()), name(cause));
  }

  private Tag cause(Opening.Ranked cause, List<String> names, String below) {
    Tag told =
        Tag.of("div")
            .with("class", "cause " + cause.strength().name().toLowerCase(Locale.ROOT))
            .add(Tag.of(below, words.named(words.word(cause.strength()), words.beside(names))));
    clues(told, "report.cause.for", cause.speaksFor());
    clues(told, "report.cause.contra", cause.speaksAgainst());
    if (cause.strength() != Strength.UNLIKELY) {
      clues(told, "report.cause.ask", cause.missing());
    }
    return told;
  }

  private void clues(Tag told, String heading, List<Statement> clues) {
    if (!clues.isEmpty()) {
      told.add(
          Tag.of("p")
              .add(
                  Tag.of("span", words.named(words.word(heading), "").strip())
                      .with("class", "quiet"))
              .text(" " + sentences(clues)));
    }
  }

  private String sentences(List<Statement> all) {
    return String.join(" ", all.stream().map(words::say).map(Words::capitalised).toList());
  }
}
