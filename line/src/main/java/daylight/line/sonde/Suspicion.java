package daylight.line.sonde;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.List;

/**
 * A trap that the readings look like, with what speaks for it.
 *
 * @param evidence the arguments of the trap's sentence, the locate's label first
 */
public record Suspicion(Trap trap, List<Argument> evidence) {
  public Suspicion {
    evidence = List.copyOf(evidence);
  }

  static Suspicion of(Trap trap, Argument... evidence) {
    return new Suspicion(trap, List.of(evidence));
  }

  /** What is to be said. */
  public Statement statement() {
    return new Statement(trap, evidence);
  }
}
