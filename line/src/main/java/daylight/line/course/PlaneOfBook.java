package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Priors;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.survey.Hand;
import daylight.line.survey.PlaneNetwork;
import daylight.line.survey.Sighting;
import java.util.ArrayList;
import java.util.List;

/** The plane network that a field book holds: every tie of every visit with its uncertainty. */
final class PlaneOfBook {
  private final Priors priors;

  private PlaneOfBook(Priors priors) {
    this.priors = priors;
  }

  static PlaneNetwork network(FieldBook book, Priors priors) {
    PlaneOfBook reader = new PlaneOfBook(priors);
    List<Sighting> sightings = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Tie tie : visit.ties()) {
        sightings.add(reader.sighting(tie));
      }
    }
    return new PlaneNetwork(sightings, base(book));
  }

  /** The landmarks marked as base, else the first two of the book. */
  private static List<String> base(FieldBook book) {
    List<Landmark> landmarks = book.site().landmarks();
    List<String> marked = landmarks.stream().filter(Landmark::base).map(Landmark::label).toList();
    List<String> all = landmarks.stream().map(Landmark::label).toList();
    List<String> chosen = new ArrayList<>(marked.size() >= 2 ? marked : all);
    // Without landmarks the grid hangs on the first points that satellites fixed.
    book.visits().stream()
        .flatMap(visit -> visit.ties().stream())
        .filter(Tie.Gnss.class::isInstance)
        .map(tie -> ((Tie.Gnss) tie).point())
        .filter(point -> !chosen.contains(point))
        .forEach(chosen::add);
    return List.copyOf(chosen.subList(0, Math.min(2, chosen.size())));
  }

  private Sighting sighting(Tie tie) {
    return switch (tie) {
      case Tie.Tape t ->
          new Sighting.Tape(
              t.label(), t.from(), t.to(), t.length().value(), sd(Priors.Kind.TAPE, t.length()));
      case Tie.AlongOut t ->
          new Sighting.AlongOut(
              t.label(),
              t.zero(),
              t.toward(),
              t.point(),
              t.along().value(),
              t.out().value(),
              sd(Priors.Kind.ALONG, t.along()),
              sd(Priors.Kind.OUT, t.out()));
      case Tie.Bearing t ->
          new Sighting.Bearing(
              t.label(),
              t.from(),
              t.to(),
              t.bearing().value(),
              flat(Priors.Kind.BEARING, t.bearing()));
      case Tie.Angle t ->
          new Sighting.Angle(
              t.label(),
              t.at(),
              t.from(),
              t.to(),
              t.angle().value(),
              flat(Priors.Kind.ANGLE, t.angle()));
      case Tie.Direction t ->
          new Sighting.Direction(
              t.label(),
              t.set(),
              t.from(),
              t.to(),
              t.direction().value(),
              flat(Priors.Kind.ANGLE, t.direction()));
      case Tie.Gnss t -> {
        Double stated = t.sd();
        double sd = stated != null ? stated : priors.sd(Priors.Kind.GNSS, 0);
        yield new Sighting.Gnss(
            t.label(),
            t.point(),
            StrictMath.toRadians(t.latitude()),
            StrictMath.toRadians(t.longitude()),
            sd,
            sd,
            0);
      }
      case Tie.Sketched t ->
          new Sighting.Sketched(
              t.label(),
              t.point(),
              t.east().value(),
              t.north().value(),
              flat(Priors.Kind.SKETCH, t.east()));
      case Tie.Side t ->
          new Sighting.Side(
              t.label(), t.point(), t.from(), t.to(), t.left() ? Hand.LEFT : Hand.RIGHT);
    };
  }

  private double sd(Priors.Kind kind, daylight.line.measure.Reading reading) {
    return priors.sd(kind, reading);
  }

  /** For readings whose uncertainty does not grow with their size. */
  private double flat(Priors.Kind kind, daylight.line.measure.Reading reading) {
    Double stated = reading.sd();
    return stated != null ? stated : priors.sd(kind, 0);
  }
}
