package daylight.app;

import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.fall.WaterCause;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.report.Handout;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was so on the invented site whose readings a book holds, and whether the answer holds it.
 *
 * <ul>
 *   <li>{@code 50 ft long}: the first line, within 1 % and two feet
 *   <li>{@code 2.4 ft to 2.9 ft deep}: the least and the greatest depth within three standard
 *       uncertainties of the answer
 *   <li>{@code doubts KEY}, {@code names LABEL}: something contradicts itself, and what
 *   <li>{@code no doubts}
 *   <li>{@code stops short of NODE}: the line is not said to run to a node that nobody reached
 *   <li>{@code held by CAUSE}: what holds the water that was seen, or {@code nobody knows what}
 *   <li>{@code freezes}, {@code does not freeze}: water in the pipe in a winter as noted
 *   <li>{@code work to do}: what was found asks for work
 * </ul>
 */
final class CorpusTruth {
  private static final Pattern LONG = Pattern.compile("([\\d.]+) (ft|m) long");
  private static final Pattern DEEP =
      Pattern.compile("([\\d.]+) (?:ft|m) to ([\\d.]+) (ft|m) deep");

  /** Readings of depth are rounded to a tenth of a foot when they are made. */
  private static final double ROUNDING = 0.05;

  private CorpusTruth() {}

  /** What the answer says otherwise. */
  static List<String> violated(CorpusBook book, Handout handout) {
    return book.truth().stream().filter(truth -> !holds(truth, handout)).toList();
  }

  private static boolean holds(String truth, Handout handout) {
    Answer where = handout.answers().lines().getFirst().to(Question.WHERE);
    Matcher length = LONG.matcher(truth);
    if (length.matches()) {
      double wanted = metres(length.group(1), length.group(2));
      Optional<Double> said = CorpusLine.length(where, FigureKey.LENGTH);
      return said.isPresent() && Math.abs(said.get() - wanted) <= 0.01 * wanted + 0.61;
    }
    Matcher deep = DEEP.matcher(truth);
    if (deep.matches()) {
      return near(where, FigureKey.DEPTH_LEAST, metres(deep.group(1), deep.group(3)))
          && near(where, FigureKey.DEPTH_MOST, metres(deep.group(2), deep.group(3)));
    }
    List<Statement> doubts = handout.line().doubts();
    if (truth.equals("no doubts")) {
      return doubts.isEmpty();
    }
    String word = truth.substring(truth.indexOf(' ') + 1);
    if (truth.startsWith("doubts ")) {
      return doubts.stream().anyMatch(doubt -> doubt.key().key().endsWith("." + word));
    }
    if (truth.startsWith("names ")) {
      return doubts.stream().anyMatch(doubt -> names(doubt.arguments(), word));
    }
    if (truth.startsWith("stops short of ")) {
      boolean followed =
          List.of(AnswerKey.WHERE_FOLLOWED, AnswerKey.WHERE_FOLLOWED_FLAT)
              .contains(where.headline().key());
      return followed && where.reasons().stream().noneMatch(r -> r.key() == AnswerKey.WHERE_OUTLET);
    }
    if (truth.equals("work to do")) {
      Answer now = handout.answers().lines().getFirst().to(Question.WHAT_NOW);
      return !List.of(AnswerKey.NOW_MEASURE, AnswerKey.NOW_NOTHING).contains(now.headline().key());
    }
    Answer freeze = handout.answers().lines().getFirst().to(Question.FREEZE);
    if (truth.equals("freezes")) {
      return List.of(AnswerKey.FREEZE_WATER, AnswerKey.FREEZE_OUTLET)
          .contains(freeze.headline().key());
    }
    if (truth.equals("does not freeze")) {
      return freeze.state() == State.WITHIN_LIMITS;
    }
    if (truth.startsWith("held by ")) {
      String cause = truth.substring("held by ".length());
      Optional<String> found =
          handout
              .answers()
              .fall()
              .water()
              .getFirst()
              .held()
              .found()
              .map(share -> said(share.cause()));
      return found.orElse("nobody knows what").equals(cause);
    }
    throw new IllegalArgumentException("not a truth: " + truth);
  }

  private static String said(WaterCause cause) {
    return cause.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static boolean near(Answer where, FigureKey key, double wanted) {
    for (Evidence.Figure figure : CorpusLine.figures(where, key)) {
      if (figure.figure() instanceof Argument.UncertainLength(Measured said)) {
        return Math.abs(said.value() - wanted) <= 3 * said.sd() + ROUNDING;
      }
    }
    return false;
  }

  private static boolean names(List<Argument> arguments, String label) {
    return arguments.stream()
        .anyMatch(
            argument ->
                switch (argument) {
                  case Argument.Label(String named) -> named.equals(label);
                  case Argument.Several(List<Argument> items) -> names(items, label);
                  case Argument.Either(List<Argument> items) -> names(items, label);
                  case Argument.Said(Statement said) -> names(said.arguments(), label);
                  default -> false;
                });
  }

  private static double metres(String number, String unit) {
    return Double.parseDouble(number) * (unit.equals("ft") ? 0.3048 : 1);
  }
}
