package daylight.report.draw;

import daylight.line.book.Place;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;

/** The strokes and letters that drawings are made of. */
final class Pen {
  private static final double HAIR = 5;

  private Pen() {}

  static Tag text(double x, double baseline, String text, double size, boolean bold, String fill) {
    Tag tag =
        Tag.of("text", text)
            .with("x", x)
            .with("y", baseline)
            .with("font-size", size)
            .with("fill", fill);
    return bold ? tag.with("font-weight", "700") : tag;
  }

  /** Text on a white rim, so that it reads on top of strokes. */
  static Tag rimmed(double x, double baseline, String text, double size, boolean bold) {
    return text(x, baseline, text, size, bold, Ink.DARK)
        .with("stroke", Ink.PAPER)
        .with("stroke-width", 2.4)
        .with("stroke-linejoin", "round")
        .with("paint-order", "stroke");
  }

  static Tag line(Stroke s, String colour, double width) {
    return Tag.of("line")
        .with("x1", s.x1())
        .with("y1", s.y1())
        .with("x2", s.x2())
        .with("y2", s.y2())
        .with("stroke", colour)
        .with("stroke-width", width);
  }

  static Tag path(String d, String colour, double width) {
    return Tag.of("path")
        .with("d", d)
        .with("fill", "none")
        .with("stroke", colour)
        .with("stroke-width", width)
        .with("stroke-linejoin", "round")
        .with("stroke-linecap", "round");
  }

  static Tag filled(String d, String fill) {
    return Tag.of("path").with("d", d).with("fill", fill);
  }

  static Tag circle(double x, double y, double r, String fill, String stroke, double width) {
    return Tag.of("circle")
        .with("cx", x)
        .with("cy", y)
        .with("r", r)
        .with("fill", fill)
        .with("stroke", stroke)
        .with("stroke-width", width);
  }

  static Tag box(Box box, String fill, String stroke) {
    return Tag.of("rect")
        .with("x", box.x())
        .with("y", box.y())
        .with("width", box.width())
        .with("height", box.height())
        .with("fill", fill)
        .with("stroke", stroke);
  }

  /** Points as path data, closed or not. */
  static String through(List<Point> points, boolean closed) {
    StringBuilder d = new StringBuilder();
    for (Point point : points) {
      d.append(d.isEmpty() ? "M" : "L")
          .append(Tag.number(point.x()))
          .append(' ')
          .append(Tag.number(point.y()));
    }
    return d.append(closed ? "Z" : "").toString();
  }

  /**
   * The strokes between neighbouring points; points that lie closer than a hair are passed over.
   */
  static List<Stroke> strokes(List<Point> points) {
    List<Stroke> strokes = new ArrayList<>();
    Point from = points.getFirst();
    for (Point to : points.subList(1, points.size())) {
      double length = StrictMath.hypot(to.x() - from.x(), to.y() - from.y());
      if (length >= HAIR || to.equals(points.getLast())) {
        strokes.add(new Stroke(from.x(), from.y(), to.x(), to.y()));
        from = to;
      }
    }
    return strokes;
  }

  /** A group that says which place in the pipe it shows. */
  static Tag at(Place place) {
    return Tag.of("g").with("data-place", place.reach()).with("data-distance", place.distance());
  }

  /** Stripes to tell a filled area in black and white. */
  static Tag stripes(String id, String colour, double turn, double gap) {
    return Tag.of("pattern")
        .with("id", id)
        .with("width", gap)
        .with("height", gap)
        .with("patternUnits", "userSpaceOnUse")
        .with("patternTransform", "rotate(" + Tag.number(turn) + ")")
        .add(line(new Stroke(0, 0, 0, gap), colour, 1));
  }

  /** Short strokes to tell a filled area in black and white. */
  static Tag dashes(String id, String colour) {
    return tile(id, 9, 6).add(path("M1 2h4M5.5 5h3", colour, 0.9));
  }

  /** Dots to tell a filled area in black and white. */
  static Tag dots(String id, String colour) {
    return tile(id, 5, 5)
        .add(circle(1.2, 1.2, 0.7, colour, "none", 0), circle(3.7, 3.7, 0.7, colour, "none", 0));
  }

  private static Tag tile(String id, double width, double height) {
    return Tag.of("pattern")
        .with("id", id)
        .with("width", width)
        .with("height", height)
        .with("patternUnits", "userSpaceOnUse");
  }

  /** Text broken into lines no wider than a width; a word that is wider is broken too. */
  static List<String> wrap(String text, double size, boolean bold, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Typeface.width(longer, size, bold) > width) {
        lines.add(line.toString());
        longer = word;
      }
      while (Typeface.width(longer, size, bold) > width && longer.length() > 1) {
        String head = head(longer, size, bold, width);
        lines.add(head);
        longer = longer.substring(head.length());
      }
      line.setLength(0);
      line.append(longer);
    }
    lines.add(line.toString());
    return lines;
  }

  /** As much of the beginning of a text as fits, one letter at least. */
  private static String head(String text, double size, boolean bold, double width) {
    int end = text.length();
    int first = text.offsetByCodePoints(0, 1);
    while (end > first && Typeface.width(text.substring(0, end), size, bold) > width) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end);
  }

  /** A text cut to a width, with an ellipsis where something was cut away. */
  static String cut(String text, double size, boolean bold, double width) {
    if (Typeface.width(text, size, bold) <= width) {
      return text;
    }
    String cut = text;
    while (!cut.isEmpty() && Typeface.width(cut + "…", size, bold) > width) {
      cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
    }
    return cut.strip() + "…";
  }
}
