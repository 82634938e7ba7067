package daylight.line.condition;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finds the row for a finding and the class that its size has in it. */
final class Grading {
  private Grading() {}

  /** The verdict in one aspect; null where the scheme has no row for the kind in it. */
  static @Nullable Verdict of(GradeScheme scheme, Aspect aspect, Seen seen) {
    List<GradeRow> rows =
        scheme.rows().stream()
            .filter(row -> row.aspect() == aspect && row.kind().equals(seen.kind()))
            .toList();
    if (rows.isEmpty()) {
      return null;
    }
    List<GradeRow> possible = rows.stream().filter(row -> !row.applies().excludes(seen)).toList();
    if (possible.isEmpty()) {
      return noRow(rows, seen);
    }
    List<Lack> lacks = new ArrayList<>();
    possible.forEach(row -> lacks.addAll(row.applies().lacks(seen)));
    if (lacks.isEmpty()) {
      return verdict(possible.getFirst(), seen, scheme.onLimit());
    }
    possible.forEach(row -> lacks.addAll(sizeLacks(row, seen)));
    return new Verdict.CannotSay(merged(lacks));
  }

  private static Verdict noRow(List<GradeRow> rows, Seen seen) {
    TreeSet<String> choices = new TreeSet<>();
    String by = "bore";
    for (GradeRow row : rows) {
      String word = row.applies().word();
      String without = row.applies().without();
      if (without != null && row.applies().barred(seen)) {
        by = without;
      }
      if (word != null && seen.words().containsKey(word)) {
        by = word;
        choices.addAll(row.applies().is());
      }
    }
    return new Verdict.NoRow(by, List.copyOf(choices));
  }

  private static List<Lack> sizeLacks(GradeRow row, Seen seen) {
    return row.by() instanceof GradeRow.By.Limits limits
            && Sizes.find(limits.sized(), seen) instanceof Sizes.Found.Missing(List<Lack> lacks)
        ? lacks
        : List.of();
  }

  /** Each thing that is missing once, with every choice of it. */
  static List<Lack> merged(List<Lack> lacks) {
    Map<String, Lack> merged = new LinkedHashMap<>();
    for (Lack lack : lacks) {
      merged.merge(
          lack.why() + " " + lack.name(),
          lack,
          (one, other) -> {
            List<String> choices = new ArrayList<>(one.choices());
            other.choices().stream().filter(each -> !choices.contains(each)).forEach(choices::add);
            return new Lack(one.why(), one.name(), choices);
          });
    }
    return List.copyOf(merged.values());
  }

  private static Verdict verdict(GradeRow row, Seen seen, GradeScheme.OnLimit onLimit) {
    return switch (row.by()) {
      case GradeRow.By.Always(Grade grade) -> new Verdict.Graded(grade, row, null);
      case GradeRow.By.Limits limits ->
          switch (Sizes.find(limits.sized(), seen)) {
            case Sizes.Found.Missing(List<Lack> lacks) -> new Verdict.CannotSay(lacks);
            case Sizes.Found.Known(Size size) -> graded(row, limits, size, onLimit);
          };
    };
  }

  private static Verdict.Graded graded(
      GradeRow row, GradeRow.By.Limits limits, Size size, GradeScheme.OnLimit onLimit) {
    GradeRow.Limit next = null;
    GradeRow.Limit reached = null;
    for (GradeRow.Limit limit : limits.from()) {
      if (onLimit.reached(size.value(), limit.at().value())) {
        reached = limit;
        break;
      }
      next = limit;
    }
    Measured doubt = size.doubt();
    Verdict.Measure measure =
        new Verdict.Measure(
            size,
            reached,
            next,
            on(size, reached) || on(size, next),
            doubt == null ? List.of() : chances(limits, doubt),
            doubt == null ? List.of() : between(limits, doubt, onLimit));
    return new Verdict.Graded(reached == null ? limits.below() : reached.grade(), row, measure);
  }

  private static boolean on(Size size, GradeRow.@Nullable Limit limit) {
    return limit != null && GradeScheme.OnLimit.on(size.value(), limit.at().value());
  }

  private static List<Verdict.Chance> chances(GradeRow.By.Limits limits, Measured size) {
    List<Verdict.Chance> chances = new ArrayList<>();
    double belowBefore = 1;
    for (GradeRow.Limit limit : limits.from()) {
      double below = size.probabilityBelow(limit.at().value());
      chances.add(new Verdict.Chance(limit.grade(), belowBefore - below));
      belowBefore = below;
    }
    chances.add(new Verdict.Chance(limits.below(), belowBefore));
    return chances;
  }

  /** The classes from that of the upper to that of the lower end of the 95 % interval. */
  private static List<Grade> between(
      GradeRow.By.Limits limits, Measured size, GradeScheme.OnLimit onLimit) {
    List<Grade> between = new ArrayList<>();
    double above = Double.POSITIVE_INFINITY;
    for (GradeRow.Limit limit : limits.from()) {
      double from = limit.at().value();
      if (onLimit.reached(size.upper95(), from) && size.lower95() < above) {
        between.add(limit.grade());
      }
      above = from;
    }
    if (!onLimit.reached(size.lower95(), above)) {
      between.add(limits.below());
    }
    return between;
  }
}
