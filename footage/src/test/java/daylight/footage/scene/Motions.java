package daylight.footage.scene;

import java.util.ArrayList;
import java.util.List;

/** What a counter reads that is zeroed on the way, and how the camera goes on all the same. */
final class Motions {
  private final List<Motion> parts = new ArrayList<>();
  private final List<Double> begins = new ArrayList<>();
  private final Motion camera;
  private final double end;

  /** Rows of seconds and metres; of two rows at one second the second is what it was set to. */
  Motions(double[][] way) {
    List<Motion.Anchor> part = new ArrayList<>();
    List<Motion.Anchor> whole = new ArrayList<>();
    double shift = 0;
    begins.add(Double.NEGATIVE_INFINITY);
    for (int i = 0; i < way.length; i++) {
      if (i > 0 && way[i][0] == way[i - 1][0]) {
        parts.add(new Motion(part));
        part = new ArrayList<>();
        begins.add(way[i][0]);
        shift += way[i - 1][1] - way[i][1];
      } else {
        whole.add(new Motion.Anchor(way[i][0], way[i][1] + shift));
      }
      part.add(new Motion.Anchor(way[i][0], way[i][1]));
    }
    parts.add(new Motion(part));
    camera = new Motion(whole);
    end = way[way.length - 1][0];
  }

  Motion camera() {
    return camera;
  }

  double end() {
    return end;
  }

  double readingAt(double seconds) {
    int part = parts.size() - 1;
    while (begins.get(part) > seconds) {
      part--;
    }
    return parts.get(part).readingAt(seconds);
  }
}
