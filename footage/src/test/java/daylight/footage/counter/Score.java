package daylight.footage.counter;

import daylight.footage.scene.Torture;
import daylight.line.counter.Track.State;
import java.util.List;

/**
 * How well a clip was read.
 *
 * @param read share of the legible frames that were read exactly
 * @param wrong share of all frames that were read as something else than was shown
 * @param legible how many frames are
 * @param sample some of what was read wrongly
 */
record Score(double read, double wrong, int legible, String sample) {
  private static final int LONGEST = 60;

  static Score of(Found.Counter counter, List<Clip.Truth> truth) {
    int legible = (int) truth.stream().filter(one -> one.contrast() >= Torture.LEGIBLE).count();
    int exact = 0;
    int wrong = 0;
    StringBuilder sample = new StringBuilder();
    for (int i = 0; i < truth.size() && i < counter.readings().size(); i++) {
      Reading reading = counter.readings().get(i);
      String text = truth.get(i).text();
      boolean seen = truth.get(i).contrast() >= Torture.LEGIBLE;
      boolean right = reading.shown().equals(text);
      if (reading.state() == State.READ) {
        exact += right && seen ? 1 : 0;
        wrong += right ? 0 : 1;
        if (!right && sample.length() < LONGEST) {
          sample.append(' ').append(i).append(':').append(text).append('|').append(reading.shown());
        }
      }
    }
    return new Score(
        (double) exact / legible, (double) wrong / truth.size(), legible, sample.toString());
  }
}
