package daylight.app.web;

import daylight.app.Job;
import daylight.app.Progress;
import daylight.footage.Watch;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * One book being answered on a thread of its own, so that a page can say how far it is. Books of
 * which footage is looked at take turns; a book without waits for nobody.
 */
final class Answering {
  /** Who loads a page waits so long for footage to be looked at before it is told of it. */
  private static final long PATIENCE_MILLIS = 1000;

  private static final long LOOK_MILLIS = 50;
  private static final int LEAVING_SECONDS = 20;
  private static final double STEP = 0.002;

  private final Semaphore turns;
  private final CountDownLatch over = new CountDownLatch(1);
  private volatile @Nullable Doing doing;
  private volatile @Nullable Reading reading;
  private volatile @Nullable Stamp stamp;
  private volatile boolean stopped;
  private volatile boolean closed;
  private boolean turn;

  /**
   * What is being done of what takes its time.
   *
   * @param what the file concerned, as the book names it
   * @param share of it that is done, from 0 to 1
   * @param waits whether another book comes first
   */
  record Doing(Progress.Step step, String what, double share, boolean waits) {}

  private Answering(Semaphore turns) {
    this.turns = turns;
  }

  /**
   * Begins to answer a book.
   *
   * @param turns of those who look at footage
   */
  static Answering begin(Property.Answerer job, Opened opened, Semaphore turns) {
    Answering answering = new Answering(turns);
    Thread.ofPlatform().daemon().name("answering").start(() -> answering.run(job, opened));
    return answering;
  }

  @SuppressWarnings("IllegalCatch")
  private void run(Property.Answerer job, Opened opened) {
    Stamp before = Stamp.of(opened, null);
    Reading fresh = null;
    try {
      fresh =
          switch (job.answer(opened.file(), opened.settings(), this::begin)) {
            case Job.Outcome.Answered answered -> new Reading.Answered(answered);
            case Job.Outcome.Refused refused -> new Reading.Refused(refused);
          };
    } catch (RuntimeException fault) {
      // A fault with one book must not take the others along.
      fresh = new Reading.Failed(fault);
    } finally {
      reading = fresh;
      // A book newly read may name files that were not looked at before; one that was altered
      // meanwhile is to be read again.
      stamp = Stamp.of(opened, null).equals(before) ? Stamp.of(opened, fresh) : null;
      if (turn) {
        turns.release();
      }
      over.countDown();
    }
  }

  private Watch begin(Progress.Step step, String what) {
    while (!turn && !closed) {
      turn = taken(step, what);
    }
    doing = new Doing(step, what, 0, false);
    // What is stopped is the long part, so that the page that follows has its players and pictures.
    boolean ends = step == Progress.Step.COUNTING;
    return new Watch() {
      @Override
      public void done(double share) {
        Doing before = doing;
        if (before == null || share - before.share() >= STEP) {
          doing = new Doing(step, what, share, false);
        }
      }

      @Override
      public boolean stopped() {
        return closed || (ends && stopped);
      }
    };
  }

  private boolean taken(Progress.Step step, String what) {
    try {
      if (turns.tryAcquire()) {
        return true;
      }
      doing = new Doing(step, what, 0, true);
      return turns.tryAcquire(LOOK_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      closed = true;
      return false;
    }
  }

  /** What is being done now; null before anything that takes its time, and afterwards. */
  @Nullable Doing doing() {
    return isOver() ? null : doing;
  }

  boolean isOver() {
    return over.getCount() == 0;
  }

  /** Whether it is over, and the files are still as they were. */
  boolean isAsOf(Opened opened) {
    return isOver() && Stamp.of(opened, reading).equals(stamp);
  }

  /** Whether somebody had the reading of counters stopped. */
  boolean isStopped() {
    return stopped;
  }

  /** Reads no counter from now on; what was read of others stays, and the book is answered. */
  void stop() {
    stopped = true;
  }

  /** What came of it, as soon as it has come. */
  Reading reading() {
    try {
      over.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Reading.Failed(new IllegalStateException("the reading was given up", e));
    }
    Reading read = reading;
    return read == null ? new Reading.Failed(new IllegalStateException("it was not read")) : read;
  }

  /** The same; null where footage is looked at that takes longer than anybody likes to wait. */
  @Nullable Reading soon() {
    try {
      long waited = 0;
      while (!over.await(LOOK_MILLIS, TimeUnit.MILLISECONDS)) {
        waited += doing == null ? 0 : LOOK_MILLIS;
        if (waited >= PATIENCE_MILLIS) {
          return null;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    }
    return reading();
  }

  /** Has it end as soon as it can. */
  void end() {
    closed = true;
  }

  /** Ends it, and waits until nothing of it is left. */
  void close() {
    end();
    try {
      over.await(LEAVING_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
