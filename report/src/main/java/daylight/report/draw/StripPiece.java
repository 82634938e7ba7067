package daylight.report.draw;

import daylight.line.book.Material;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Reading;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of one material and one bore.
 *
 * @param from station of its upstream end, metres
 * @param to station of its downstream end, metres
 * @param material in words
 * @param recorded inside diameter, metres; null when nobody recorded it
 */
record StripPiece(double from, double to, String material, @Nullable Double recorded) {
  /** The bore that is drawn where none was recorded, metres: a usual house drain. */
  static final double NOMINAL = 0.1;

  private static final Set<String> CHANGES = Set.of("material-change", "bore-change");

  double bore() {
    return recorded == null ? NOMINAL : recorded;
  }

  /** The pieces of a strip in order. */
  static List<StripPiece> of(StripRoute strip, StripLook look) {
    List<StripPiece> pieces = new ArrayList<>();
    for (Run run : strip.route().runs()) {
      double start = strip.station(run.at(0));
      boolean last = run.equals(strip.route().runs().getLast());
      double end = last ? strip.length() : start + Route.extent(run);
      Reading bore = run.reach().bore();
      StripPiece now =
          new StripPiece(
              start,
              end,
              strip.subject().words().name(run.reach().material()),
              bore == null ? null : Double.valueOf(bore.value()));
      for (PlacedFinding change : changes(strip, run)) {
        double at = strip.station(change.from());
        pieces.add(new StripPiece(now.from(), at, now.material(), now.recorded()));
        now = now.after(change, at, look.down(change), strip.subject().words());
      }
      pieces.add(now);
    }
    return merged(pieces.stream().filter(piece -> piece.to() > piece.from()).toList());
  }

  /** A reach that goes on as the one before it does is the same piece of pipe. */
  private static List<StripPiece> merged(List<StripPiece> pieces) {
    List<StripPiece> merged = new ArrayList<>();
    for (StripPiece piece : pieces) {
      StripPiece before = merged.isEmpty() ? null : merged.getLast();
      boolean same =
          before != null
              && before.material().equals(piece.material())
              && Objects.equals(before.recorded(), piece.recorded());
      if (same && before != null) {
        merged.removeLast();
        merged.add(new StripPiece(before.from(), piece.to(), piece.material(), piece.recorded()));
      } else {
        merged.add(piece);
      }
    }
    return merged;
  }

  private static List<PlacedFinding> changes(StripRoute strip, Run run) {
    return strip.findings().stream()
        .filter(f -> CHANGES.contains(f.finding().kind()))
        .filter(f -> f.from().reach().equals(run.reach().label()))
        .sorted(Comparator.comparingDouble(f -> f.from().distance()))
        .toList();
  }

  /** Beyond a change; what a camera that came against the water left behind is not known. */
  private StripPiece after(PlacedFinding change, double at, boolean down, Words words) {
    if (change.finding().kind().equals("material-change")) {
      String becomes = down ? change.finding().words().get("becomes") : null;
      return new StripPiece(at, to, named(becomes, words), recorded);
    }
    Reading becomes = down ? change.finding().quantities().get("becomes") : null;
    return new StripPiece(
        at, to, material, becomes == null ? null : Double.valueOf(becomes.value()));
  }

  private static String named(@Nullable String material, Words words) {
    if (material == null) {
      return words.name(Material.UNKNOWN);
    }
    String key = "material." + material.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]", "_");
    return words.has(key) ? words.word(key) : material;
  }

  /** The piece of a list that a station lies in; the last one beyond its end. */
  static StripPiece at(List<StripPiece> pieces, double station) {
    return pieces.stream().filter(p -> station < p.to()).findFirst().orElse(pieces.getLast());
  }

  static StripPiece at(List<StripPiece> pieces, StripRoute strip, Place place) {
    return at(pieces, strip.station(place));
  }
}
