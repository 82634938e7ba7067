package daylight.footage.scene;

/** Something painted on the wall, over the bare pipe. */
interface Mark {
  /** Where its first ring is, in metres in. */
  double from();

  /** Where its last ring is. */
  double to();

  /** Paints its part of one ring between the two. */
  void paint(Ring ring);

  /** A step from 0 below {@code zero} to 1 above {@code one}, which may be the lesser. */
  static float rise(double zero, double one, double value) {
    return (float) Cloud.ease((value - zero) / (one - zero));
  }
}
