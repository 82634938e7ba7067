package daylight.line.condition;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;

/** Looks a finding up in the list of those that call for action at once. */
final class Immediates {
  private Immediates() {}

  static Immediate of(GradeScheme scheme, Seen seen) {
    List<Lack> lacks = new ArrayList<>();
    Immediate.No nearest = null;
    for (ImmediateRow row : scheme.immediate()) {
      if (!row.kind().equals(seen.kind()) || row.applies().excludes(seen)) {
        continue;
      }
      Immediate one = row(row, seen, scheme.onLimit());
      if (one instanceof Immediate.Yes) {
        return one;
      }
      if (one instanceof Immediate.Open(List<Lack> open)) {
        lacks.addAll(open);
      }
      if (one instanceof Immediate.No no && (nearest == null || nearer(no, nearest))) {
        nearest = no;
      }
    }
    if (!lacks.isEmpty()) {
      return new Immediate.Open(Grading.merged(lacks));
    }
    return nearest == null ? new Immediate.NotListed() : nearest;
  }

  private static boolean nearer(Immediate.No one, Immediate.No other) {
    return share(one) > share(other);
  }

  private static double share(Immediate.No no) {
    return no.against().size().value() / no.against().over().limit().value();
  }

  private static Immediate row(ImmediateRow row, Seen seen, GradeScheme.OnLimit onLimit) {
    List<Lack> lacks = new ArrayList<>(row.applies().lacks(seen));
    ImmediateRow.Over over = row.over();
    if (over == null) {
      return lacks.isEmpty() ? new Immediate.Yes(row, null) : new Immediate.Open(lacks);
    }
    return switch (Sizes.find(over.sized(), seen)) {
      case Sizes.Found.Missing(List<Lack> more) -> {
        lacks.addAll(more);
        yield new Immediate.Open(lacks);
      }
      case Sizes.Found.Known(Size size) -> {
        Immediate.Against against = against(size, over);
        boolean reached = onLimit.reached(size.value(), over.limit().value());
        if (!reached) {
          yield new Immediate.No(row, against);
        }
        yield lacks.isEmpty() ? new Immediate.Yes(row, against) : new Immediate.Open(lacks);
      }
    };
  }

  private static Immediate.Against against(Size size, ImmediateRow.Over over) {
    double limit = over.limit().value();
    Measured doubt = size.doubt();
    return new Immediate.Against(
        size,
        over,
        GradeScheme.OnLimit.on(size.value(), limit),
        doubt == null ? null : 1 - doubt.probabilityBelow(limit));
  }
}
