package daylight.line.answer;

import daylight.line.cause.Strength;
import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The complaint and what may lie behind it.
 *
 * @param words the owner's own; null when none were recorded
 * @param told which kinds of complaint it is, where and when it shows, and what of that was taken
 *     from the words
 * @param ranked the causes that may be behind such a complaint, the likeliest first; empty where
 *     nobody knows what kind of complaint it is
 * @param causes what was found that may be behind it, where nothing could be ranked
 * @param against what speaks against that
 * @param evidence what all of these sentences rest on; every figure in them is found here
 * @param cautions that go with it
 */
public record Opening(
    @Nullable String words,
    List<Statement> told,
    List<Ranked> ranked,
    List<Statement> causes,
    List<Statement> against,
    List<Evidence> evidence,
    List<Caution> cautions) {
  public Opening {
    told = List.copyOf(told);
    ranked = List.copyOf(ranked);
    causes = List.copyOf(causes);
    against = List.copyOf(against);
    evidence = List.copyOf(evidence);
    cautions = List.copyOf(cautions);
  }

  /**
   * One cause as it stands.
   *
   * @param cause its id in the table of causes
   * @param speaksFor what speaks for it, the most telling first
   * @param speaksAgainst what speaks against it
   * @param missing what would tell more
   */
  public record Ranked(
      String cause,
      Strength strength,
      List<Statement> speaksFor,
      List<Statement> speaksAgainst,
      List<Statement> missing) {
    public Ranked {
      speaksFor = List.copyOf(speaksFor);
      speaksAgainst = List.copyOf(speaksAgainst);
      missing = List.copyOf(missing);
    }
  }
}
