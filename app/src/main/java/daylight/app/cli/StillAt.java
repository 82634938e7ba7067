package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.line.counter.Passages;
import daylight.line.counter.Sought;
import daylight.line.counter.Track.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Print;
import daylight.line.measure.Shown;
import daylight.report.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Which frame a distance leads to.
 *
 * @param written the distance as it was asked for
 * @param shown the units it was asked in
 * @param which of the times
 * @param at what was found
 * @param reading of the counter there
 */
record StillAt(String written, Shown shown, Sought.Which which, Sought.At at, Reading reading) {

  /** Looks for distances in a counter that was read. */
  static Passages passages(Found.Counter counter) {
    return new Passages(counter.track(""), Set.copyOf(counter.leaps()), counter.metresPerStep());
  }

  /** The distance, in its units. */
  private static String length(double metres, Shown shown, Words words) {
    return words.written(Print.length(metres, shown));
  }

  /** What the counter showed there and how that is known. */
  String sentence(Words words) {
    String showed =
        reading.state() == State.READ
            ? words.say("cli.still.read", text(reading.shown()))
            : words.say("cli.still.bridged", text(length(reading.metres(), shown, words)));
    String when =
        which == Sought.Which.REST
            ? words.say("cli.still.rest", text(written))
            : words.say(
                "cli.still." + which.name().toLowerCase(Locale.ROOT),
                new Argument.Count(at.times()),
                text(written));
    return words.beside(List.of(showed, when));
  }

  void json(ObjectNode still) {
    still
        .put("asked", written)
        .put("which", which.name().toLowerCase(Locale.ROOT))
        .put("times", at.times())
        .put("distance_m", reading.metres())
        .put("shown", reading.shown())
        .put("state", reading.state().name().toLowerCase(Locale.ROOT));
  }

  /** Why there is no such frame. */
  static String missing(
      Words words, Path video, String written, Shown shown, Sought outcome, Found.Counter counter) {
    Argument file = text(video.toString());
    Argument asked = text(written);
    return switch (outcome) {
      case Sought.At at -> throw new IllegalArgumentException("it is there: " + at);
      case Sought.Beyond(int least, int most) ->
          words.say(
              "cli.still.beyond",
              file,
              asked,
              metres(counter, least, shown, words),
              metres(counter, most, shown, words),
              time(counter, most));
      case Sought.Unread(int before, int after) ->
          words.say(
              "cli.still.unread",
              file,
              asked,
              time(counter, before),
              metres(counter, before, shown, words),
              time(counter, after),
              metres(counter, after, shown, words));
      case Sought.SetPast(int sample) ->
          words.say(
              "cli.still.set_past",
              file,
              asked,
              time(counter, sample),
              metres(counter, sample, shown, words));
      case Sought.NoRest() -> words.say("cli.still.no_rest", file);
      case Sought.NothingKnown() -> words.say("cli.still.nothing", file);
    };
  }

  private static Argument metres(Found.Counter counter, int frame, Shown shown, Words words) {
    return text(length(counter.readings().get(frame).metres(), shown, words));
  }

  private static Argument time(Found.Counter counter, int frame) {
    return text(VideoConsole.clock(counter.readings().get(frame).seconds()));
  }

  private static Argument text(String text) {
    return new Argument.Text(text);
  }
}
