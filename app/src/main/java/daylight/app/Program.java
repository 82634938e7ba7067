package daylight.app;

import daylight.app.track.MadeOf;
import daylight.archive.Sha256;
import daylight.archive.seal.Bundle;
import daylight.footage.codec.Footage;
import daylight.line.answer.Rules;
import daylight.report.Report;
import java.util.List;
import java.util.Optional;

/** Which program this is. */
public final class Program {
  /** As it calls itself. */
  public static final String VERSION = "1.0-SNAPSHOT";

  private static final String OURS = "daylight";

  /** One of each part that it is built of. */
  private static final List<Class<?>> PARTS =
      List.of(Rules.class, Footage.class, Bundle.class, Report.class, Program.class);

  private Program() {}

  /** A digest of all it is made of, its data too; empty where that cannot be told. */
  static Optional<Sha256> digest() {
    StringBuilder all = new StringBuilder();
    for (Class<?> part : PARTS) {
      Optional<String> lines = MadeOf.lines(part, OURS, name -> true);
      if (lines.isEmpty()) {
        return Optional.empty();
      }
      all.append(lines.get());
    }
    return Optional.of(Sha256.of(all.toString()));
  }
}
