package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.book.Tie;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a crew tapes to: a house wall that runs north from A, at the origin of the grid, to B, and
 * pairs of posts that follow the line on either side of it, each pair braced to the one before by
 * five tapes. Every spot is tied to the two that meet best there.
 */
final class Posts {
  private static final double APART = 20;
  private static final double BESIDE = 7;

  /** Out from the wall by eye only so far, metres. */
  private static final double BY_EYE = 12;

  private final SplitMix64 random;
  private final Errors errors;
  private final Priors priors;
  private final Draft draft;
  private final Map<String, PlanPoint> posts = new TreeMap<>();
  private final double wall;

  Posts(SplitMix64 random, Errors errors, Priors priors, Draft draft, LaidPipe... main) {
    this.random = random;
    this.errors = errors;
    this.priors = priors;
    this.draft = draft;
    wall = random.between(8, 14);
    draft.landmark("A", true).landmark("B", true);
    posts.put("A", new PlanPoint(0, 0));
    posts.put("B", new PlanPoint(0, wall));
    tape("A", "B");
    String[] before = {"A", "B"};
    double left = APART / 2;
    int pairs = 0;
    for (LaidPipe pipe : main) {
      double at = left;
      for (; at < pipe.length(); at += APART) {
        before = pair(++pairs, pipe.at(at), before);
      }
      left = at - pipe.length();
    }
  }

  private String[] pair(int number, TruePipe.At at, String[] before) {
    String[] pair = {"P" + number, "Q" + number};
    for (int side = 0; side < 2; side++) {
      double bearing = at.bearing() + (side == 0 ? -Math.PI / 2 : Math.PI / 2);
      double out = BESIDE + random.between(-1, 1);
      posts.put(
          pair[side],
          new PlanPoint(
              at.east() + out * StrictMath.sin(bearing),
              at.north() + out * StrictMath.cos(bearing)));
      draft.landmark(pair[side], false);
      tape(before[0], pair[side]);
      tape(before[1], pair[side]);
      side(pair[side], before[0], before[1], post(pair[side]));
    }
    tape(pair[0], pair[1]);
    return pair;
  }

  private PlanPoint post(String label) {
    return Known.known(posts.get(label));
  }

  private void tape(String from, String to) {
    tape(from, to, post(from).distanceTo(post(to)));
  }

  private void tape(String from, String to, double length) {
    draft.tape(from, to, length + errors.of(priors.sd(Priors.Kind.TAPE, length)));
  }

  private void side(String point, String from, String to, PlanPoint at) {
    PlanPoint a = post(from);
    PlanPoint b = post(to);
    double left = (b.x() - a.x()) * (at.y() - a.y()) - (b.y() - a.y()) * (at.x() - a.x());
    draft.tie(new Tie.Side(draft.tieId(), point, from, to, left > 0));
  }

  /** Ties a spot whose paint lies there. */
  void tie(String label, PlanPoint spot) {
    boolean beside = spot.y() > -5 && spot.y() < wall + 5;
    // Drawn in any case, so that a spot that strays changes no error of the others.
    boolean byEye = random.chance(0.5);
    if (byEye && beside && spot.x() < -0.3 && spot.x() > -BY_EYE) {
      double along = spot.y() + errors.of(priors.sd(Priors.Kind.ALONG, spot.y()));
      double out = -spot.x() + errors.of(priors.sd(Priors.Kind.OUT, -spot.x()));
      draft.along(label, along, out);
      return;
    }
    List<String> names = new ArrayList<>(posts.keySet());
    String one = "A";
    String other = "B";
    double best = -1;
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        double meets = meets(post(names.get(i)), post(names.get(j)), spot);
        if (meets > best) {
          best = meets;
          one = names.get(i);
          other = names.get(j);
        }
      }
    }
    tape(one, label, post(one).distanceTo(spot));
    tape(other, label, post(other).distanceTo(spot));
    side(label, one, other, spot);
  }

  /** How well two tapes meet: squarely and short. */
  private static double meets(PlanPoint a, PlanPoint b, PlanPoint at) {
    double square = Math.abs(StrictMath.sin(at.bearingTo(a) - at.bearingTo(b)));
    return square / (1 + a.distanceTo(at) + b.distanceTo(at));
  }
}
