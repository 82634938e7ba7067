package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.Immediate;
import daylight.line.condition.Verdict;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.fall.Held;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Argument;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the judgement says of what is drawn: the worst findings, and what holds water. */
final class SideNotes {
  /** As many findings as are told; the table of the report has them all. */
  private static final int MOST = 4;

  private final Subject subject;
  private final Words words;
  private final Route route;

  SideNotes(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.route = subject.route();
  }

  /** A finding with the class that is worst. */
  private record Graded(PlacedFinding placed, Grade grade, boolean atOnce) {}

  /** The worst findings, each with the number and word of its class. */
  void grades(Sheet sheet) {
    List<Graded> worst =
        Captions.drawn(subject).stream()
            .flatMap(placed -> graded(placed).stream())
            .filter(one -> one.atOnce() || one.grade() != Grade.WITH_OTHER_WORKS)
            .sorted(
                Comparator.comparing((Graded one) -> !one.atOnce())
                    .thenComparingInt(one -> one.grade().number()))
            .limit(MOST)
            .toList();
    List<String> texts = new ArrayList<>();
    for (Graded one : worst) {
      String kind = words.shortKind(one.placed().finding().kind());
      Argument number = new Argument.Number(one.grade().number());
      Argument word = new Argument.Term(one.grade().key());
      String key = one.atOnce() ? "draw.worst.immediate" : "draw.worst.class";
      texts.add(words.say(key, new Argument.Text(kind), number, word));
    }
    List<Place> places = worst.stream().map(one -> one.placed().from()).toList();
    sheet.spare(() -> list(sheet, "draw.worst", places, texts));
  }

  private Optional<Graded> graded(PlacedFinding placed) {
    FindingGrade grade = subject.rules().grade(placed, subject.line());
    boolean atOnce = grade.immediate() instanceof Immediate.Yes;
    return grade.verdicts().values().stream()
        .filter(Verdict.Graded.class::isInstance)
        .map(verdict -> ((Verdict.Graded) verdict).grade())
        .min(Comparator.comparingInt(Grade::number))
        .or(() -> atOnce ? Optional.of(Grade.AT_ONCE) : Optional.empty())
        .map(worst -> new Graded(placed, worst, atOnce));
  }

  /** What holds the water that was seen. */
  void water(Sheet sheet) {
    List<Place> places = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    for (WaterSeen water : subject.answers().fall().water()) {
      if (route.station(water.from()).isPresent()) {
        places.add(water.from());
        texts.add(held(water.held()));
      }
    }
    list(sheet, "draw.held", places, texts);
  }

  private String held(Held held) {
    Held.Share first = held.shares().getFirst();
    return words.say(
        held.found().isPresent() ? "draw.held.by" : "draw.held.open",
        new Argument.Term(first.cause().key()),
        new Argument.Probability(first.probability()));
  }

  private void list(Sheet sheet, String heading, List<Place> places, List<String> texts) {
    if (texts.isEmpty()) {
      return;
    }
    sheet.sideHeading(words.word(heading));
    List<String> heads =
        places.stream().map(place -> Captions.distance(words, route, place)).toList();
    sheet.sideList(heads, texts);
  }
}
