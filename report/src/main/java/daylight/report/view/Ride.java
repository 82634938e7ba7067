package daylight.report.view;

import daylight.line.book.Finding;
import daylight.line.counter.Track;
import daylight.line.course.Camera;
import java.util.ArrayList;
import java.util.List;

/**
 * Which place of the line a recording shows when, as far as its track knows.
 *
 * @param media the identity of the recording
 * @param moments by rising time; each holds until the next
 */
public record Ride(String media, List<Moment> moments) {
  /**
   * Which way the camera goes is seen over so long on either side, seconds; common practice, no
   * source.
   */
  private static final double WHILE = 1;

  /** Between readings that are further apart than that, a moment so often, seconds: our choice. */
  private static final double STEP = 0.2;

  private static final int MOST = 5000;

  public Ride {
    moments = List.copyOf(moments);
  }

  /**
   * From a moment on a sample is shown.
   *
   * @param seconds from the first frame
   * @param sample −1 where it is not known
   * @param bridged whether the counter was filled in there between two readings
   */
  record Moment(double seconds, int sample, boolean bridged) {}

  /**
   * The way of a recording through a line.
   *
   * @param media the identity of the recording
   * @param camera where the lens of the pass was that it shows
   */
  public static Ride of(String media, Track track, Camera camera, Views views) {
    List<Track.Sample> read = filled(track.samples());
    List<Moment> moments = new ArrayList<>();
    int back = 0;
    int ahead = 0;
    int last = -2;
    boolean bridged = false;
    for (Track.Sample now : read) {
      while (read.get(back).seconds() < now.seconds() - WHILE) {
        back++;
      }
      while (ahead + 1 < read.size() && read.get(ahead).seconds() < now.seconds() + WHILE) {
        ahead++;
      }
      boolean pulled = read.get(ahead).counter() < read.get(back).counter();
      int sample = now.state() == Track.State.UNKNOWN ? -1 : place(now, pulled, camera, views);
      boolean guess = now.state() == Track.State.BRIDGED;
      if (sample != last || guess != bridged) {
        moments.add(new Moment(now.seconds(), sample, guess));
        last = sample;
        bridged = guess;
      }
    }
    if (!read.isEmpty()) {
      // Beyond its last sample a track says nothing.
      moments.add(new Moment(read.getLast().seconds() + STEP, -1, false));
    }
    return new Ride(media, moments);
  }

  /**
   * What several tracks of one recording tell together: at each moment the first that knows.
   *
   * @param media the identity of the recording
   */
  public static Ride together(String media, List<Ride> rides) {
    double[] all =
        rides.stream()
            .flatMap(ride -> ride.moments().stream())
            .mapToDouble(Moment::seconds)
            .sorted()
            .distinct()
            .toArray();
    List<Moment> moments = new ArrayList<>();
    for (double seconds : all) {
      Moment now = new Moment(seconds, -1, false);
      for (Ride ride : rides) {
        Moment one = ride.at(seconds);
        if (one.sample() >= 0) {
          now = new Moment(seconds, one.sample(), one.bridged());
          break;
        }
      }
      Moment last = moments.isEmpty() ? null : moments.getLast();
      if (last == null || last.sample() != now.sample() || last.bridged() != now.bridged()) {
        moments.add(now);
      }
    }
    return new Ride(media, moments);
  }

  /** Whether it never shows a place that is known. */
  public boolean isEmpty() {
    return moments.stream().allMatch(moment -> moment.sample() < 0);
  }

  /** What holds at a moment; before the first nothing is known. */
  private Moment at(double seconds) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).seconds() <= seconds) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? new Moment(seconds, -1, false) : moments.get(low - 1);
  }

  /** The same with what went evenly between two readings that are far apart, as typed ones are. */
  private static List<Track.Sample> filled(List<Track.Sample> read) {
    List<Track.Sample> all = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      Track.Sample now = read.get(i);
      all.add(now);
      if (i + 1 < read.size() && known(now) && known(read.get(i + 1))) {
        Track.Sample next = read.get(i + 1);
        double apart = next.seconds() - now.seconds();
        int steps = apart > WHILE ? (int) Math.min(MOST, Math.ceil(apart / STEP)) : 1;
        for (int step = 1; step < steps; step++) {
          double share = (double) step / steps;
          all.add(
              new Track.Sample(
                  now.seconds() + share * apart,
                  now.counter() + share * (next.counter() - now.counter()),
                  Track.State.BRIDGED));
        }
      }
    }
    return all;
  }

  private static boolean known(Track.Sample sample) {
    return sample.state() != Track.State.UNKNOWN;
  }

  private static int place(Track.Sample now, boolean pulled, Camera camera, Views views) {
    Finding.Moving moving = pulled ? Finding.Moving.PULLING : Finding.Moving.PUSHING;
    return camera.at(now.counter(), moving).flatMap(views::nearest).orElse(-1);
  }
}
