package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Place;
import java.util.List;
import java.util.Optional;

/** How well the judged visit saw which place of the site, by the pass that saw it best. */
public final class Coverage {
  private final List<Strip> strips;

  /** A strip and what was seen along it. */
  private record Strip(StripRoute route, List<Sight> sight) {}

  private Coverage(List<Strip> strips) {
    this.strips = List.copyOf(strips);
  }

  /** That of the visit that was judged. */
  public static Coverage of(Subject subject) {
    return new Coverage(
        StripRoute.of(subject).stream().map(route -> new Strip(route, route.sight())).toList());
  }

  /** How well a place was seen; where two stretches meet the one before counts. */
  public Sight.Seen at(Place place) {
    Optional<Strip> strip = strips.stream().filter(one -> one.route().holds(place)).findFirst();
    return strip.stream()
        .flatMap(one -> one.sight().stream())
        .filter(sight -> sight.to() >= strip.orElseThrow().route().station(place))
        .findFirst()
        .map(Sight::seen)
        .orElse(Sight.Seen.NOT_SEEN);
  }
}
