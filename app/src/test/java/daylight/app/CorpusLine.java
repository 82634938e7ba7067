package daylight.app;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.answer.StopOrder;
import daylight.line.book.Surroundings;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Key;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.line.proving.Connection;
import daylight.line.proving.HeldTest;
import daylight.line.proving.Passage;
import daylight.line.proving.Proving;
import daylight.report.Handout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What Daylight answers to a small book, in one line that can be compared.
 *
 * <pre>{@code
 * stop=foreign-pipe | drain: where=answered/sure 50 ft 2.4..3.0 deep | clear=within_limits/sure 100 % |
 * sound=no/sure 1 | drain=no/sure 0.2 % drain_too_flat | now=now_measure | doubts=cable_unaccounted
 * }</pre>
 *
 * <p>Before the lines stands the likeliest cause of the complaint, as {@code
 * behind=roots/probable}, where it is known what kind of complaint it is. Lengths are given to the
 * foot or the half metre, depths to a fifth of a foot or to 5 cm, slopes to half a per cent: coarse
 * enough that the last bits of a platform do not show, fine enough that a technician would notice
 * the next step. Whether it copes is told where that can be said; whether it freezes, where a
 * winter or a soil was noted.
 */
final class CorpusLine {
  private static final double FOOT = 0.3048;

  private final boolean feet;

  private CorpusLine(Shown shown) {
    this.feet = shown != Shown.METRES;
  }

  /** The line of what became of a book. */
  static String of(Job.Outcome outcome) {
    return switch (outcome) {
      case Job.Outcome.Refused(List<Complaint> complaints, Shown _) ->
          "refused " + complaints.getFirst().code().key();
      case Job.Outcome.Answered(Handout handout, var _, var _, var _, var _) ->
          new CorpusLine(handout.shown()).line(handout);
    };
  }

  private String line(Handout handout) {
    List<String> parts = new ArrayList<>();
    for (StopOrder stop : handout.answers().stops()) {
      parts.add("stop=" + stop.finding().finding().kind());
    }
    handout.answers().opening().ranked().stream()
        .findFirst()
        .ifPresent(cause -> parts.add("behind=" + cause.cause() + "/" + lower(cause.strength())));
    for (Answers.LineAnswers line : handout.answers().lines()) {
      parts.add(line.line() + ": where=" + state(line.to(Question.WHERE)) + where(line));
      parts.add("clear=" + state(line.to(Question.CLEAR)) + clear(line.to(Question.CLEAR)));
      parts.add("sound=" + state(line.to(Question.SOUND)) + sound(line.to(Question.SOUND)));
      parts.add("drain=" + state(line.to(Question.DRAIN)) + drain(line.to(Question.DRAIN)));
      cope(line.to(Question.COPE)).ifPresent(parts::add);
      if (frostAsked(handout)) {
        Answer freeze = line.to(Question.FREEZE);
        parts.add("freeze=" + state(freeze) + " " + last(freeze.headline().key()));
      }
      parts.add("now=" + last(line.to(Question.WHAT_NOW).headline().key()));
    }
    List<String> tests = tests(handout.answers().proving());
    if (!tests.isEmpty()) {
      parts.add("tests=" + String.join(",", tests));
    }
    TreeSet<String> doubts = new TreeSet<>();
    for (Statement doubt : handout.line().doubts()) {
      doubts.add(last(doubt.key()));
    }
    parts.add("doubts=" + (doubts.isEmpty() ? "none" : String.join(",", doubts)));
    return String.join(" | ", parts);
  }

  /** Whether it freezes is told where somebody noted a winter or a soil. */
  private static boolean frostAsked(Handout handout) {
    Surroundings around = handout.book().site().surroundings();
    return around.climate() != null || around.soil() != null;
  }

  /** Whether it copes, where that can be said. */
  private static Optional<String> cope(Answer answer) {
    return answer.state() == State.CANNOT_SAY_YET
        ? Optional.empty()
        : Optional.of("cope=" + state(answer) + " " + last(answer.headline().key()));
  }

  /** Hold tests, what did not go as the book says, and how it is known what comes in where. */
  private static List<String> tests(Proving proving) {
    List<String> tests = new ArrayList<>();
    for (HeldTest held : proving.holds()) {
      String said = held.deciding().map(one -> lower(one.verdict())).orElse("too_little_known");
      tests.add(held.test().label() + " " + said);
    }
    for (Passage passage : proving.passages()) {
      if (passage.meaning() != Passage.Meaning.AS_THE_BOOK_SAYS) {
        tests.add(passage.test().label() + " " + lower(passage.meaning()));
      }
    }
    for (Connection one : proving.connections()) {
      boolean doubted = !one.against().isEmpty();
      tests.add(one.source() + " " + lower(one.known()) + (doubted ? " doubted" : ""));
    }
    return tests;
  }

  private static String state(Answer answer) {
    return lower(answer.state()) + "/" + lower(answer.sure());
  }

  private String where(Answers.LineAnswers line) {
    Answer where = line.to(Question.WHERE);
    Optional<Double> length = length(where, FigureKey.LENGTH);
    Optional<Double> least = length(where, FigureKey.DEPTH_LEAST);
    Optional<Double> most = length(where, FigureKey.DEPTH_MOST);
    String run = length.map(metres -> " " + run(metres)).orElse("");
    return least.isEmpty() || most.isEmpty()
        ? run
        : run + " " + depth(least.get()) + ".." + depth(most.get()) + " deep";
  }

  private String run(double metres) {
    return feet ? step(metres / FOOT, 1) + " ft" : step(metres, 0.5) + " m";
  }

  private String depth(double metres) {
    return feet ? step(metres / FOOT, 0.2) : step(metres, 0.05);
  }

  private static String clear(Answer answer) {
    return share(answer, FigureKey.FILLED)
        .or(() -> share(answer, FigureKey.SEEN_SHARE))
        .map(share -> " " + step(100 * share, 5) + " %")
        .orElse("");
  }

  private static String sound(Answer answer) {
    for (Evidence.Figure figure : figures(answer, FigureKey.COUNT)) {
      if (figure.figure() instanceof Argument.Count(long count)) {
        return " " + count;
      }
    }
    return "";
  }

  private static String drain(Answer answer) {
    String key = " " + last(answer.headline().key());
    for (Argument argument : answer.headline().arguments()) {
      if (argument instanceof Argument.UncertainSlope(var slope)) {
        return " " + step(100 * slope.value(), 0.5) + " %" + key;
      }
    }
    return key;
  }

  /** The first figure of a sort that is a length, in metres. */
  static Optional<Double> length(Answer answer, FigureKey key) {
    for (Evidence.Figure figure : figures(answer, key)) {
      if (figure.figure() instanceof Argument.Length(double metres)) {
        return Optional.of(metres);
      }
      if (figure.figure() instanceof Argument.UncertainLength(var measured)) {
        return Optional.of(measured.value());
      }
    }
    return Optional.empty();
  }

  private static Optional<Double> share(Answer answer, FigureKey key) {
    for (Evidence.Figure figure : figures(answer, key)) {
      if (figure.figure() instanceof Argument.Quantity(var dimension, double value)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  static List<Evidence.Figure> figures(Answer answer, FigureKey key) {
    return answer.evidence().stream()
        .filter(Evidence.Figure.class::isInstance)
        .map(Evidence.Figure.class::cast)
        .filter(figure -> figure.what() == key)
        .toList();
  }

  private static String step(double value, double step) {
    double rounded = Math.rint(value / step) * step;
    String digits = step < 0.1 ? "%.2f" : step < 1 ? "%.1f" : "%.0f";
    return String.format(Locale.ROOT, digits, rounded == 0 ? 0.0 : rounded);
  }

  private static String last(Key key) {
    return last(key.key());
  }

  private static String last(String key) {
    return key.substring(key.lastIndexOf('.') + 1);
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
