package daylight.line.survey;

import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Priors;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The plane network that a field book holds: every tie of every visit with its uncertainty. */
final class BookTies {
  private final FieldBook book;
  private final Priors priors;
  private final List<Sighting> sightings = new ArrayList<>();
  private final SortedMap<String, List<Sighting.Gnss>> sets = new TreeMap<>();
  private final Map<String, Double> shared = new HashMap<>();
  private final Map<Correlated.Component, Written> written = new HashMap<>();

  BookTies(FieldBook book, Priors priors) {
    this.book = book;
    this.priors = priors;
    for (Visit visit : book.visits()) {
      for (Tie tie : visit.ties()) {
        sightings.add(sighting(tie, visit.label()));
      }
    }
  }

  PlaneNetwork network() {
    List<Correlated> correlated =
        sets.values().stream()
            .map(
                fixes ->
                    Correlated.sharing(
                        fixes,
                        fixes.stream().map(f -> shared.getOrDefault(f.entry(), 0.0)).toList()))
            .toList();
    return new PlaneNetwork(sightings, base(), correlated, Map.of(), Snooping.USUAL);
  }

  /** Every reading as it was written. */
  Map<Correlated.Component, Written> written() {
    return written;
  }

  /** The landmarks marked as base, else the first two of the book. */
  private List<String> base() {
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

  private Sighting sighting(Tie tie, String visit) {
    return switch (tie) {
      case Tie.Tape t -> {
        keep(t, Quantity.DISTANCE, t.length(), Dimension.LENGTH);
        yield new Sighting.Tape(
            t.label(),
            t.from(),
            t.to(),
            t.length().value(),
            priors.sd(Priors.Kind.TAPE, t.length()));
      }
      case Tie.AlongOut t -> {
        keep(t, Quantity.ALONG, t.along(), Dimension.LENGTH);
        keep(t, Quantity.OUT, t.out(), Dimension.LENGTH);
        yield new Sighting.AlongOut(
            t.label(),
            t.zero(),
            t.toward(),
            t.point(),
            t.along().value(),
            t.out().value(),
            priors.sd(Priors.Kind.ALONG, t.along()),
            priors.sd(Priors.Kind.OUT, t.out()));
      }
      case Tie.Bearing t -> {
        keep(t, Quantity.BEARING, t.bearing(), Dimension.ANGLE);
        yield new Sighting.Bearing(
            t.label(),
            t.from(),
            t.to(),
            t.bearing().value(),
            flat(Priors.Kind.BEARING, t.bearing()));
      }
      case Tie.Angle t -> {
        keep(t, Quantity.ANGLE, t.angle(), Dimension.ANGLE);
        yield new Sighting.Angle(
            t.label(), t.at(), t.from(), t.to(), t.angle().value(), angle(t.angle()));
      }
      case Tie.Direction t -> {
        keep(t, Quantity.DIRECTION, t.direction(), Dimension.ANGLE);
        // What a circle read from another point, or on another day, it read from another zero.
        String set = visit + " / " + t.set() + " / " + t.from();
        yield new Sighting.Direction(
            t.label(), set, t.from(), t.to(), t.direction().value(), angle(t.direction()));
      }
      case Tie.Gnss t -> gnss(t, visit);
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

  private Sighting gnss(Tie.Gnss t, String visit) {
    Tie.Spread stated = t.spread();
    Tie.Spread spread = stated != null ? stated : Tie.Spread.round(priors.sd(Priors.Kind.GNSS, 0));
    var fix =
        new Sighting.Gnss(
            t.label(),
            t.point(),
            StrictMath.toRadians(t.latitude()),
            StrictMath.toRadians(t.longitude()),
            spread.east(),
            spread.north(),
            spread.correlation());
    Tie.Shared together = t.shared();
    if (together != null) {
      sets.computeIfAbsent(visit + " / " + together.set(), _ -> new ArrayList<>()).add(fix);
      shared.put(t.label(), together.sd());
    }
    return fix;
  }

  private void keep(Tie tie, Quantity quantity, Reading reading, Dimension dimension) {
    written.put(
        new Correlated.Component(tie.label(), quantity),
        new Written(reading, dimension, book.units().distance()));
  }

  private double angle(Reading reading) {
    return flat(Priors.Kind.ANGLE, reading);
  }

  /** For readings whose uncertainty does not grow with their size. */
  private double flat(Priors.Kind kind, Reading reading) {
    Double stated = reading.sd();
    return stated != null ? stated : priors.sd(kind, 0);
  }
}
