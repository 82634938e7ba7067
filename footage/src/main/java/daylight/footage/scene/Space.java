package daylight.footage.scene;

/** A point or a direction: to the right of the lens, above it, ahead of it; metres for points. */
record Space(double x, double y, double z) {
  /** So much of this and so much of another. */
  Space blend(double here, Space other, double there) {
    return new Space(
        here * x + there * other.x, here * y + there * other.y, here * z + there * other.z);
  }

  double dot(Space other) {
    return x * other.x + y * other.y + z * other.z;
  }
}
