package daylight.footage.codec;

import daylight.footage.Watch;
import java.util.concurrent.CancellationException;

/** Tells a watch how far it is, never less than before, and ends the work when it is not wanted. */
final class Progress {
  private final Watch watch;
  private double told;

  Progress(Watch watch) {
    this.watch = watch;
  }

  /**
   * So far of so much.
   *
   * @throws CancellationException if the work is no longer wanted
   */
  void at(long done, long all) {
    if (watch.stopped()) {
      throw new CancellationException();
    }
    double share = all > 0 ? Math.clamp((double) done / all, 0, 1) : 0;
    if (share > told) {
      told = share;
      watch.done(share);
    }
  }
}
