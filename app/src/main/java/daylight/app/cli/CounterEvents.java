package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.book.Finding.Moving;
import daylight.line.counter.Events;
import daylight.line.measure.Argument;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the camera did, as sentences or as JSON. */
final class CounterEvents {
  private CounterEvents() {}

  private record Line(double seconds, String sentence) {}

  /** A sentence each, by rising time. */
  static List<String> sentences(Events events, Words words) {
    List<Line> lines = new ArrayList<>();
    for (Events.Stretch stretch : events.stretches()) {
      lines.add(new Line(stretch.from(), sentence(stretch, words)));
    }
    for (Events.Reversal turn : events.reversals()) {
      String key =
          turn.then() == Moving.PULLING ? "cli.counter.turned.back" : "cli.counter.turned.on";
      lines.add(
          new Line(turn.seconds(), words.say(key, time(turn.seconds()), length(turn.counter()))));
    }
    lines.sort(Comparator.comparingDouble(Line::seconds));
    return lines.stream().map(Line::sentence).toList();
  }

  private static String sentence(Events.Stretch stretch, Words words) {
    Argument from = time(stretch.from());
    Argument to = time(stretch.to());
    return switch (stretch) {
      case Events.Ran ran ->
          words.say(
              ran.moving() == Moving.PUSHING ? "cli.counter.pushed" : "cli.counter.pulled",
              from,
              to,
              length(ran.before()),
              length(ran.after()),
              length(ran.speed()));
      case Events.Rested rest -> words.say("cli.counter.rested", from, to, length(rest.counter()));
      case Events.SetAnew set ->
          words.say("cli.counter.set", from, to, length(set.before()), length(set.after()));
      case Events.Gap gap -> gap(gap, from, to, words);
    };
  }

  private static String gap(Events.Gap gap, Argument from, Argument to, Words words) {
    Double before = gap.before();
    Double after = gap.after();
    if (before != null && after != null) {
      return words.say("cli.counter.gap", from, to, length(before), length(after));
    }
    if (before != null) {
      return words.say("cli.counter.gap.last", from, to, length(before));
    }
    return after == null
        ? words.say("cli.counter.gap.all", from, to)
        : words.say("cli.counter.gap.first", from, to, length(after));
  }

  private static Argument time(double seconds) {
    return new Argument.Text(VideoConsole.clock(seconds));
  }

  private static Argument length(double metres) {
    return new Argument.Length(metres);
  }

  /** One object each; times in seconds from the first frame, readings in metres. */
  static void json(Events events, ObjectNode into) {
    ArrayNode stretches = into.putArray("stretches");
    for (Events.Stretch stretch : events.stretches()) {
      ObjectNode row = stretches.addObject();
      switch (stretch) {
        case Events.Ran ran -> {
          row.put("what", ran.moving() == Moving.PUSHING ? "pushed" : "pulled");
          times(row, ran);
          row.put("before_m", ran.before())
              .put("after_m", ran.after())
              .put("speed_m_s", ran.speed());
        }
        case Events.Rested rest -> {
          times(row.put("what", "rested"), rest);
          row.put("distance_m", rest.counter());
        }
        case Events.SetAnew set -> {
          times(row.put("what", "set-anew"), set);
          row.put("before_m", set.before()).put("after_m", set.after());
        }
        case Events.Gap gap -> {
          times(row.put("what", "unknown"), gap);
          put(row, "before_m", gap.before());
          put(row, "after_m", gap.after());
        }
      }
    }
    ArrayNode turns = into.putArray("reversals");
    for (Events.Reversal turn : events.reversals()) {
      turns
          .addObject()
          .put("time_s", turn.seconds())
          .put("distance_m", turn.counter())
          .put("then", turn.then() == Moving.PUSHING ? "pushed" : "pulled");
    }
  }

  private static void times(ObjectNode row, Events.Stretch stretch) {
    row.put("from_s", stretch.from()).put("to_s", stretch.to());
  }

  private static void put(ObjectNode row, String key, @Nullable Double value) {
    if (value != null) {
      row.put(key, value);
    }
  }
}
