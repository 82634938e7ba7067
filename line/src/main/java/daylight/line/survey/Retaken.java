package daylight.line.survey;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Mistakes that only the network can tell: another landmark, the other end of the wall, along for
 * out. The sighting is put right, the network adjusted again, and the mistake believed when the
 * sighting then fits.
 */
final class Retaken {
  /** A tape may be off by so many of its standard deviations and still be worth a try. */
  private static final double NEAR = 6;

  private final PlaneNetwork network;
  private final Adjustment plan;

  Retaken(PlaneNetwork network, Adjustment plan) {
    this.network = network;
    this.plan = plan;
  }

  List<Likely> likely(Suspect.Misread misread) {
    List<Sighting> of =
        network.sightings().stream().filter(s -> s.entry().equals(misread.entry())).toList();
    if (of.size() != 1 || !(plan instanceof Adjusted adjusted)) {
      return List.of();
    }
    List<Likely> likely = new ArrayList<>();
    for (Way way : ways(of.getFirst(), misread, adjusted)) {
      misfit(of.getFirst(), way.sighting, misread.quantity())
          .ifPresent(off -> likely.add(new Likely(way.said, off)));
    }
    return likely;
  }

  /** A sighting as it may have been taken. */
  private record Way(Sighting sighting, Statement said) {}

  private List<Way> ways(Sighting sighting, Suspect.Misread misread, Adjusted adjusted) {
    return switch (sighting) {
      case Sighting.Tape s -> {
        List<Way> ways = new ArrayList<>();
        for (String other : others(adjusted, s)) {
          var from = new Sighting.Tape(s.entry(), other, s.to(), s.metres(), s.sd());
          var to = new Sighting.Tape(s.entry(), s.from(), other, s.metres(), s.sd());
          add(ways, near(from, misread, adjusted), from, s.from(), other);
          add(ways, near(to, misread, adjusted), to, s.to(), other);
        }
        yield ways;
      }
      case Sighting.AlongOut s -> alongOut(s, adjusted);
      case Sighting.Bearing s -> {
        List<Way> ways = new ArrayList<>();
        var back = new Sighting.Bearing(s.entry(), s.to(), s.from(), s.rad(), s.sd());
        ways.add(new Way(back, Statement.of(SurveyKey.LIKELY_BACK)));
        for (String other : others(adjusted, s)) {
          var from = new Sighting.Bearing(s.entry(), other, s.to(), s.rad(), s.sd());
          add(ways, true, from, s.from(), other);
        }
        yield ways;
      }
      case Sighting.Angle s ->
          List.of(
              new Way(
                  new Sighting.Angle(s.entry(), s.at(), s.to(), s.from(), s.rad(), s.sd()),
                  Statement.of(SurveyKey.LIKELY_COUNTER_CLOCKWISE)));
      case Sighting.Direction s -> {
        List<Way> ways = new ArrayList<>();
        for (String other : others(adjusted, s)) {
          var to = new Sighting.Direction(s.entry(), s.set(), s.from(), other, s.rad(), s.sd());
          add(ways, true, to, s.to(), other);
        }
        yield ways;
      }
      case Sighting.Gnss s -> {
        List<Way> ways = new ArrayList<>();
        for (String other : others(adjusted, s)) {
          ways.add(
              new Way(
                  new Sighting.Gnss(
                      s.entry(),
                      other,
                      s.latitudeRad(),
                      s.longitudeRad(),
                      s.sdEast(),
                      s.sdNorth(),
                      s.corr()),
                  Statement.of(
                      SurveyKey.LIKELY_FIX,
                      new Argument.Label(s.point()),
                      new Argument.Label(other))));
        }
        yield ways;
      }
      case Sighting.Sketched _, Sighting.Offset _, Sighting.Fixed _, Sighting.Side _ -> List.of();
    };
  }

  private static void add(
      List<Way> ways, boolean worthIt, Sighting retaken, String instead, String other) {
    if (worthIt) {
      ways.add(
          new Way(
              retaken,
              Statement.of(
                  SurveyKey.LIKELY_LANDMARK,
                  new Argument.Label(instead),
                  new Argument.Label(other))));
    }
  }

  private static List<String> others(Adjusted adjusted, Sighting sighting) {
    var others = new TreeSet<>(adjusted.points().keySet());
    sighting.points().forEach(others::remove);
    return List.copyOf(others);
  }

  /** Where the bad reading still bends the positions it may bend them by as much as it is off. */
  private static boolean near(Sighting.Tape tape, Suspect.Misread misread, Adjusted adjusted) {
    if (!adjusted.points().containsKey(tape.from()) || !adjusted.points().containsKey(tape.to())) {
      return false;
    }
    double off = adjusted.point(tape.from()).distanceTo(adjusted.point(tape.to())) - tape.metres();
    boolean bent = !adjusted.fit().setAside().contains(misread.entry());
    return Math.abs(off) <= NEAR * tape.sd() + (bent ? Math.abs(misread.blunder()) : 0);
  }

  private static List<Way> alongOut(Sighting.AlongOut s, Adjusted adjusted) {
    List<Way> ways = new ArrayList<>();
    ways.add(
        new Way(
            wall(s, s.wallFrom(), s.wallTo(), s.out(), s.along()),
            Statement.of(SurveyKey.LIKELY_EXCHANGED)));
    ways.add(
        new Way(
            wall(s, s.wallFrom(), s.wallTo(), s.along(), -s.out()),
            Statement.of(SurveyKey.LIKELY_OTHER_SIDE)));
    if (adjusted.points().containsKey(s.wallTo())) {
      ways.add(
          new Way(
              wall(s, s.wallTo(), s.wallFrom(), s.along(), -s.out()),
              Statement.of(
                  SurveyKey.LIKELY_OTHER_END,
                  new Argument.Label(s.wallFrom()),
                  new Argument.Label(s.wallTo()))));
    }
    return ways;
  }

  private static Sighting.AlongOut wall(
      Sighting.AlongOut s, String from, String to, double along, double out) {
    return new Sighting.AlongOut(
        s.entry(), from, to, s.point(), along, out, s.sdAlong(), s.sdOut());
  }

  /** How badly a sighting fits when it was taken that way; empty if it explains nothing. */
  private Optional<Double> misfit(Sighting as, Sighting retaken, Quantity quantity) {
    List<Sighting> sightings = new ArrayList<>(network.sightings());
    sightings.set(sightings.indexOf(as), retaken);
    var again =
        new PlaneNetwork(
            sightings,
            network.baseLandmarks(),
            network.correlated(),
            network.approximate(),
            network.snooping());
    if (!(Surveyor.adjust(again) instanceof Adjusted adjusted)
        || adjusted.points().size() < points()
        || adjusted.fit().suspects().stream().anyMatch(s -> concerns(s, as.entry()))) {
      return Optional.empty();
    }
    double worst = -1;
    for (Residual residual : adjusted.fit().residuals()) {
      Double off = residual.standardised();
      if (residual.entry().equals(as.entry()) && off != null) {
        worst = Math.max(worst, Math.abs(off));
      } else if (residual.entry().equals(as.entry()) && residual.quantity() == quantity) {
        return Optional.empty();
      }
    }
    return worst < 0 ? Optional.empty() : Optional.of(worst);
  }

  private int points() {
    return plan instanceof Adjusted adjusted ? adjusted.points().size() : 0;
  }

  private static boolean concerns(Suspect suspect, String entry) {
    return suspect.entry().equals(entry) || suspect.inseparable().contains(entry);
  }
}
