package daylight.line.answer;

import daylight.line.course.Contribution;
import daylight.line.course.Wanted;
import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The answer to one question for one line.
 *
 * @param headline one plain sentence
 * @param sure how sure that is
 * @param reasons what else there is to say, most telling first
 * @param evidence everything the sentences rest on; every figure in a sentence is found here
 * @param leading the figure of the line that it turns on; null where there is none
 * @param contributions what that figure rests on, with the share of its variance
 * @param cautions that go with acting on it
 * @param missing measurements that would answer it, or answer it better
 */
public record Answer(
    Question question,
    State state,
    Statement headline,
    Sureness sure,
    List<Statement> reasons,
    List<Evidence> evidence,
    @Nullable Wanted leading,
    List<Contribution> contributions,
    List<Caution> cautions,
    List<Statement> missing) {
  public Answer {
    reasons = List.copyOf(reasons);
    evidence = List.copyOf(evidence);
    contributions = List.copyOf(contributions);
    cautions = List.copyOf(cautions);
    missing = List.copyOf(missing);
    if (state == State.CANNOT_SAY_YET && missing.isEmpty()) {
      throw new IllegalArgumentException(
          question + ": an answer that cannot say names the missing measurement");
    }
  }
}
