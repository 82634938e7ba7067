package daylight.line.counter;

import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;

/**
 * What the counter of one pass says about cable.
 *
 * <p>With the reading r, the reading at the mouth of the entry r₀, the scale k (counter metres per
 * metre of cable) and the slack share l (cable lying in excess of the pipe), the distance along the
 * pipe from the entry to the lens is s = (r − r₀) / (k·(1 + l)). Zero, scale and slack are handed
 * on as estimates, because the course knows more about them than the counter alone does.
 *
 * <p>Slack is one-sided: a pushed cable snakes and runs wide, a cable being pulled back is taut.
 * Its share is taken as half-normal with the prior's figure as scale, so its mean is σ√(2/π) and
 * its standard deviation σ√(1 − 2/π); none when pulling (common practice, no source for σ).
 */
public final class Counter {
  /** A zero nobody knows is worth this many times the usual zero error; common practice. */
  private static final double UNKNOWN_ZERO = 20;

  private final Pass pass;
  private final Priors priors;
  private final Measured scale;
  private final List<Vote> votes;

  private Counter(Pass pass, Priors priors, Scale scale) {
    this.pass = pass;
    this.priors = priors;
    this.scale = scale.measured();
    this.votes = scale.votes();
  }

  private record Scale(Measured measured, List<Vote> votes) {}

  /** The counter of a pass; every pass of a visit shares its scale. */
  public static Counter of(Visit visit, Pass pass, Priors priors) {
    return new Counter(pass, priors, scale(visit, priors));
  }

  /**
   * Counter metres per metre of cable: the prior about 1, put right by every place of the visit
   * where a tape was held against the counter (product of normal densities).
   */
  private static Scale scale(Visit visit, Priors priors) {
    double sd = priors.sd(Priors.Kind.COUNTER_SCALE, 0);
    double weight = 1 / (sd * sd);
    double sum = weight;
    List<Vote> weights = new ArrayList<>();
    for (Pass pass : visit.passes()) {
      for (Pass.CounterCheck check : pass.counterChecks()) {
        double taped = check.taped().value();
        if (taped > 0) {
          double counter =
              StrictMath.hypot(
                  priors.sd(Priors.Kind.COUNTER_READING, check.counter()), zeroSd(pass, priors));
          double tape = priors.sd(Priors.Kind.TAPE, check.taped());
          double ratioSd = StrictMath.hypot(counter, tape) / taped;
          double w = 1 / (ratioSd * ratioSd);
          weight += w;
          weights.add(new Vote(check.id(), w));
          sum += w * (check.counter().value() - zeroReading(pass)) / taped;
        }
      }
    }
    double whole = weight;
    return new Scale(
        new Measured(sum / weight, Math.sqrt(1 / weight)),
        weights.stream().map(vote -> new Vote(vote.check(), vote.share() / whole)).toList());
  }

  /**
   * What a tape held against the counter adds to its scale.
   *
   * @param share of the variance of the scale, from 0 to 1
   */
  public record Vote(Id check, double share) {}

  /**
   * What the scale's uncertainty comes from: each tape that was held against the counter on that
   * visit. What is left to 1 is the prior's.
   */
  public List<Vote> votes() {
    return votes;
  }

  /** Counter metres since the lens was at the mouth of the entry, slips put right. */
  public double sinceEntry(double reading) {
    double shift = 0;
    for (Pass.Reset reset : pass.resets()) {
      double jump = reset.after().value() - reset.before().value();
      if (jump > 0 && reading >= reset.after().value()) {
        shift += jump;
      }
    }
    return reading - shift - zeroReading(pass);
  }

  /** Counter metres per metre of cable. */
  public Measured scale() {
    return scale;
  }

  /** By how much the zero may be off, metres; its estimate is none. */
  public double zeroSd() {
    return zeroSd(pass, priors);
  }

  private static double zeroSd(Pass pass, Priors priors) {
    double sd = priors.sd(Priors.Kind.COUNTER_ZERO, 0);
    return pass.zero() instanceof Pass.Zero.Unknown ? sd * UNKNOWN_ZERO : sd;
  }

  /** The share of slack while the cable is pushed; none of it is left when it is pulled back. */
  public Measured slack() {
    double sigma = priors.of(Priors.Kind.SLACK).b();
    return new Measured(
        sigma * StrictMath.sqrt(2 / Math.PI), sigma * StrictMath.sqrt(1 - 2 / Math.PI));
  }

  /** Whether slack counts for a reading taken while the cable moved so. */
  public static boolean slackens(Finding.Moving moving) {
    return moving == Finding.Moving.PUSHING;
  }

  private static double zeroReading(Pass pass) {
    return switch (pass.zero()) {
      case Pass.Zero.Reads reads -> reads.counter().value();
      case Pass.Zero.Unknown _ -> 0;
    };
  }
}
