package daylight.footage.scene;

/** Looks at the light in the field, before exposure, so that only what changed differs. */
final class Seen {
  private Seen() {}

  static Field at(Script script, double in) {
    Camera camera = new Camera(script, Pushes.bare());
    return camera.paintedAt(in, 20);
  }

  /** The greatest difference in a rectangle given in pixels of the picture of 320 by 240. */
  static double most(Field a, Field b, int left, int top, int right, int bottom) {
    double most = 0;
    for (int y = top / 2; y < bottom / 2; y++) {
      for (int x = left / 2; x < right / 2; x++) {
        int i = (y + Lens.MARGIN) * a.width + x + Lens.MARGIN;
        most = Math.max(most, Math.abs(a.red[i] - b.red[i]));
        most = Math.max(most, Math.abs(a.green[i] - b.green[i]));
        most = Math.max(most, Math.abs(a.blue[i] - b.blue[i]));
      }
    }
    return most;
  }

  /** The mean column of what is nearly black, in pixels of the field. */
  static double middleOfDark(Field field) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < field.green.length; i++) {
      if (field.green[i] < 0.06) {
        sum += i % field.width;
        count++;
      }
    }
    return sum / count;
  }

  /** Root mean square of light about its mean. */
  static double contrast(Field field) {
    double sum = 0;
    double squares = 0;
    for (float light : field.green) {
      sum += light;
      squares += light * light;
    }
    double mean = sum / field.green.length;
    return Math.sqrt(squares / field.green.length - mean * mean);
  }

  /** How far above the middle the first difference is, going up, in pixels of the field. */
  static double ring(Field field, Field bare) {
    int column = field.width / 2;
    for (int up = 1; up < field.height / 2; up++) {
      int i = (field.height / 2 - up) * field.width + column;
      if (bare.red[i] - field.red[i] > 0.02) {
        return up;
      }
    }
    return field.height / 2.0;
  }
}
