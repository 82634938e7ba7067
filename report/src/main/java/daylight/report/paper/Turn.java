package daylight.report.paper;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.util.Matrix;

/** Reads what moves, turns and scales an element (SVG 1.1, chapter 7.6). */
final class Turn {
  private static final Pattern STEP = Pattern.compile("\\s*(\\w+)\\s*\\(([^)]*)\\)\\s*,?");

  private Turn() {}

  /** The matrix of a {@code transform}. Refuses a step that is not known. */
  static Matrix read(String transform) {
    Matrix matrix = new Matrix();
    Matcher steps = STEP.matcher(transform);
    int end = 0;
    while (steps.lookingAt()) {
      double[] numbers =
          Arrays.stream(steps.group(2).strip().split("[\\s,]+", -1))
              .mapToDouble(Double::parseDouble)
              .toArray();
      matrix = step(steps.group(1), numbers).multiply(matrix);
      end = steps.end();
      steps.region(end, transform.length());
    }
    if (end < transform.length()) {
      throw new IllegalArgumentException("no transform: " + transform);
    }
    return matrix;
  }

  private static Matrix step(String name, double[] n) {
    return switch (name) {
      case "translate" ->
          Matrix.getTranslateInstance((float) n[0], n.length > 1 ? (float) n[1] : 0);
      case "scale" -> Matrix.getScaleInstance((float) n[0], (float) n[n.length - 1]);
      case "rotate" -> n.length == 3 ? about(n[0], n[1], n[2]) : about(n[0], 0, 0);
      case "matrix" ->
          new Matrix(
              (float) n[0], (float) n[1], (float) n[2], (float) n[3], (float) n[4], (float) n[5]);
      default -> throw new IllegalArgumentException("no step of a transform: " + name);
    };
  }

  private static Matrix about(double degrees, double x, double y) {
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    return new Matrix(
        (float) cos,
        (float) sin,
        (float) -sin,
        (float) cos,
        (float) (x - cos * x + sin * y),
        (float) (y - sin * x - cos * y));
  }
}
