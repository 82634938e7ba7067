package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures of every solved line of a site. */
final class JointOfLines implements Joint {
  private final List<Solved> lines;
  private final List<Solved> dry;

  /**
   * Of lines.
   *
   * @param dry the same estimated without the still water that was seen
   */
  JointOfLines(List<Solved> lines, List<Solved> dry) {
    this.lines = List.copyOf(lines);
    this.dry = List.copyOf(dry);
  }

  private Optional<Solved> of(Place place) {
    return of(lines, place);
  }

  private static Optional<Solved> of(List<Solved> lines, Place place) {
    return lines.stream().filter(line -> line.has(place)).findFirst();
  }

  private Optional<Solved> both(Place from, Place to) {
    return of(from).filter(Solved::hasHeights).filter(line -> line.has(to));
  }

  @Override
  public Optional<Measured> fall(Place from, Place to) {
    return both(from, to).map(line -> line.measured(fall(line, from, to)));
  }

  private static Figure fall(Solved line, Place from, Place to) {
    return line.here(from).invert().less(line.here(to).invert());
  }

  @Override
  public Optional<Profile> profile(List<Place> places) {
    return profile(lines, places);
  }

  @Override
  public Optional<Profile> dryProfile(List<Place> places) {
    return profile(dry, places);
  }

  private static Optional<Profile> profile(List<Solved> of, List<Place> places) {
    return places.stream()
        .findFirst()
        .flatMap(place -> of(of, place))
        .filter(Solved::hasHeights)
        .filter(
            line ->
                places.stream().allMatch(place -> of(of, place).stream().anyMatch(line::equals)))
        .map(line -> profile(line, places));
  }

  /**
   * What lies between two knots is unsure by itself: it goes into the variance of a place alone.
   */
  private static Profile profile(Solved line, List<Place> places) {
    List<Figure> inverts = places.stream().map(place -> line.here(place).invert()).toList();
    int n = inverts.size();
    double[] up = new double[n];
    double[] covariance = new double[n * (n + 1) / 2];
    int at = 0;
    for (int i = 0; i < n; i++) {
      Figure one = inverts.get(i);
      up[i] = one.value();
      double[] follows = line.fit().factor().follows(one.gradient());
      for (int j = 0; j <= i; j++) {
        covariance[at++] = inverts.get(j).gradient().dot(follows) + (i == j ? one.loose() : 0);
      }
    }
    return new Profile(places, up, covariance);
  }

  @Override
  public Optional<Covariance2> relative(Place place, String point) {
    return of(place).flatMap(line -> line.relative(place, point));
  }

  @Override
  public Outlook outlook() {
    return new Together();
  }

  /** All the variance of a figure that is booked to anything, square metres. */
  double booked(Wanted wanted) {
    return solved(wanted).map(line -> new Foresight(line).booked(wanted)).orElse(0.0);
  }

  /** The outlook of every line, each made when it is first asked. */
  private final class Together implements Outlook {
    private final Map<Solved, Foresight> of = new HashMap<>();

    private Optional<Foresight> line(Wanted wanted) {
      return solved(wanted).map(line -> of.computeIfAbsent(line, Foresight::new));
    }

    @Override
    public Optional<Measured> now(Wanted wanted) {
      return line(wanted).flatMap(foresight -> foresight.now(wanted));
    }

    @Override
    public List<Contribution> why(Wanted wanted) {
      return line(wanted).map(foresight -> foresight.why(wanted)).orElse(List.of());
    }

    @Override
    public Optional<Measured> after(Wanted wanted, Extra extra) {
      return solved(wanted).filter(line -> line.has(extra.place())).isPresent()
          ? line(wanted).flatMap(foresight -> foresight.after(wanted, extra))
          : Optional.empty();
    }
  }

  private Optional<Solved> solved(Wanted wanted) {
    return switch (wanted) {
      case Wanted.Across(Place place) -> of(place);
      case Wanted.Widest(Place place) -> of(place);
      case Wanted.Depth(Place place) -> of(place);
      case Wanted.Fall(Place from, Place to) -> both(from, to);
      case Wanted.Length(String reach) -> of(new Place(reach, 0));
    };
  }
}
