package daylight.line.course;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a line says of what does not fit. */
final class Naming {
  private Naming() {}

  /** Whether one statement names both of two entries. */
  static boolean between(Line line, String one, String other) {
    return line.doubts().stream()
        .map(Naming::labels)
        .anyMatch(labels -> labels.contains(one) && labels.contains(other));
  }

  /** The spots that are said to lie beside the course. */
  static Set<String> strays(Line line) {
    return line.doubts().stream()
        .filter(doubt -> doubt.key() == CourseKey.SPOT_OFF)
        .flatMap(doubt -> labels(doubt).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Every label that a statement names. */
  static List<String> labels(Statement statement) {
    return statement.arguments().stream().flatMap(Naming::labels).toList();
  }

  private static Stream<String> labels(Argument argument) {
    return switch (argument) {
      case Argument.Label(String label) -> Stream.of(label);
      case Argument.Several(List<Argument> items) -> items.stream().flatMap(Naming::labels);
      default -> Stream.of();
    };
  }
}
