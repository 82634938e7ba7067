package daylight.line.dig;

import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.List;

/**
 * The rectangle to open so that it holds the pipe 19 times of 20, with room to work.
 *
 * @param centre above the place
 * @param along its length in the direction of the pipe, metres
 * @param across its width square to that, metres
 * @param bearing of the pipe, radians clockwise from grid north
 */
public record DigBox(PlanPoint centre, double along, double across, double bearing) {
  /** Of the chi-square distribution with two degrees of freedom at 95 %: −2·ln 0.05. */
  private static final double CHI_SQUARE_95 = 5.991464547;

  /** Round the 95 % ellipse of a covariance and a margin on every side, metres. */
  static DigBox around(PlanPoint centre, Covariance2 spread, double bearing, double margin) {
    return new DigBox(
        centre,
        2 * (reach(spread, bearing) + margin),
        2 * (reach(spread, bearing + Math.PI / 2) + margin),
        bearing);
  }

  /** How far the ellipse reaches in a direction: its support, √(χ²·uᵀCu). */
  private static double reach(Covariance2 c, double bearing) {
    return Math.sqrt(CHI_SQUARE_95 * Vector.of(bearing).variance(c));
  }

  /** Its corners in order. */
  public List<PlanPoint> corners() {
    Vector forward = Vector.of(bearing);
    Vector right = Vector.of(bearing + Math.PI / 2);
    return List.of(
        corner(forward, right, 1, -1),
        corner(forward, right, 1, 1),
        corner(forward, right, -1, 1),
        corner(forward, right, -1, -1));
  }

  private PlanPoint corner(Vector forward, Vector right, int ahead, int aside) {
    double f = ahead * along / 2;
    double r = aside * across / 2;
    return new PlanPoint(
        centre.x() + f * forward.x() + r * right.x(), centre.y() + f * forward.y() + r * right.y());
  }

  /** Whether a spot lies in it. */
  public boolean holds(PlanPoint spot) {
    Vector away = Vector.between(centre, spot);
    return Math.abs(away.dot(Vector.of(bearing))) <= along / 2
        && Math.abs(away.dot(Vector.of(bearing + Math.PI / 2))) <= across / 2;
  }
}
