package daylight.app.cli;

import daylight.footage.Watch;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ends long work when the person presses Ctrl-C: whoever watches is told that nobody waits any
 * more, and the process goes on just long enough to leave nothing half-written.
 */
final class Halt implements AutoCloseable {
  private static final int PATIENCE_SECONDS = 20;

  private final AtomicBoolean asked = new AtomicBoolean();
  private final CountDownLatch over = new CountDownLatch(1);
  private final Thread hook = Thread.ofPlatform().unstarted(this::ask);

  private Halt() {}

  /** From now on until it is closed. */
  static Halt begin() {
    Halt halt = new Halt();
    Runtime.getRuntime().addShutdownHook(halt.hook);
    return halt;
  }

  /** Asks the work to end and waits until it did. */
  void ask() {
    asked.set(true);
    try {
      over.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  boolean asked() {
    return asked.get();
  }

  /** The same watch, which is stopped by this, too. */
  Watch over(Watch watch) {
    return new Watch() {
      @Override
      public void done(double share) {
        watch.done(share);
      }

      @Override
      public boolean stopped() {
        return asked() || watch.stopped();
      }
    };
  }

  @Override
  public void close() {
    over.countDown();
    if (!asked()) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException leaving) {
        return;
      }
    }
  }
}
