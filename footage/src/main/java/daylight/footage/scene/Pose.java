package daylight.footage.scene;

import daylight.line.book.Bend;

/**
 * Where a ring of the pipe is, and which way it faces.
 *
 * @param middle its middle
 * @param along the way the pipe goes, of length 1
 * @param right to the right for one who looks that way
 * @param upward the third
 */
record Pose(Space middle, Space along, Space right, Space upward) {
  Pose moved(double ahead) {
    return new Pose(middle.blend(1, along, ahead), along, right, upward);
  }

  Pose aside(double toRight, double toUp) {
    Space moved = middle.blend(1, right, toRight).blend(1, upward, toUp);
    return new Pose(moved, along, right, upward);
  }

  /** Turned on the spot by an angle in radians; of an unknown sense, to the right. */
  Pose turned(double angle, Bend.Sense sense) {
    boolean back = sense == Bend.Sense.LEFT || sense == Bend.Sense.DOWN;
    double sin = StrictMath.sin(back ? -angle : angle);
    double cos = StrictMath.cos(angle);
    boolean upright = sense == Bend.Sense.UP || sense == Bend.Sense.DOWN;
    Space toward = upright ? upward : right;
    Space turned = along.blend(cos, toward, sin);
    Space side = toward.blend(cos, along, -sin);
    return new Pose(middle, turned, upright ? right : side, upright ? side : upward);
  }
}
