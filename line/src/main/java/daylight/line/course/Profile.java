package daylight.line.course;

import daylight.line.book.Place;
import java.util.List;

/**
 * Heights of the inside bottom of the pipe at several places of one line, with how they err
 * together: what two of them share falls out of their difference. Metres above the site datum.
 */
public final class Profile {
  private final List<Place> places;
  private final double[] up;
  private final double[] covariance;

  /** Rows of the lower half of the covariance follow each other. */
  Profile(List<Place> places, double[] up, double[] covariance) {
    this.places = List.copyOf(places);
    this.up = up.clone();
    this.covariance = covariance.clone();
  }

  /** Where, in the order in which they were asked for. */
  public List<Place> places() {
    return places;
  }

  /** The height at the place of that index. */
  public double up(int place) {
    return up[place];
  }

  /** The covariance of the heights at two places, square metres. */
  public double covariance(int a, int b) {
    return covariance[a >= b ? a * (a + 1) / 2 + b : b * (b + 1) / 2 + a];
  }
}
