package daylight.line.answer;

import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The complaint and what may lie behind it.
 *
 * @param words the owner's own; null when none were recorded
 * @param causes probable causes by what was found, most probable first
 * @param against what speaks against them
 */
public record Opening(@Nullable String words, List<Statement> causes, List<Statement> against) {
  public Opening {
    causes = List.copyOf(causes);
    against = List.copyOf(against);
  }
}
