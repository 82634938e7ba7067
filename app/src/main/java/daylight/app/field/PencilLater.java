package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Findings whose distance is still to come, as lines of the remark of their push: the same lines
 * that {@code push-later.js} writes and reads, which makes findings of them.
 */
final class PencilLater {
  private PencilLater() {}

  /** The line of a finding that has a time, {@code hh:mm:ss}, and no distance. */
  static String line(String entry, String time, ObjectNode keys) {
    String told =
        keys.properties().stream()
            .filter(one -> one.getValue().isTextual())
            .map(one -> one.getKey() + " " + clean(one.getValue().asText()))
            .collect(Collectors.joining("; "));
    return "no distance yet, " + time + ": " + told + " (" + entry + ")";
  }

  private static String clean(String text) {
    return text.replaceAll("[;\n()]", ",").strip();
  }

  /**
   * A remark with lines put in their places, added, or taken out.
   *
   * @param lines by the identity of the finding, in order; null to take one out
   */
  static String with(String remark, Map<String, @Nullable String> lines) {
    List<String> all =
        new ArrayList<>(Stream.of(remark.split("\n", -1)).filter(one -> !one.isEmpty()).toList());
    for (Map.Entry<String, @Nullable String> one : lines.entrySet()) {
      String line = one.getValue();
      int at = -1;
      for (int i = 0; i < all.size(); i++) {
        at = all.get(i).endsWith("(" + one.getKey() + ")") ? i : at;
      }
      if (at >= 0 && line == null) {
        all.remove(at);
      } else if (at >= 0) {
        all.set(at, line);
      } else if (line != null) {
        all.add(line);
      }
    }
    return String.join("\n", all);
  }
}
