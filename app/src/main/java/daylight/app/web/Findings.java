package daylight.app.web;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.urgency.HowSoon;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.CodeWords;
import daylight.report.words.FindingWords;
import daylight.report.words.GradeWords;
import daylight.report.words.SoonWords;
import daylight.report.words.Words;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** What was seen in the pipe: a table of it with its pictures. */
final class Findings {
  private final Subject subject;
  private final Words words;
  private final FindingWords said;
  private final CodeWords codes;
  private final Moments moments;
  private final IdentityHashMap<PlacedFinding, HowSoon> soon = new IdentityHashMap<>();
  private final Sift sift;
  private final boolean pictured;

  Findings(Subject subject, Moments moments) {
    this.subject = subject;
    this.words = subject.words();
    this.said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    this.codes = new CodeWords(words, subject.codes());
    this.moments = moments;
    this.sift = new Sift(words, this::howSoon);
    this.pictured =
        Captions.findings(subject).stream().anyMatch(finding -> moments.knows(finding.finding()));
  }

  Tag section() {
    Tag section = Pieces.section("findings", words.word("report.findings"));
    List<PlacedFinding> findings = Captions.findings(subject);
    Tag log =
        findings.isEmpty()
            ? none()
            : Tag.of("div")
                .addAll(sift.controls(findings))
                .add(table(findings))
                .add(Tag.of("p", new GradeWords(words).scheme(subject.rules().grades())))
                .add(Tag.of("p", new SoonWords(words).rule(subject.rules().urgency().id())));
    if (!findings.isEmpty() && !subject.codes().isEmpty()) {
      log.add(Tag.of("p", codes.whose()));
    }
    return section.add(log);
  }

  private Tag none() {
    return Tag.of("p", words.word("report.findings.none"));
  }

  private Tag table(List<PlacedFinding> findings) {
    Tag head = Tag.of("tr");
    for (String column :
        List.of(
            "what", "code", "picture", "where", "clock", "size", "grade", "urgency", "remark")) {
      if (shown(column)) {
        head.add(Tag.of("th", words.word("column." + column)).with("scope", "col"));
      }
    }
    Tag body = Tag.of("tbody");
    findings.forEach(finding -> body.add(row(finding)));
    String caption =
        words.say("report.findings.caption", new Argument.Label(subject.route().from()));
    return Tag.of("table")
        .with("class", "log")
        .add(Tag.of("caption", caption))
        .add(Tag.of("thead").add(head))
        .add(body);
  }

  private boolean shown(String column) {
    return switch (column) {
      case "picture" -> pictured;
      case "code" -> !subject.codes().isEmpty();
      default -> true;
    };
  }

  private Tag row(PlacedFinding placed) {
    String label = placed.finding().label();
    String what = said.what(placed);
    Tag row =
        Tag.of("tr")
            .with("id", "finding-" + placed.finding().id().uuid())
            .with("data-place", placed.from().reach())
            .with("data-distance", placed.from().distance())
            .with("data-show", words.say("web.show", new Argument.Label(label)));
    sift.mark(row, placed)
        .add(
            Tag.of("th")
                .with("scope", "row")
                .add(
                    Tag.of("div")
                        .with("class", "seen-as")
                        .add(Tag.of("span", label).with("class", "label"))
                        .text(" ")
                        .add(Tag.of("span", what))));
    if (shown("code")) {
      row.add(cell("column.code", codes.code(placed.finding())));
    }
    if (pictured) {
      row.add(picture(placed, what));
    }
    return row.add(cell("column.where", Optional.of(said.where(placed))))
        .add(cell("column.clock", said.clock(placed)))
        .add(cell("column.size", said.size(placed)))
        .add(cell("column.grade", graded(placed)))
        .add(cell("column.urgency", soon(placed)))
        .add(cell("column.remark", said.remark(placed)));
  }

  private Optional<String> graded(PlacedFinding placed) {
    return new GradeWords(words).grade(subject.rules().grade(placed, subject.line()));
  }

  private Optional<String> soon(PlacedFinding placed) {
    return new SoonWords(words).say(howSoon(placed));
  }

  /** Worked out once for each, however often it is asked. */
  private HowSoon howSoon(PlacedFinding placed) {
    return soon.computeIfAbsent(
        placed, one -> subject.rules().howSoon(one, subject.book(), subject.line()));
  }

  private Tag cell(String head, Optional<String> text) {
    return Tag.of("td", text.orElse("–"))
        .with("class", text.isPresent() ? "said" : "empty")
        .with("data-label", words.word(head));
  }

  private Tag picture(PlacedFinding placed, String what) {
    Tag cell = Tag.of("td").with("class", "picture");
    moments.of(placed, what + ", " + said.where(placed)).ifPresent(cell::add);
    return cell;
  }
}
