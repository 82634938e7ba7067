package daylight.line.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Variance by the reading or prior that it comes from. */
final class Ledger {
  private final Map<Source, Double> accounts = new LinkedHashMap<>();

  void add(Source source, double variance) {
    accounts.merge(source, variance, Double::sum);
  }

  /** Books a variance under the parts of an origin, each by its share. */
  void add(Origin origin, double variance) {
    List<Origin.Part> parts = origin.parts();
    if (parts.size() == 1) {
      add(parts.getFirst().source(), variance);
      return;
    }
    double whole = 0;
    for (Origin.Part part : parts) {
      whole += part.variance();
    }
    for (Origin.Part part : parts) {
      add(part.source(), variance * part.variance() / whole);
    }
  }

  void add(Ledger other) {
    other.accounts.forEach(this::add);
  }

  double variance() {
    double sum = 0;
    for (double variance : accounts.values()) {
      sum += variance;
    }
    return sum;
  }

  /** Shares of the whole, largest first; none where there is no variance to share. */
  List<Contribution> contributions() {
    double whole = variance();
    List<Contribution> list = new ArrayList<>();
    if (whole > 0) {
      accounts.forEach(
          (source, variance) -> {
            if (variance > 0) {
              list.add(new Contribution(source, variance / whole));
            }
          });
    }
    list.sort(
        Comparator.comparingDouble((Contribution c) -> -c.share())
            .thenComparing(Contribution::source));
    return list;
  }
}
