package daylight.line.answer;

import daylight.line.fall.Fall;
import daylight.line.proving.Proving;
import java.util.List;

/**
 * What the field book says to the owner.
 *
 * @param visit the label of the visit whose findings were judged
 * @param stops stop orders, first in every output
 * @param opening the complaint and its probable cause
 * @param lines the seven answers for each line
 * @param cautions that go with all of it
 * @param fall the figures of the fall that the answers rest on
 * @param proving what the tests proved, and where what comes in
 * @param pumps the pumps at work that "Does it cope" rests on
 * @param digs where to dig for what asks for work, in the order of the work; none on a line that
 *     has a stop order
 */
public record Answers(
    String visit,
    List<StopOrder> stops,
    Opening opening,
    List<LineAnswers> lines,
    List<Caution> cautions,
    Fall fall,
    Proving proving,
    List<PumpAtWork> pumps,
    List<DigPlace> digs) {
  public Answers {
    stops = List.copyOf(stops);
    lines = List.copyOf(lines);
    cautions = List.copyOf(cautions);
    pumps = List.copyOf(pumps);
    digs = List.copyOf(digs);
  }

  /** The answers for one line. */
  public record LineAnswers(String line, List<Answer> answers) {
    public LineAnswers {
      answers = List.copyOf(answers);
    }

    /** The answer to one question. */
    public Answer to(Question question) {
      return answers.stream()
          .filter(answer -> answer.question() == question)
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no answer to " + question));
    }
  }
}
