package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.OnScreen;
import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.line.counter.Events;
import daylight.line.counter.Track.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Locale;

/** What {@code counter} says: sentences, one row a frame, or one JSON object. */
final class CounterConsole {
  private static final String NEXT = System.lineSeparator();

  private final PrintWriter out;
  private final Words words;
  private final ReadCounter.Form form;

  CounterConsole(PrintWriter out, Words words, ReadCounter.Form form) {
    this.out = out;
    this.words = words;
    this.form = form;
  }

  int told(Path video, Found.Counter counter) {
    switch (form) {
      case CSV -> rows(counter);
      case JSON -> out.println(object(counter).toPrettyString());
      case SENTENCES -> sentences(video, counter);
    }
    return ExitCode.DONE;
  }

  /** The units that a counter shows. */
  static Shown shown(Found.Counter counter) {
    boolean metres = counter.unit().toLowerCase(Locale.ROOT).startsWith("m");
    boolean inches = counter.readings().stream().anyMatch(one -> one.shown().contains("'"));
    return metres ? Shown.METRES : inches ? Shown.FEET_INCHES : Shown.DECIMAL_FEET;
  }

  private void rows(Found.Counter counter) {
    StringBuilder rows = new StringBuilder("time_s,distance_m,shown,state").append(NEXT);
    for (Reading one : counter.readings()) {
      rows.append(fixed(one.seconds(), 6)).append(',');
      if (one.state() != State.UNKNOWN) {
        rows.append(fixed(one.metres(), 4));
      }
      rows.append(',').append(quoted(one.shown())).append(',').append(state(one)).append(NEXT);
    }
    out.print(rows);
    out.flush();
  }

  /** A long recording has a row for each of many thousand frames: without patterns to read anew. */
  private static String fixed(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  private static String quoted(String text) {
    return text.contains("\"") || text.contains(",")
        ? "\"" + text.replace("\"", "\"\"") + "\""
        : text;
  }

  private static String state(Reading one) {
    return one.state().name().toLowerCase(Locale.ROOT);
  }

  private static ObjectNode object(Found.Counter counter) {
    ObjectNode reply = JsonReply.reply("counter");
    reply
        .putObject("region")
        .put("x", counter.window().left())
        .put("y", counter.window().top())
        .put("width", counter.window().width())
        .put("height", counter.window().height());
    reply.put("unit", counter.unit()).put("metres-per-step", counter.metresPerStep());
    ArrayNode leaps = reply.putArray("set-anew-at-frames");
    counter.leaps().forEach(leaps::add);
    CounterEvents.json(events(counter), reply);
    ArrayNode frames = reply.putArray("frames");
    for (Reading one : counter.readings()) {
      ObjectNode row = frames.addObject().put("time_s", one.seconds());
      if (one.state() != State.UNKNOWN) {
        row.put("distance_m", one.metres());
      }
      row.put("shown", one.shown()).put("state", state(one));
    }
    return reply;
  }

  private void sentences(Path video, Found.Counter counter) {
    long read = counter.readings().stream().filter(one -> one.state() == State.READ).count();
    long bridged = counter.readings().stream().filter(one -> one.state() == State.BRIDGED).count();
    int all = counter.readings().size();
    out.println(
        words.say(
            "cli.counter.read",
            new Argument.Text(video.toString()),
            new Argument.Number(counter.window().left()),
            new Argument.Number(counter.window().top()),
            new Argument.Number(counter.window().width()),
            new Argument.Number(counter.window().height()),
            new Argument.Number(all),
            new Argument.Number(read),
            new Argument.Number(bridged),
            new Argument.Number(all - read - bridged)));
    if (counter.bare()) {
      out.println(words.word("cli.counter.bare"));
    }
    CounterEvents.sentences(events(counter), inItsUnit(counter, words.language()))
        .forEach(out::println);
  }

  private static Events events(Found.Counter counter) {
    return Events.of(counter.track(""), counter.metresPerStep());
  }

  /** Words that speak in the unit that is on the screen. */
  private static Words inItsUnit(Found.Counter counter, Language language) {
    if (counter.readings().stream().anyMatch(one -> one.shown().contains("'"))) {
      return Words.of(language, Shown.FEET_INCHES);
    }
    return Words.of(
        language, OnScreen.metric(counter.metresPerStep()) ? Shown.METRES : Shown.DECIMAL_FEET);
  }
}
