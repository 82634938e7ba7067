package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What stands in a window on frames far apart: the ink of each, and how ink is told there. */
final class Sheets {
  private static final int WEAKEST = 10;
  private static final double STROKE = 0.13;

  /** How far from the ink to what is behind it a pixel may be and still be ink. */
  private static final double DIMMEST = 0.4;

  /** Fewer rows are no letters. */
  private static final int LOWEST = 6;

  private static final int MARGIN = 8;

  private final Window window;
  private final boolean dark;
  private final int strokeReach;
  private final int threshold;
  private final int least;
  private final View view;
  private int inked;
  private int behind;
  private final List<int[]> inks = new ArrayList<>();
  private final int[] mean;

  Sheets(Window window, boolean dark, View view) {
    this.window = window;
    this.dark = dark;
    this.view = view;
    List<byte[]> frames = view.frames();
    strokeReach = (int) Math.max(1, Math.rint(STROKE * (window.height() - MARGIN)));
    int size = window.width() * window.height();
    byte[] pixels = new byte[size];
    Ink ink = new Ink(window.width(), window.height(), strokeReach);
    mean = new int[size];
    int[] light = new int[size];
    for (byte[] frame : frames) {
      window.copy(frame, view.width(), pixels);
      int[] strokes = ink.find(pixels, dark, 0);
      inks.add(strokes.clone());
      for (int i = 0; i < size; i++) {
        mean[i] += strokes[i];
        light[i] += ink.light(i);
      }
    }
    for (int i = 0; i < size; i++) {
      mean[i] /= frames.size();
    }
    int level = level();
    threshold = Math.max(WEAKEST, level / 2);
    least = leastLight(light, frames.size(), level);
    for (int n = 0; n < frames.size(); n++) {
      window.copy(frames.get(n), view.width(), pixels);
      int[] strokes = inks.get(n);
      for (int i = 0; i < size; i++) {
        int bright = dark ? 255 - (pixels[i] & 255) : pixels[i] & 255;
        strokes[i] = bright < least ? 0 : strokes[i];
      }
    }
  }

  Window window() {
    return window;
  }

  View view() {
    return view;
  }

  boolean dark() {
    return dark;
  }

  /** Half the width of what is still a stroke, pixels. */
  int strokeReach() {
    return strokeReach;
  }

  /** Ink at least this strong counts. */
  int threshold() {
    return threshold;
  }

  /** What is less bright is no ink. */
  int least() {
    return least;
  }

  /** How bright ink is. */
  int inked() {
    return inked;
  }

  /** How bright what is behind it is. */
  int behind() {
    return behind;
  }

  /** What stands there on a frame. */
  void copy(int frame, byte[] pixels) {
    window.copy(view.frames().get(frame), view.width(), pixels);
  }

  /** How many frames. */
  int count() {
    return inks.size();
  }

  /** The ink of a frame, as {@link Ink} gives it. */
  int[] ink(int frame) {
    return inks.get(frame);
  }

  /** Ink is about as bright as where it always stands, clearly brighter than all about it. */
  private int leastLight(int[] light, int frames, int level) {
    List<Integer> bright = new ArrayList<>();
    int[] all = new int[light.length];
    for (int i = 0; i < light.length; i++) {
      all[i] = light[i] / frames;
      if (mean[i] >= level) {
        bright.add(all[i]);
      }
    }
    if (bright.isEmpty()) {
      return 0;
    }
    Arrays.sort(all);
    bright.sort(null);
    inked = bright.get(bright.size() / 2);
    behind = all[all.length / 2];
    return inked - (int) (DIMMEST * Math.max(0, inked - behind));
  }

  /** How strong ink is where it always stands. */
  private int level() {
    int[] sorted = mean.clone();
    Arrays.sort(sorted);
    int most = sorted[sorted.length - 1];
    int from = 0;
    while (sorted[from] < most / 4) {
      from++;
    }
    return sorted[from + (sorted.length - from) * 8 / 10];
  }

  /** Runs of rows with ink, each from and to. */
  List<int[]> rows() {
    List<int[]> rows = new ArrayList<>();
    int begun = -1;
    for (int y = 0; y <= window.height(); y++) {
      int inked = 0;
      for (int x = 0; y < window.height() && x < window.width(); x++) {
        inked += mean[y * window.width() + x] > threshold / 2 ? 1 : 0;
      }
      if (inked >= 2 && begun < 0) {
        begun = y;
      } else if (inked < 2 && begun >= 0) {
        if (y - begun >= LOWEST) {
          rows.add(new int[] {Math.max(0, begun - 1), Math.min(window.height(), y + 1)});
        }
        begun = -1;
      }
    }
    return rows;
  }
}
