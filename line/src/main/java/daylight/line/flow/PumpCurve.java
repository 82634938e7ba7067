package daylight.line.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * How high a pump lifts how much. The head never grows with the flow. Flow in cubic metres per
 * second, head in metres.
 */
public sealed interface PumpCurve {
  /** The head at a flow from 0 to {@link #last}. */
  double head(double flow);

  /** The flow beyond which nothing is known of it. */
  double last();

  /** The head at no flow: it lifts nothing higher. */
  default double shutOff() {
    return head(0);
  }

  /** One point of a curve. */
  record Point(double flow, double head) {}

  /** What is wrong with the points of a curve. */
  enum Fault {
    /** There are fewer than two. */
    TOO_FEW,
    /** The flow of a point is not more than that of the one before. */
    FLOW_NOT_RISING,
    /** The head of a point is more than that of the one before. */
    HEAD_RISING,
    /** A head is below 0. */
    BELOW_ZERO,
    /** All points have the same head. */
    FLAT
  }

  /**
   * A fault and where it is.
   *
   * @param point the place of the point in the list, from 0
   */
  record Wrong(Fault fault, int point) {}

  /** Everything that is wrong with the points of a curve; empty for a curve. */
  static List<Wrong> wrong(List<Point> points) {
    List<Wrong> wrong = new ArrayList<>();
    if (points.size() < 2) {
      wrong.add(new Wrong(Fault.TOO_FEW, 0));
    }
    for (int i = 0; i < points.size(); i++) {
      if (!(points.get(i).head() >= 0) || !(points.get(i).flow() >= 0)) {
        wrong.add(new Wrong(Fault.BELOW_ZERO, i));
      }
      if (i > 0 && !(points.get(i).flow() > points.get(i - 1).flow())) {
        wrong.add(new Wrong(Fault.FLOW_NOT_RISING, i));
      }
      if (i > 0 && points.get(i).head() > points.get(i - 1).head()) {
        wrong.add(new Wrong(Fault.HEAD_RISING, i));
      }
    }
    boolean flat = points.stream().mapToDouble(Point::head).distinct().count() == 1;
    if (points.size() >= 2 && flat) {
      wrong.add(new Wrong(Fault.FLAT, points.size() - 1));
    }
    return wrong;
  }

  /**
   * A curve through points, bent between them but never rising (Fritsch and Carlson, from memory).
   * Before its first point it is level: a pump is taken to lift no higher than was read.
   */
  static PumpCurve through(List<Point> points) {
    List<Wrong> wrong = wrong(points);
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException("no pump curve: " + wrong);
    }
    return Through.of(points);
  }

  /**
   * head = a − b × flow².
   *
   * @param a shut-off head, metres, positive
   * @param b metres per (cubic metre per second)², positive
   */
  record Parabola(double a, double b) implements PumpCurve {
    public Parabola {
      if (!(a > 0) || !(b > 0)) {
        throw new IllegalArgumentException("a and b must be positive, were " + a + ", " + b);
      }
    }

    /** From what stands on a plate: the greatest head and the greatest flow. */
    public static Parabola ofPlate(double head, double flow) {
      return new Parabola(head, head / (flow * flow));
    }

    @Override
    public double head(double flow) {
      return a - b * flow * flow;
    }

    @Override
    public double last() {
      return StrictMath.sqrt(a / b);
    }
  }

  /**
   * A curve through points.
   *
   * @param points by rising flow
   * @param slopes of the curve at each
   */
  record Through(List<Point> points, List<Double> slopes) implements PumpCurve {
    public Through {
      points = List.copyOf(points);
      slopes = List.copyOf(slopes);
    }

    private static Through of(List<Point> points) {
      int last = points.size() - 1;
      List<Double> slopes = new ArrayList<>();
      for (int i = 0; i <= last; i++) {
        if (i == 0) {
          slopes.add(chord(points, 0));
        } else if (i == last) {
          slopes.add(chord(points, last - 1));
        } else {
          slopes.add(between(points, i));
        }
      }
      return new Through(points, slopes);
    }

    private static double chord(List<Point> points, int from) {
      Point one = points.get(from);
      Point next = points.get(from + 1);
      return (next.head() - one.head()) / (next.flow() - one.flow());
    }

    /** The weighted harmonic mean of both chords: it cannot overshoot. */
    private static double between(List<Point> points, int at) {
      double before = chord(points, at - 1);
      double after = chord(points, at);
      if (before == 0 || after == 0) {
        return 0;
      }
      double left = points.get(at).flow() - points.get(at - 1).flow();
      double right = points.get(at + 1).flow() - points.get(at).flow();
      double one = 2 * right + left;
      double other = right + 2 * left;
      return (one + other) / (one / before + other / after);
    }

    @Override
    public double head(double flow) {
      if (flow <= points.getFirst().flow()) {
        return points.getFirst().head();
      }
      int at = 0;
      while (at < points.size() - 2 && flow > points.get(at + 1).flow()) {
        at++;
      }
      Point one = points.get(at);
      Point next = points.get(at + 1);
      double wide = next.flow() - one.flow();
      double t = Math.min(1, (flow - one.flow()) / wide);
      double u = 1 - t;
      return (1 + 2 * t) * u * u * one.head()
          + t * u * u * wide * slopes.get(at)
          + t * t * (3 - 2 * t) * next.head()
          - t * t * u * wide * slopes.get(at + 1);
    }

    @Override
    public double last() {
      return points.getLast().flow();
    }
  }
}
