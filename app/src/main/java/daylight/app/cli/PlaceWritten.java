package daylight.app.cli;

import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Reading;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A place of a line as it was typed: the label of a finding or a locate, or a reach and a distance.
 *
 * @param finding which finding it is; null for none
 */
record PlaceWritten(Place place, @Nullable PlacedFinding finding) {

  /**
   * What was typed; empty, with a complaint, where it is nowhere. A label that was used on several
   * visits means the last.
   */
  static Optional<PlaceWritten> of(Given given, Line line, String option, String written) {
    String name = written.strip();
    PlacedFinding finding = null;
    for (PlacedFinding placed : line.findings()) {
      finding = placed.finding().label().equals(name) ? placed : finding;
    }
    if (finding != null) {
      return Optional.of(new PlaceWritten(finding.from(), finding));
    }
    for (LocateFit fit : line.locates()) {
      if (fit.entry().label().equals(name)) {
        return Optional.of(new PlaceWritten(fit.place(), null));
      }
    }
    int colon = name.lastIndexOf(':');
    String reach = colon < 1 ? "" : name.substring(0, colon).strip();
    if (line.findRun(reach).isEmpty()) {
      given.complain(option, "figure.dig.nowhere", Given.text(written));
      return Optional.empty();
    }
    Reading distance = given.lengthFromZero(option, name.substring(colon + 1).strip());
    return Optional.ofNullable(distance)
        .map(d -> new PlaceWritten(new Place(reach, d.value()), null));
  }
}
