package daylight.app.demo;

import daylight.footage.Watch;

/** Counts frames of films that are made side by side, for one who watches them all. */
final class Tally {
  private final Watch watch;
  private final long all;
  private long done;
  private boolean stopped;

  Tally(Watch watch, long all) {
    this.watch = watch;
    this.all = all;
  }

  synchronized void add() {
    done++;
    watch.done((double) done / all);
  }

  synchronized void stop() {
    stopped = true;
  }

  synchronized boolean stopped() {
    return stopped || watch.stopped();
  }
}
