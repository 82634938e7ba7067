package daylight.report.page;

import daylight.line.book.Bend;
import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Kit;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Test;
import daylight.line.book.Tie;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says what an entry of the book reads, in the figures that were written down. */
final class ReadingWords {
  private final Words words;
  private final Units units;

  ReadingWords(Words words, FieldBook book) {
    this.words = words;
    this.units = book.units();
  }

  String of(Locate locate) {
    List<String> parts = new ArrayList<>();
    add(parts, "reading.cable", locate.cable(), units.distance());
    add(parts, "reading.depth", locate.depth(), units.depth());
    add(parts, "reading.raised", locate.receiverHeight(), units.depth());
    add(parts, "reading.cover", locate.cover(), units.depth());
    for (Locate.Lift lift : locate.lifts()) {
      parts.add(
          words.say(
              "reading.lift",
              written(lift.by(), units.depth()),
              written(lift.depth(), units.depth())));
    }
    if (locate.nulls() != null) {
      parts.add(words.word("source.part.silent"));
    }
    parts.add(words.say("reading.surface", new Argument.Label(locate.surface())));
    if (locate.signal() != Locate.Signal.GOOD) {
      parts.add(words.name(locate.signal()));
    }
    return joined(parts);
  }

  String of(Exposure exposure) {
    List<String> parts = new ArrayList<>();
    add(parts, "reading.cable", exposure.cable(), units.distance());
    add(parts, "reading.crown", exposure.crown(), units.depth());
    add(parts, "reading.invert", exposure.invert(), units.depth());
    parts.add(words.say("reading.surface", new Argument.Label(exposure.surface())));
    return joined(parts);
  }

  String of(Tie tie) {
    return switch (tie) {
      case Tie.Tape t -> say("reading.tape", t.from(), t.to(), t.length());
      case Tie.AlongOut t ->
          words.say(
              "reading.along_out",
              new Argument.Label(t.point()),
              written(t.along(), units.distance()),
              new Argument.Label(t.zero()),
              new Argument.Label(t.toward()),
              written(t.out(), units.distance()));
      case Tie.Bearing t -> angle("reading.bearing", t.bearing(), t.from(), t.to());
      case Tie.Angle t -> angle("reading.angle", t.angle(), t.at(), t.from(), t.to());
      case Tie.Direction t -> angle("reading.direction", t.direction(), t.from(), t.to());
      case Tie.Gnss t ->
          words.say(
              "reading.gnss",
              new Argument.Label(t.point()),
              new Argument.Text(degrees(t.latitude())),
              new Argument.Text(degrees(t.longitude())));
      case Tie.Sketched t ->
          words.say(
              "reading.sketched",
              new Argument.Label(t.point()),
              written(t.east(), units.distance()),
              written(t.north(), units.distance()));
      case Tie.Side t ->
          words.say(
              t.left() ? "reading.left" : "reading.right",
              new Argument.Label(t.point()),
              new Argument.Label(t.from()),
              new Argument.Label(t.to()));
    };
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.7f°", value);
  }

  private String say(String key, String from, String to, Reading reading) {
    return words.say(
        key, new Argument.Label(from), new Argument.Label(to), written(reading, units.distance()));
  }

  private String angle(String key, Reading reading, String... points) {
    List<Argument> arguments = new ArrayList<>();
    arguments.add(degrees(reading));
    for (String point : points) {
      arguments.add(new Argument.Label(point));
    }
    return words.say(key, arguments.toArray(Argument[]::new));
  }

  String of(Level level) {
    return switch (level) {
      case Level.Rod rod ->
          words.say(
              "reading.rod",
              mark(rod.mark()),
              new Argument.Label(rod.setUp()),
              written(rod.rod(), units.level()));
      case Level.Height height ->
          words.say("reading.height", mark(height.mark()), written(height.height(), units.level()));
      case Level.Rise rise ->
          words.say(
              "reading.rise",
              mark(rise.from()),
              mark(rise.to()),
              written(rise.rise(), units.level()));
    };
  }

  private Argument mark(Level.Mark mark) {
    return new Argument.Text(
        words.say(
            "reading.mark",
            new Argument.Label(mark.point()),
            new Argument.Text(words.name(mark.part()))));
  }

  String of(Bend bend) {
    return words.say(
        "reading.bend",
        degrees(bend.angle()),
        new Argument.Text(words.name(bend.sense())),
        written(bend.cable(), units.distance()));
  }

  String of(Pass.CounterCheck check) {
    return words.say(
        "reading.check",
        written(check.counter(), units.distance()),
        written(check.taped(), units.distance()));
  }

  String of(Pass pass) {
    List<String> parts = new ArrayList<>();
    parts.add(words.say("reading.in_at", new Argument.Label(pass.entry())));
    Pass.End end = pass.end();
    if (end != null) {
      parts.add(words.say("reading.end", written(end.cable(), units.distance())));
    }
    return joined(parts);
  }

  String of(Finding finding) {
    List<String> parts = new ArrayList<>();
    parts.add(words.kind(finding.kind()));
    switch (finding.where()) {
      case Where.AtCable(var at) -> add(parts, "reading.cable", at, units.distance());
      case Where.FromTo(var from, var to) ->
          parts.add(
              words.say(
                  "reading.cable_from",
                  written(from, units.distance()),
                  written(to, units.distance())));
      case Where.AtMoment(var media, var _) ->
          parts.add(words.say("reading.filmed", new Argument.Label(media)));
    }
    add(parts, "reading.deep", finding.quantities().get("depth"), units.depth());
    return joined(parts);
  }

  String of(Test test) {
    return words.name(test.kind());
  }

  String of(Node node) {
    String what = node.what();
    return what == null ? words.name(node.kind()) : words.name(node.kind()) + ", " + what;
  }

  String of(Reach reach) {
    List<String> parts = new ArrayList<>();
    parts.add(
        words.say(
            "reading.reach", new Argument.Label(reach.from()), new Argument.Label(reach.to())));
    add(parts, "reading.bore", reach.bore(), units.bore());
    add(parts, "reading.length", reach.length(), units.distance());
    return joined(parts);
  }

  /** What was written of the instruments that a visit brought. */
  String of(Visit visit) {
    Kit kit = visit.kit();
    List<String> parts = new ArrayList<>();
    add(parts, "reading.behind", kit.sondeBehindLens(), units.depth());
    add(parts, "reading.above", kit.sondeAboveInvert(), units.depth());
    return joined(parts);
  }

  private void add(List<String> parts, String key, @Nullable Reading reading, @Nullable Unit bare) {
    if (reading != null) {
      parts.add(words.say(key, written(reading, bare)));
    }
  }

  private static String joined(List<String> parts) {
    return Words.capitalised(String.join(", ", parts));
  }

  /** As it was written; a bare number gets the unit that went without saying. */
  private static Argument written(Reading reading, @Nullable Unit bare) {
    String text = reading.written();
    return new Argument.Text(isBare(text) && bare != null ? text + " " + bare.symbol() : text);
  }

  private static Argument degrees(Reading reading) {
    String text = reading.written();
    return new Argument.Text(isBare(text) ? text + "°" : text);
  }

  private static boolean isBare(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> "0123456789.,-−+".indexOf(c) >= 0);
  }

  /** When a visit was, or what it is called. */
  static Optional<String> day(Words words, Visit visit) {
    return Optional.ofNullable(visit.date()).map(date -> words.figure(new Argument.Day(date)));
  }
}
