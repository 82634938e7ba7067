package daylight.report.draw;

import daylight.line.book.Papers;
import daylight.report.markup.Tag;

/**
 * How marks of other services are drawn: in the colour that is painted on the ground for them by
 * the public colour code (apwa-colours), edged dark so that yellow shows on white, and each with
 * dashes of its own, so that they differ without colour too. The shades are ours.
 */
final class ServiceInk {
  private static final double WIDE = 2.4;
  private static final double EDGE = 0.7;

  private ServiceInk() {}

  private static String colour(Papers.Service service) {
    return switch (service) {
      case ELECTRIC -> "#d8262c";
      case GAS -> "#ffd400";
      case COMMUNICATION -> "#f47b20";
      case WATER -> "#1666c1";
      case RECLAIMED_WATER -> "#7d3f98";
      case SEWER -> "#1f9a4c";
      case UNKNOWN -> Ink.FAINT;
    };
  }

  private static String dashes(Papers.Service service) {
    return switch (service) {
      case ELECTRIC -> "3 3";
      case GAS -> "9 4";
      case COMMUNICATION -> "9 3 2 3";
      case WATER -> "14 3";
      case RECLAIMED_WATER -> "14 3 2 3";
      case SEWER -> "5 2";
      case UNKNOWN -> "2 5";
    };
  }

  /** A way between places where paint was seen. */
  static Tag way(Papers.Service service, String d) {
    return Tag.of("g")
        .add(stroke(d, Ink.DARK, WIDE + 2 * EDGE, dashes(service)))
        .add(stroke(d, colour(service), WIDE, dashes(service)));
  }

  private static Tag stroke(String d, String colour, double width, String dashes) {
    return Tag.of("path")
        .with("d", d)
        .with("fill", "none")
        .with("stroke", colour)
        .with("stroke-width", width)
        .with("stroke-dasharray", dashes);
  }

  /** A place where paint was seen. */
  static Tag spot(Papers.Service service, double x, double y) {
    return Pen.circle(x, y, 2.4, colour(service), Ink.DARK, EDGE);
  }

  /**
   * What stands for it in the signs.
   *
   * @param runs whether it was seen to run from place to place
   */
  static Tag sign(Papers.Service service, boolean runs) {
    return runs
        ? way(service, "M-10 0H10").add(spot(service, 10, 0))
        : Tag.of("g").add(spot(service, 0, 0));
  }
}
