package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The evidence of what is said of the site as a whole; its lines each know their own stations. */
final class Laid {
  private final List<Case> cases;
  private final Set<Evidence> evidence = new LinkedHashSet<>();

  Laid(List<Case> cases) {
    this.cases = cases;
  }

  List<Evidence> evidence() {
    return List.copyOf(evidence);
  }

  private Case of(Place place) {
    return cases.stream()
        .filter(one -> one.has(place.reach()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no line has " + place));
  }

  Argument figure(FigureKey what, Argument value, @Nullable Place at) {
    evidence.add(new Evidence.Figure(what, value, at));
    return value;
  }

  Argument station(Place place) {
    return figure(FigureKey.STATION, new Argument.Length(of(place).station(place)), place);
  }

  Argument from(Place place) {
    Case one = of(place);
    return new Argument.Text(one.named(one.route(place).from()));
  }

  Argument finding(PlacedFinding placed) {
    evidence.add(
        new Evidence.Seen(placed.finding().label(), placed.finding().kind(), placed.from(), null));
    return new Argument.Term("kind." + placed.finding().kind());
  }
}
