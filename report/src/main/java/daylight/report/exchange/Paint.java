package daylight.report.exchange;

import daylight.report.map.Layer;
import daylight.report.map.Row;

/**
 * Colours by the public code for marks on the ground (apwa-colours): green drains, white proposed
 * digging, pink survey marks, and that of its sort for every other service. Layers and labels say
 * the same in words. The shades are ours.
 *
 * @param number in the 255 colours of a drawing
 * @param rgb as six hexadecimal digits
 */
record Paint(int number, String rgb) {
  private static final Paint GREEN = new Paint(3, "1f9a4c");
  private static final Paint WHITE = new Paint(7, "ffffff");
  private static final Paint PINK = new Paint(6, "ff69b4");
  private static final Paint RED = new Paint(1, "d8262c");
  private static final Paint YELLOW = new Paint(2, "ffd400");
  private static final Paint ORANGE = new Paint(30, "f47b20");
  private static final Paint BLUE = new Paint(5, "1666c1");
  private static final Paint PURPLE = new Paint(200, "7d3f98");
  private static final Paint GREY = new Paint(8, "808080");

  static Paint of(Layer layer) {
    return switch (layer) {
      case REACH, STATION, NODE, FINDING, BAND -> GREEN;
      case DIG_BOX -> WHITE;
      case LOCATE, LANDMARK, TIE -> PINK;
      case NOTICE, SERVICE -> GREY;
    };
  }

  /** That of a row: a service has its own. */
  static Paint of(Layer layer, Row row) {
    return layer == Layer.SERVICE ? service(row.text("kind")) : of(layer);
  }

  static Paint service(String kind) {
    return switch (kind) {
      case "electric" -> RED;
      case "gas" -> YELLOW;
      case "communication" -> ORANGE;
      case "water" -> BLUE;
      case "reclaimed_water" -> PURPLE;
      case "sewer" -> GREEN;
      default -> GREY;
    };
  }

  /** As KML has it: blue, green, red. */
  String kml() {
    return rgb.substring(4, 6) + rgb.substring(2, 4) + rgb.substring(0, 2);
  }
}
