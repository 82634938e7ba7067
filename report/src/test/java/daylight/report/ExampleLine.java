package daylight.report;

import static daylight.report.Example.id;
import static daylight.report.Example.reading;

import daylight.line.book.Finding;
import daylight.line.book.Material;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Where;
import daylight.line.course.CableGap;
import daylight.line.course.Contribution;
import daylight.line.course.CourseKey;
import daylight.line.course.Extra;
import daylight.line.course.Joint;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.Outlook;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.PlacedSight;
import daylight.line.course.Profile;
import daylight.line.course.Run;
import daylight.line.course.Source;
import daylight.line.course.Station;
import daylight.line.course.Wanted;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Covariance2;
import daylight.line.survey.LevelAdjustment;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.PlaneNetwork;
import daylight.line.survey.Sighting;
import daylight.line.survey.Surveyor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The estimated line of {@link Example}, set down by hand. */
final class ExampleLine {
  private ExampleLine() {}

  static Line line(boolean tied, boolean deadly) {
    SortedMap<String, PlanPoint> points = new TreeMap<>();
    points.put("A", new PlanPoint(0, 0));
    points.put("B", new PlanPoint(0, 9.2));
    points.put("C", new PlanPoint(-6.4, 0.1));
    points.put("P1", new PlanPoint(21.5, -3));
    points.put("P2", new PlanPoint(22.4, 12.5));
    points.put("OAK", new PlanPoint(11.4, 8.6));
    points.put("L1", new PlanPoint(3.9, 3.0));
    points.put("L2", new PlanPoint(8.1, 2.9));
    points.put("L3", new PlanPoint(13.0, 3.3));
    points.put("L4", new PlanPoint(17.3, 2.1));
    points.put("L5", new PlanPoint(22.1, 1.0));
    points.put("L6", new PlanPoint(12.7, 6.8));
    List<Run> runs =
        List.of(
            run("R1", "CO1", "J1", new PlanPoint(1.1, 3.0), new PlanPoint(15.2, 3.0), 0.9),
            run("R2", "J1", "OUT", new PlanPoint(15.2, 3.0), new PlanPoint(26.4, 0.1), 1.1),
            run("R3", "DL1", "J1", new PlanPoint(11.7, 9.9), new PlanPoint(15.2, 3.0), 0.7));
    return new Line(
        Surveyor.adjust(new PlaneNetwork(sightings(points, tied), List.of())),
        new LevelAdjustment.Unadjustable(LevelAdjustment.Reason.NOTHING_TO_ADJUST, List.of()),
        runs,
        findings(deadly),
        List.of(
            new PlacedSight(
                "V1", "PUSH1", new Place("R1", 0), new Place("R1", 14.1), Pass.Clarity.CLEAR),
            new PlacedSight(
                "V1", "PUSH1", new Place("R2", 0), new Place("R2", 11.5), Pass.Clarity.POOR)),
        List.of(
            new PlacedPass(
                "V1",
                "PUSH1",
                List.of(
                    new PlacedPass.Leg(new Place("R1", 0), new Place("R1", 14.1)),
                    new PlacedPass.Leg(new Place("R2", 0), new Place("R2", 11.57))),
                List.of(),
                (reading, _) ->
                    Optional.of(
                        reading < 14.1
                            ? new Place("R1", Math.max(0, reading))
                            : new Place("R2", Math.min(reading - 14.1, 11.57))))),
        List.of(
            fit("L1", "R1", 2.8, new PlanPoint(3.9, 3.0), 0.05, 0.87, 0.4),
            fit("L2", "R1", 7.0, new PlanPoint(8.1, 2.9), -0.09, 0.85, 0.7),
            fit("L3", "R1", 11.9, new PlanPoint(13.0, 3.3), 0.22, 0.93, 1.6),
            fit("L4", "R2", 2.1, new PlanPoint(17.3, 2.1), -0.3, 1.06, 3.4),
            fit("L5", "R2", 7.1, new PlanPoint(22.1, 1.0), 0.06, 0.93, 0.5),
            fit("L6", "R3", 3.3, new PlanPoint(12.7, 6.8), -0.1, 0.74, 0.8)),
        List.of(
            new CableGap(
                id("L3"),
                id("L4"),
                new Measured(4.9, 0.05),
                new Measured(4.4, 0.1),
                new Measured(0.5, 0.11))),
        List.of(
            Statement.of(CourseKey.SPOT_OFF, new Argument.Label("L4"), new Argument.Length(0.3))),
        new SetDown());
  }

  /** Landmarks are held; locates are dropped on a sketch; satellite fixes tie two corners. */
  private static List<Sighting> sightings(SortedMap<String, PlanPoint> points, boolean tied) {
    List<Sighting> sightings = new ArrayList<>();
    points.forEach(
        (label, at) ->
            sightings.add(
                label.startsWith("L")
                    ? new Sighting.Sketched("spot " + label, label, at.x(), at.y(), 0.09)
                    : new Sighting.Fixed(label, at.x(), at.y())));
    if (tied) {
      sightings.add(fix("A", 44.97, -93.26));
      sightings.add(fix("B", 44.97 + 9.2 / 111_132, -93.26));
    }
    return sightings;
  }

  private static Sighting fix(String label, double latitude, double longitude) {
    return new Sighting.Gnss(
        "fix " + label,
        label,
        StrictMath.toRadians(latitude),
        StrictMath.toRadians(longitude),
        0.02,
        0.02,
        0);
  }

  static Run run(
      String reach, String from, String to, PlanPoint start, PlanPoint end, double depth) {
    double length = start.distanceTo(end);
    double bearing = start.bearingTo(end);
    List<Station> stations = new ArrayList<>();
    int steps = (int) Math.ceil(length / 0.5);
    for (int i = 0; i <= steps; i++) {
      double s = length * i / steps;
      double sway = 0.25 * StrictMath.sin(Math.PI * s / length);
      PlanPoint spot =
          new PlanPoint(
              start.x() + s * StrictMath.sin(bearing) - sway * StrictMath.cos(bearing),
              start.y() + s * StrictMath.cos(bearing) + sway * StrictMath.sin(bearing));
      double sd = 0.09 + 0.05 * Math.abs(StrictMath.sin(s / 1.5));
      double down = reach.equals("R2") ? 14.1 + s : s;
      double belly = reach.equals("R2") ? 0.09 * StrictMath.exp(-(s - 5) * (s - 5) / 3) : 0;
      double invert = (reach.equals("R3") ? -0.75 - 0.045 * s : -0.9 - 0.012 * down) - belly;
      double ground = -0.01 * down + 0.04 * StrictMath.sin(down / 3) - 0.05;
      stations.add(
          new Station(
              new Place(reach, s),
              spot,
              new Covariance2(sd * sd, 0, 0, sd * sd),
              bearing,
              0.02,
              new Measured(invert, 0.03 + 0.02 * Math.abs(StrictMath.cos(s))),
              new Measured(ground, down > 8 && down < 18 ? 0.06 : 0.01),
              new Measured(ground - invert, 0.05)));
    }
    Reach of = ExampleBook.reach(reach, from, to, Material.CLAY);
    return new Run(of, new Measured(length, 0.08), new Run.Path.Found(stations));
  }

  private static List<PlacedFinding> findings(boolean deadly) {
    List<PlacedFinding> findings =
        new ArrayList<>(
            List.of(
                finding("F1", "joint", "R1", 1.2, null, "share", null),
                finding("F2", "displaced-joint", "R1", 4.6, null, "offset", 0.008),
                finding("F3", "crack", "R1", 6.4, null, "width", 0.0015),
                finding("F4", "roots", "R1", 9.75, null, "share", 0.35),
                finding("F5", "deposit-loose", "R1", 10.6, 12.4, "share", 0.15),
                finding("F6", "junction", "R1", 14.0, null, "share", null),
                finding("F7", "standing-water", "R2", 3.6, 6.6, "depth", 0.06),
                finding("F8", "break", "R2", 7.9, null, "length", 0.05),
                finding("F9", "material-change", "R2", 8.3, null, "share", null),
                finding("F10", "roots", "R2", 10.9, null, "share", 0.1)));
    if (deadly) {
      findings.add(finding("F11", "foreign-pipe", "R1", 8.2, null, "share", null));
    }
    return findings;
  }

  static PlacedFinding finding(
      String label,
      String kind,
      String reach,
      double from,
      @Nullable Double to,
      String quantity,
      @Nullable Double size) {
    return new PlacedFinding(
        "V1",
        "PUSH1",
        new Finding(
            id(label),
            kind,
            new Where.AtCable(reading(from)),
            Finding.Moving.PUSHING,
            new Finding.Clock(Math.PI / 2, Math.PI / 2),
            size == null ? new TreeMap<>() : new TreeMap<>(Map.of(quantity, reading(size))),
            new TreeMap<>(),
            null,
            List.of(),
            List.of(),
            label.equals("F4") ? "fine roots, all round" : null),
        new Place(reach, from),
        to == null ? null : new Place(reach, to),
        0.08);
  }

  private static LocateFit fit(
      String label,
      String reach,
      double at,
      PlanPoint spot,
      double across,
      double depth,
      double off) {
    return new LocateFit(
        id(label),
        new Place(reach, at),
        spot,
        across,
        0.09,
        new Measured(depth, 0.06),
        0.03 * off,
        off,
        0.4,
        0.3);
  }

  /** Figures that need the covariance of everything, set down by hand. */
  private record SetDown() implements Joint {
    @Override
    public Optional<Measured> fall(Place from, Place to) {
      return Optional.of(new Measured(0.3, 0.05));
    }

    @Override
    public Optional<Profile> profile(List<Place> places) {
      return Optional.empty();
    }

    @Override
    public Optional<Profile> dryProfile(List<Place> places) {
      return Optional.empty();
    }

    @Override
    public Optional<Covariance2> relative(Place place, String point) {
      return Optional.of(new Covariance2(0.01, 0, 0, 0.01));
    }

    @Override
    public Outlook outlook() {
      return new SetOutlook();
    }
  }

  private record SetOutlook() implements Outlook {
    @Override
    public Optional<Measured> now(Wanted wanted) {
      return Optional.of(new Measured(1, 0.1));
    }

    @Override
    public Optional<Measured> after(Wanted wanted, Extra extra) {
      return Optional.of(new Measured(1, 0.05));
    }

    @Override
    public List<Contribution> why(Wanted wanted) {
      return List.of(
          new Contribution(ExampleAnswers.locate("L2", Source.Part.DEPTH), 0.6),
          new Contribution(new Source.OfPrior(Priors.Kind.LEVEL), 0.4));
    }
  }
}
