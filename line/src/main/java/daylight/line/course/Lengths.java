package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Counter;
import daylight.line.measure.Reading;
import java.util.HashMap;
import java.util.Map;

/**
 * First guesses of how long each limb of a tree is, and whether anything measured it: a stated
 * length, else counter readings at both of its ends, else how far pushes went into it from either
 * end.
 *
 * @param metres the guess for each limb
 * @param measured whether both ends of it were measured
 * @param met whether passes went into it from both of its ends, so that what both of them found
 *     tells its length
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves this room
record Lengths(double[] metres, boolean[] measured, boolean[] met) {
  /** A pipe no shorter than this is laid out, so that nothing divides by nothing. */
  private static final double SHORTEST = 0.5;

  /** The share of two pushes from either end that is taken for the length; common practice. */
  private static final double MET_SHARE = 0.9;

  static Lengths guess(FieldBook book, Tree tree, Priors priors) {
    int n = tree.limbs().size();
    Lengths lengths = new Lengths(new double[n], new boolean[n], new boolean[n]);
    double[][] pushed = new double[n][2];
    for (int limb = 0; limb < n; limb++) {
      Reading stated = tree.limbs().get(limb).reach().length();
      if (stated != null) {
        lengths.metres[limb] = stated.value();
        lengths.measured[limb] = true;
      }
    }
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        // What an altered reach was like before tells nothing of it now.
        if (Walk.fits(tree, pass) && Altered.holds(book, visit, pass)) {
          lengths.take(tree, Counter.of(visit, pass, priors), pass, visit, pushed);
        }
      }
    }
    for (int limb = 0; limb < n; limb++) {
      lengths.settle(limb, pushed[limb]);
    }
    return lengths;
  }

  /** Two pushes that came from either end and met overlap a little: they cover most of it. */
  private void settle(int limb, double[] pushed) {
    met[limb] = !measured[limb] && pushed[0] > 0 && pushed[1] > 0;
    if (met[limb]) {
      metres[limb] = Math.max(metres[limb], MET_SHARE * (pushed[0] + pushed[1]));
    }
    metres[limb] = Math.max(SHORTEST, metres[limb]);
  }

  private void take(Tree tree, Counter counter, Pass pass, Visit visit, double[][] pushed) {
    Map<String, Double> nodes = nodes(counter, pass);
    String at = pass.entry();
    double start = 0;
    for (Pass.Leg leg : pass.walk()) {
      int limb = tree.indexOf(leg.reach());
      Reach reach = tree.limbs().get(limb).reach();
      String next = reach.from().equals(at) ? reach.to() : reach.from();
      Double end = nodes.get(next);
      if (end != null && !measured[limb] && end > start) {
        metres[limb] = end - start;
        measured[limb] = true;
      } else if (!measured[limb]) {
        double into = furthest(counter, pass, visit) - start;
        metres[limb] = Math.max(metres[limb], into);
        int side = tree.limbs().get(limb).near().equals(at) ? 0 : 1;
        pushed[limb][side] = Math.max(pushed[limb][side], into);
      }
      start += metres[limb];
      at = next;
    }
  }

  /** Counter metres to each node that the pass came by. */
  private static Map<String, Double> nodes(Counter counter, Pass pass) {
    Map<String, Double> nodes = new HashMap<>();
    for (Finding finding : pass.findings()) {
      String node = finding.node();
      if (node != null && finding.where() instanceof Where.AtCable(Reading cable)) {
        nodes.putIfAbsent(node, piped(counter, cable));
      }
    }
    Pass.End end = pass.end();
    if (end != null) {
      String node = end.node();
      if (node != null) {
        nodes.putIfAbsent(node, piped(counter, end.cable()));
      }
    }
    return nodes;
  }

  private static double furthest(Counter counter, Pass pass, Visit visit) {
    double furthest = 0;
    Pass.End end = pass.end();
    if (end != null) {
      furthest = piped(counter, end.cable());
    }
    for (Finding finding : pass.findings()) {
      switch (finding.where()) {
        case Where.AtCable(Reading cable) -> furthest = Math.max(furthest, piped(counter, cable));
        case Where.FromTo(_, Reading to) -> furthest = Math.max(furthest, piped(counter, to));
        case Where.AtMoment _ -> {}
      }
    }
    for (Pass.Sight sight : pass.sight()) {
      furthest = Math.max(furthest, piped(counter, sight.to()));
    }
    for (var locate : visit.locates()) {
      Reading cable = locate.cable();
      String of = locate.pass();
      boolean mine = of == null ? visit.passes().size() == 1 : of.equals(pass.label());
      if (cable != null && mine) {
        furthest = Math.max(furthest, piped(counter, cable));
      }
    }
    return furthest;
  }

  private static double piped(Counter counter, Reading reading) {
    return counter.sinceEntry(reading.value())
        / (counter.scale().value() * (1 + counter.slack().value()));
  }
}
