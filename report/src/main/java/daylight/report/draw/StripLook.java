package daylight.report.draw;

import daylight.line.book.Bend;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import java.util.Optional;

/** What a head saw, as one sees it who looks with the water. */
final class StripLook {
  private static final double TURN = 2 * Math.PI;

  private final Subject subject;

  StripLook(Subject subject) {
    this.subject = subject;
  }

  /**
   * Where on the wall something is.
   *
   * @param middle radians clockwise from twelve, looking with the water
   * @param low height of its lowest point in parts of the bore
   * @param high height of its highest point in parts of the bore
   */
  record OnWall(double middle, double low, double high) {
    /** Height of its middle in parts of the bore. */
    double height() {
      return (1 + StrictMath.cos(middle)) / 2;
    }

    /** Whether it is at the top rather than at a side. */
    boolean isHigh() {
      return height() > 0.6;
    }

    /** −1 well to the left, 1 well to the right, 0 about the middle. */
    int side() {
      double right = StrictMath.sin(middle);
      return right > 0.45 ? 1 : right < -0.45 ? -1 : 0;
    }
  }

  /** Where a finding is on the wall; empty where nobody noted it or the head may have rolled. */
  Optional<OnWall> onWall(PlacedFinding placed) {
    Finding.Clock clock = placed.finding().clock();
    if (clock == null || rolled(placed.pass())) {
      return Optional.empty();
    }
    boolean down = down(placed);
    double from = down ? clock.from() : -clock.to();
    double to = down ? clock.to() : -clock.from();
    double width = floorMod(to - from);
    double low = reaches(from, width, Math.PI) ? 0 : height(from, from + width, false);
    double high = reaches(from, width, 0) ? 1 : height(from, from + width, true);
    return Optional.of(new OnWall(floorMod(from + width / 2), low, high));
  }

  private static double height(double from, double to, boolean higher) {
    double a = (1 + StrictMath.cos(from)) / 2;
    double b = (1 + StrictMath.cos(to)) / 2;
    return higher ? Math.max(a, b) : Math.min(a, b);
  }

  private static boolean reaches(double from, double width, double angle) {
    return floorMod(angle - from) <= width;
  }

  private static double floorMod(double angle) {
    double rest = angle % TURN;
    return rest < 0 ? rest + TURN : rest;
  }

  private boolean rolled(String pass) {
    return subject.visit().stream()
        .flatMap(visit -> visit.passes().stream())
        .anyMatch(one -> one.label().equals(pass) && one.head() == Pass.Head.UNKNOWN);
  }

  /** Whether a finding was seen by a camera that went with the water. */
  boolean down(PlacedFinding placed) {
    return down(placed.pass(), placed.from());
  }

  /** Whether a pass went with the water through the reach of a place. */
  boolean down(String pass, Place place) {
    return subject.line().passes().stream()
        .filter(one -> one.visit().equals(subject.answers().visit()) && one.pass().equals(pass))
        .flatMap(one -> one.legs().stream())
        .filter(leg -> leg.from().reach().equals(place.reach()))
        .findFirst()
        .map(leg -> leg.down())
        .orElse(true);
  }

  /** Whether a pass of the judged visit was in a reach. */
  boolean cameThrough(String pass, String reach) {
    return subject.line().passes().stream()
        .filter(one -> one.visit().equals(subject.answers().visit()) && one.pass().equals(pass))
        .flatMap(one -> one.legs().stream())
        .anyMatch(leg -> leg.from().reach().equals(reach));
  }

  /** Which way a bend turns for one who goes with the water. */
  Bend.Sense sense(String pass, Place place, Bend bend) {
    if (down(pass, place)) {
      return bend.sense();
    }
    return switch (bend.sense()) {
      case LEFT -> Bend.Sense.RIGHT;
      case RIGHT -> Bend.Sense.LEFT;
      case UP, DOWN, UNKNOWN -> bend.sense();
    };
  }
}
