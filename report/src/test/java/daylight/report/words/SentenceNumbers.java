package daylight.report.words;

import daylight.line.answer.Answer;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Finds numbers that a sentence says and its evidence does not hold. */
public final class SentenceNumbers {
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,/]\\d+)*");

  private SentenceNumbers() {}

  /**
   * The numbers said by the headline and the reasons of an answer that stand in none of its
   * evidence. What is missing and what to be careful about says no figures of the line.
   */
  public static List<String> unfounded(Answer answer, Words words) {
    Set<String> founded = new TreeSet<>();
    EvidenceWords evidence = new EvidenceWords(words, place -> "");
    answer.evidence().forEach(one -> founded.addAll(numbers(evidence.say(one))));
    List<Statement> said = new ArrayList<>(answer.reasons());
    said.addFirst(answer.headline());
    return said.stream()
        .flatMap(statement -> numbers(words.say(statement)).stream())
        .filter(number -> !founded.contains(number))
        .toList();
  }

  static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group).toList();
  }
}
