package daylight.report.draw;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Shown;
import java.util.ArrayList;
import java.util.List;

/**
 * One scale for every strip of a drawing.
 *
 * @param along the pipe
 * @param times how many times larger it is across the pipe
 * @param width of the longest band, points
 */
record StripScale(Scale along, int times, double width) {
  /** The largest bore is drawn no higher than this, points. */
  private static final double PIPE = 42;

  /** More bands than this there are only where labels would find no room otherwise. */
  private static final int MOST_BANDS = 4;

  private static final int MOST_FOR_LABELS = 12;
  private static final double METRES_IN_A_BAND = 15.5;
  private static final double LABELS_IN_A_BAND = 14;
  private static final double STILLS_IN_A_BAND = 6;

  /** From where to where one band runs, metres. */
  record Cut(double from, double to) {}

  /**
   * Chooses how often the first strip is broken: so that what is told about it finds room.
   *
   * @param bore the largest, metres
   */
  static StripScale of(StripRoute first, double bore, double width, Shown shown) {
    long stills =
        first.findings().stream()
            .filter(f -> first.subject().shots().of(f.finding().label()).isPresent())
            .count();
    double wanted =
        Math.max(
            Math.max(first.length() / METRES_IN_A_BAND, stills / STILLS_IN_A_BAND),
            first.findings().size() / LABELS_IN_A_BAND);
    double crowded =
        first.findings().stream().filter(StripScale::isLabelled).count() / LABELS_IN_A_BAND;
    double bands =
        Math.max(
            Math.clamp(Math.ceil(wanted), 1, MOST_BANDS),
            Math.min(Math.ceil(crowded), MOST_FOR_LABELS));
    double metres = Math.max(first.length() / bands, width * bore / PIPE);
    Scale along = Scale.fitting(metres, width, shown);
    return new StripScale(along, whole(PIPE / (bore * along.pointsPerMetre())), width);
  }

  private static boolean isLabelled(PlacedFinding placed) {
    return !placed.finding().kind().equals("joint");
  }

  /** Points on the sheet for a metre along the pipe. */
  double points() {
    return along.pointsPerMetre();
  }

  /** A whole number that reads easily, no greater than a value of at least about one. */
  private static int whole(double most) {
    int floor = Math.max(1, (int) Math.floor(most + 1e-9));
    int step = floor < 20 ? 1 : floor < 100 ? 5 : 10;
    return floor / step * step;
  }

  /** The strip in bands of equal length. */
  List<Cut> cuts(StripRoute strip) {
    int count = (int) Math.max(1, Math.ceil(strip.length() * points() / width - 1e-6));
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      cuts.add(new Cut(strip.length() * i / count, strip.length() * (i + 1) / count));
    }
    return cuts;
  }

  /** Points across the pipe for a metre. */
  double across() {
    return points() * times;
  }
}
