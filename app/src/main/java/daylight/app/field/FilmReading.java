package daylight.app.field;

import daylight.app.Job;
import daylight.app.Progress;
import daylight.app.track.Tracked;
import daylight.archive.store.Archive;
import daylight.footage.Watch;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * The counters of a book's recordings, looked up or read on a thread of its own, so that a page can
 * say how far that is. Those who read take turns; who only looks up what was read before waits for
 * nobody.
 */
final class FilmReading implements Progress {
  private final Semaphore turns;
  private final boolean reads;
  private volatile double share;
  private volatile @Nullable String file;
  private volatile boolean stopped;
  private volatile boolean over;
  private volatile @Nullable Tracked tracked;

  private FilmReading(Semaphore turns, boolean reads) {
    this.turns = turns;
    this.reads = reads;
  }

  /**
   * Begins.
   *
   * @param reads whether recordings are read that were not read before
   */
  static FilmReading begin(Archive archive, UUID book, Semaphore turns, boolean reads) {
    FilmReading reading = new FilmReading(turns, reads);
    Thread.ofPlatform().daemon().name("films").start(() -> reading.run(archive, book));
    return reading;
  }

  private void run(Archive archive, UUID book) {
    try {
      if (reads) {
        turns.acquireUninterruptibly();
      }
      Optional<Tracked> found = Job.tracks(archive, book, reads ? this : null);
      tracked = found.orElse(null);
    } finally {
      over = true;
      if (reads) {
        turns.release();
      }
    }
  }

  @Override
  public Watch begin(Step step, String what) {
    file = what;
    share = 0;
    return new Watch() {
      @Override
      public void done(double now) {
        share = now;
      }

      @Override
      public boolean stopped() {
        return stopped;
      }
    };
  }

  void stop() {
    stopped = true;
  }

  boolean isOver() {
    return over;
  }

  /** Whether recordings are read, not only looked up. */
  boolean isReading() {
    return reads && !over;
  }

  /** Whether all of it was read that can be read. */
  boolean isWhole() {
    return reads && over && !stopped;
  }

  /** How much of the recording is read that is being read, from 0 to 1. */
  double share() {
    return share;
  }

  /** The name of the recording that is being read; empty before the first. */
  String file() {
    String now = file;
    return now == null ? "" : now;
  }

  /** What is known; null while it is not, and where the book cannot be read. */
  @Nullable Tracked tracked() {
    return tracked;
  }
}
