package daylight.report.paper;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/**
 * Path data (SVG 1.1, chapter 8.3) as path operators of a content stream. All its commands are
 * known; a curve of second order becomes one of third order, an arc up to four.
 */
final class Outline {
  private static final Pattern TOKEN =
      Pattern.compile("([A-Za-z])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)|[\\s,]+");

  private final PDPageContentStream out;
  private final Matcher tokens;
  private double x;
  private double y;
  private double startX;
  private double startY;

  /** The control point that a smooth command reflects; the point itself after any other. */
  private double controlX;

  private double controlY;
  private char before = 'M';

  private Outline(String data, PDPageContentStream out) {
    this.out = out;
    this.tokens = TOKEN.matcher(data);
  }

  /** Adds the path to the stream's current path. Refuses what is not path data. */
  static void trace(String data, PDPageContentStream out) throws IOException {
    try {
      new Outline(data, out).trace(data.length());
    } catch (IllegalStateException | IndexOutOfBoundsException e) {
      throw new IllegalArgumentException("no path data: " + data, e);
    }
  }

  private void trace(int end) throws IOException {
    char command = 0;
    while (more(end)) {
      if (tokens.group(1) != null) {
        command = tokens.group(1).charAt(0);
        tokens.region(tokens.end(), end);
      } else if (command == 0 || command == 'Z' || command == 'z') {
        throw new IllegalStateException("a number without a command");
      }
      step(command);
      before = Character.toUpperCase(command);
      command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
    }
  }

  private boolean more(int end) {
    while (tokens.lookingAt()) {
      if (tokens.group(1) != null || tokens.group(2) != null) {
        return true;
      }
      tokens.region(tokens.end(), end);
    }
    if (tokens.regionStart() < end) {
      throw new IllegalStateException("unknown sign");
    }
    return false;
  }

  private double number() {
    if (!more(tokens.regionEnd()) || tokens.group(2) == null) {
      throw new IllegalStateException("a number is missing");
    }
    double number = Double.parseDouble(tokens.group(2));
    tokens.region(tokens.end(), tokens.regionEnd());
    return number;
  }

  private void step(char command) throws IOException {
    boolean relative = Character.isLowerCase(command);
    double fromX = relative ? x : 0;
    double fromY = relative ? y : 0;
    switch (Character.toUpperCase(command)) {
      case 'M' -> move(fromX + number(), fromY + number());
      case 'L' -> line(fromX + number(), fromY + number());
      case 'H' -> line(fromX + number(), y);
      case 'V' -> line(x, fromY + number());
      case 'C' ->
          cubic(
              fromX + number(),
              fromY + number(),
              fromX + number(),
              fromY + number(),
              fromX + number(),
              fromY + number());
      case 'S' ->
          cubic(
              smoothX('C', 'S'),
              smoothY('C', 'S'),
              fromX + number(),
              fromY + number(),
              fromX + number(),
              fromY + number());
      case 'Q' -> quadratic(fromX + number(), fromY + number(), fromX + number(), fromY + number());
      case 'T' ->
          quadratic(smoothX('Q', 'T'), smoothY('Q', 'T'), fromX + number(), fromY + number());
      case 'A' -> {
        Arc arc = new Arc(number(), number(), number(), number() != 0, number() != 0);
        arc(arc, fromX + number(), fromY + number());
      }
      case 'Z' -> close();
      default -> throw new IllegalStateException("unknown command " + command);
    }
  }

  private double smoothX(char one, char other) {
    return before == one || before == other ? 2 * x - controlX : x;
  }

  private double smoothY(char one, char other) {
    return before == one || before == other ? 2 * y - controlY : y;
  }

  private void move(double toX, double toY) throws IOException {
    out.moveTo((float) toX, (float) toY);
    startX = toX;
    startY = toY;
    arrive(toX, toY, toX, toY);
  }

  private void line(double toX, double toY) throws IOException {
    out.lineTo((float) toX, (float) toY);
    arrive(toX, toY, toX, toY);
  }

  private void close() throws IOException {
    out.closePath();
    arrive(startX, startY, startX, startY);
  }

  private void quadratic(double cx, double cy, double toX, double toY) throws IOException {
    double oneX = x + 2 * (cx - x) / 3;
    double oneY = y + 2 * (cy - y) / 3;
    cubic(oneX, oneY, toX + 2 * (cx - toX) / 3, toY + 2 * (cy - toY) / 3, toX, toY);
    controlX = cx;
    controlY = cy;
  }

  private void cubic(double ax, double ay, double bx, double by, double toX, double toY)
      throws IOException {
    out.curveTo((float) ax, (float) ay, (float) bx, (float) by, (float) toX, (float) toY);
    arrive(toX, toY, bx, by);
  }

  private void arc(Arc arc, double toX, double toY) throws IOException {
    for (Arc.Curve c : arc.between(x, y, toX, toY)) {
      cubic(c.ax(), c.ay(), c.bx(), c.by(), c.x(), c.y());
    }
  }

  private void arrive(double toX, double toY, double controlAtX, double controlAtY) {
    x = toX;
    y = toY;
    controlX = controlAtX;
    controlY = controlAtY;
  }
}
