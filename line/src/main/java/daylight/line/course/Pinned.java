package daylight.line.course;

/** A mark and the knot it hangs on. */
record Pinned(Mark mark, int limb, int knot) {}
