package daylight.line.course;

/** What the truth of a generated property is like. */
enum Nature {
  /** As the estimator supposes: its own assumptions are true. */
  SUPPOSED(1),
  /**
   * Otherwise: readings with heavy tails, distortion as filtered noise, cable that snakes more the
   * further it is pushed, bends off by anything up to 8°, pipes of straight lengths that turn at
   * their joints. The sizes of all of it are the same.
   */
  OTHERWISE(2);

  private final int seed;

  Nature(int seed) {
    this.seed = seed;
  }

  /** Makes the two natures draw differently from one seed. */
  int seed() {
    return seed;
  }
}
