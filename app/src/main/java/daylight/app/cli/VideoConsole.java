package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.Progress;
import daylight.archive.ResultFolder;
import daylight.footage.Recording;
import daylight.footage.Remark;
import daylight.footage.Watch;
import daylight.footage.Writ;
import daylight.footage.codec.Footage;
import daylight.footage.counter.Found;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Shown;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** What the commands about a recording say, as sentences or as one JSON object. */
final class VideoConsole {
  private final Words words;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Console console;
  private final boolean json;
  private @Nullable Halt halt;

  private VideoConsole(CommandSpec spec, boolean json) {
    this.out = spec.commandLine().getOut();
    this.err = spec.commandLine().getErr();
    this.words = Spoken.plain(spec);
    this.console = Console.of(spec, json);
    this.json = json;
  }

  static VideoConsole of(@Nullable CommandSpec spec, boolean json) {
    if (spec == null) {
      throw new IllegalStateException("a command has its own description before it runs");
    }
    return new VideoConsole(spec, json);
  }

  /** What is begun from now on ends when that is asked. */
  void endBy(Halt ending) {
    halt = ending;
  }

  Watch begin(Progress.Step step, Path video) {
    Watch watch = console.progress().begin(step, String.valueOf(video.getFileName()));
    Halt ending = halt;
    return ending == null ? watch : ending.over(watch);
  }

  boolean json() {
    return json;
  }

  Words words() {
    return words;
  }

  /** One line for people; another program gets an object. */
  void line(String sentence) {
    out.println(sentence);
  }

  int object(ObjectNode reply) {
    out.println(reply.toPrettyString());
    return ExitCode.DONE;
  }

  /** Something that is missing, though nothing is wrong with the recording. */
  int open(String outcome, String reason, String sentence) {
    if (json) {
      object(JsonReply.reply(outcome).put("reason", reason).put("sentence", sentence));
    } else {
      err.println(sentence);
    }
    return ExitCode.SOMETHING_OPEN;
  }

  int noCounter(Path video, Found.Why why) {
    String reason = why.name().toLowerCase(Locale.ROOT);
    return open(
        "no-counter",
        reason.replace('_', '-'),
        words.say("cli.counter.none." + reason, new Argument.Text(video.toString())));
  }

  int stopped() {
    err.println(words.word("cli.stopped"));
    return ExitCode.NOT_WRITTEN;
  }

  CounterConsole counter(ReadCounter.Form form) {
    return new CounterConsole(out, words, form);
  }

  String say(String key, Argument... arguments) {
    return words.say(key, arguments);
  }

  int misunderstood(String wrong) {
    return console.misunderstood(wrong);
  }

  int notWritten(Path folder, ResultFolder.Outcome.Refused refused) {
    return console.notWritten(folder, refused);
  }

  /**
   * A copy that was written.
   *
   * @param from where in the recording it begins, seconds
   */
  int copied(Path file, double from, Recording recording) {
    if (json) {
      return object(
          JsonReply.reply("copied")
              .put("file", file.toString())
              .put("from", from)
              .put("seconds", recording.seconds() - from));
    }
    if (from > 0) {
      out.println(words.say("cli.copy.from", new Argument.Text(clock(from))));
    }
    out.println(file);
    return ExitCode.DONE;
  }

  /**
   * A copy for the browser that was written.
   *
   * @param unfit what the sound is written in that had to be left out; null where none had
   */
  int proxied(Path file, Recording recording, @Nullable String unfit) {
    if (json) {
      ObjectNode reply = JsonReply.reply("copied").put("file", file.toString()).put("from", 0.0);
      reply.put("seconds", recording.seconds());
      return object(
          reply.put("sound", unfit != null ? "left-out" : recording.sound() ? "kept" : "none"));
    }
    if (unfit != null) {
      out.println(
          words.say(
              "cli.proxy.silent",
              new Argument.Text(unfit),
              new Argument.Text(Target.ending(file))));
    }
    out.println(file);
    return ExitCode.DONE;
  }

  /** A page of so many pictures that was written. */
  int sheet(Path file, int pictures) {
    if (json) {
      return object(
          JsonReply.reply("sheet").put("file", file.toString()).put("pictures", pictures));
    }
    out.println(file);
    return ExitCode.DONE;
  }

  /** A copy that was stopped or refused. */
  int notWritten(Path video, Writ writ) {
    return switch (writ) {
      case Writ.Refused(var why) -> refused(video, why);
      case Writ.Stopped() -> stopped();
      case Writ.Written() -> ExitCode.DONE;
    };
  }

  /** What is wrong with an option, in one line. */
  String wrong(Given.Wrong wrong) {
    return words.named(
        wrong.option(), words.say(wrong.key(), wrong.arguments().toArray(Argument[]::new)));
  }

  int refused(List<Complaint> complaints, Shown shown) {
    return console.refused(complaints, shown);
  }

  int broken(Path video, IOException e) {
    return console.notWritten(video, e);
  }

  int refused(Path video, Remark why) {
    String sentence = sentence(video, why);
    if (json) {
      out.println(JsonReply.reply("refused").put("sentence", sentence).toPrettyString());
    } else {
      err.println(sentence);
    }
    return ExitCode.BOOK_REFUSED;
  }

  private String sentence(Path video, Remark remark) {
    return words.complaint(remark.at(new FilePlace(video.toString(), 0, 0, "")));
  }

  int taken(Path video, Footage footage, Path folder, List<Still.Taken> taken) {
    Recording recording = footage.recording();
    if (json) {
      out.println(told(recording, folder, taken).toPrettyString());
      return ExitCode.DONE;
    }
    out.println(
        String.format(
            Locale.ROOT,
            "%s: %s, %s%s, %d × %d, %s, %d frames, %s%s",
            video,
            recording.container(),
            recording.codec(),
            recording.interlaced() ? " interlaced" : "",
            recording.width(),
            recording.height(),
            clock(recording.seconds()),
            recording.frames(),
            String.format(
                Locale.ROOT,
                recording.variable() ? "about %.2f a second" : "%.2f a second",
                recording.rate()),
            recording.sound() ? ", with sound" : ""));
    footage.notes().forEach(note -> out.println(sentence(video, note)));
    for (Still.Taken one : taken) {
      String line = folder.resolve(one.file()) + "  " + clock(one.seconds());
      StillAt at = one.at();
      out.println(at == null ? line : line + "  " + at.sentence(words));
    }
    return ExitCode.DONE;
  }

  private static ObjectNode told(Recording recording, Path folder, List<Still.Taken> taken) {
    ObjectNode reply = JsonReply.reply("recording");
    reply
        .put("container", recording.container())
        .put("codec", recording.codec())
        .put("width", recording.width())
        .put("height", recording.height())
        .put("seconds", recording.seconds())
        .put("frames-per-second", recording.rate())
        .put("variable", recording.variable())
        .put("frames", recording.frames())
        .put("sound", recording.sound())
        .put("interlaced", recording.interlaced());
    ArrayNode stills = reply.putArray("stills");
    for (Still.Taken one : taken) {
      ObjectNode still =
          stills
              .addObject()
              .put("file", folder.resolve(one.file()).toString())
              .put("frame", one.frame())
              .put("seconds", one.seconds());
      if (one.at() != null) {
        one.at().json(still);
      }
    }
    return reply;
  }

  /** Seconds as minutes and seconds. */
  static String clock(double seconds) {
    long milliseconds = Math.round(seconds * 1000);
    return String.format(
        Locale.ROOT,
        "%d:%02d.%03d",
        milliseconds / 60_000,
        milliseconds / 1000 % 60,
        milliseconds % 1000);
  }
}
