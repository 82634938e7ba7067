package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads path data (SVG 1.1, 8.3): ends of its strokes, and what bends them, as points. */
final class Outline {
  private static final Pattern STEP = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
  private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+\\.?\\d*|\\.\\d+)");

  private final List<Point> points = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private double x;
  private double y;

  private Outline(String d) {
    Matcher step = STEP.matcher(d);
    while (step.find()) {
      List<Double> numbers = new ArrayList<>();
      Matcher number = NUMBER.matcher(step.group(2));
      while (number.find()) {
        numbers.add(Double.parseDouble(number.group()));
      }
      take(step.group(1).charAt(0), numbers);
    }
  }

  static List<Point> points(String d) {
    return new Outline(d).points;
  }

  static List<Stroke> strokes(String d) {
    return new Outline(d).strokes;
  }

  private void take(char command, List<Double> n) {
    boolean relative = Character.isLowerCase(command);
    switch (Character.toUpperCase(command)) {
      case 'M' -> pairs(n, 2, relative, false);
      case 'L', 'T' -> pairs(n, 2, relative, true);
      case 'Q' -> pairs(n, 4, relative, true);
      case 'C' -> pairs(n, 6, relative, true);
      case 'A' -> {
        for (int i = 0; i + 6 < n.size(); i += 7) {
          pairs(n.subList(i + 5, i + 7), 2, relative, true);
        }
      }
      case 'H' -> n.forEach(one -> to(relative ? x + one : one, y, true));
      case 'V' -> n.forEach(one -> to(x, relative ? y + one : one, true));
      case 'Z' -> {}
      default -> throw new AssertionError("this reader does not know " + command);
    }
  }

  /** All but the last pair of each group are handles, from which the outline only bends. */
  private void pairs(List<Double> n, int group, boolean relative, boolean stroke) {
    for (int i = 0; i + group <= n.size(); i += group) {
      double fromX = relative ? x : 0;
      double fromY = relative ? y : 0;
      for (int j = 0; j < group; j += 2) {
        double atX = fromX + n.get(i + j);
        double atY = fromY + n.get(i + j + 1);
        if (j + 2 < group) {
          points.add(new Point(atX, atY));
        } else {
          to(atX, atY, stroke || i > 0);
        }
      }
    }
  }

  private void to(double nextX, double nextY, boolean stroke) {
    if (stroke) {
      strokes.add(new Stroke(x, y, nextX, nextY));
    }
    x = nextX;
    y = nextY;
    points.add(new Point(x, y));
  }
}
