package daylight.line.course;

import daylight.line.survey.Shares;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Variance by the entry or prior that it comes from. */
final class Ledger {
  private record Account(String source, boolean assumed) implements Comparable<Account> {
    @Override
    public int compareTo(Account other) {
      int bySource = source.compareTo(other.source);
      return bySource != 0 ? bySource : Boolean.compare(assumed, other.assumed);
    }
  }

  private final Map<Account, Double> accounts = new TreeMap<>();

  void add(String source, boolean assumed, double variance) {
    accounts.merge(new Account(source, assumed), variance, Double::sum);
  }

  void add(Shares shares) {
    shares.byEntry().forEach((entry, variance) -> add(entry, false, variance));
  }

  void add(Ledger other) {
    other.accounts.forEach((account, variance) -> accounts.merge(account, variance, Double::sum));
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
          (account, variance) -> {
            if (variance > 0) {
              list.add(new Contribution(account.source(), account.assumed(), variance / whole));
            }
          });
    }
    list.sort(
        Comparator.comparingDouble((Contribution c) -> -c.share())
            .thenComparing(Contribution::source));
    return list;
  }
}
