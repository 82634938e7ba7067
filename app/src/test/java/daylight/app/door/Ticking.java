package daylight.app.door;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A clock that goes when it is told to. */
public final class Ticking implements InstantSource {
  private Instant now;

  public Ticking(Instant begin) {
    now = begin;
  }

  @Override
  public Instant instant() {
    return now;
  }

  public void passes(Duration time) {
    now = now.plus(time);
  }
}
