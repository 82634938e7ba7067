package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.measure.Argument;
import daylight.report.data.ArgumentJson;
import daylight.report.words.Words;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** What the calculations say, as sentences or as one JSON object, and the exit code with it. */
final class FigureConsole {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean json;
  private final Given given;
  private final Words words;

  private FigureConsole(CommandSpec spec, boolean json, Given given) {
    this.out = spec.commandLine().getOut();
    this.err = spec.commandLine().getErr();
    this.json = json;
    this.given = given;
    this.words = Words.of(Spoken.in(spec), given.shown());
  }

  static FigureConsole of(@Nullable CommandSpec spec, boolean json, Given given) {
    if (spec == null) {
      throw new IllegalStateException("a command has its own description before it runs");
    }
    return new FigureConsole(spec, json, given);
  }

  /** Every option that is wrong, each with its own complaint. */
  int misunderstood() {
    ObjectNode reply = JsonReply.reply("refused");
    ArrayNode complaints = reply.putArray("complaints");
    for (Given.Wrong wrong : given.wrong()) {
      String sentence = words.say(wrong.key(), wrong.arguments().toArray(Argument[]::new));
      complaints.addObject().put("option", wrong.option()).put("sentence", sentence);
      if (!json) {
        err.println("daylight: " + wrong.option() + ": " + sentence);
      }
    }
    if (json) {
      out.println(reply.toPrettyString());
    }
    return ExitCode.USAGE;
  }

  /** The figures, then what is to be said about them. */
  int say(Figured figured) {
    ObjectNode reply = JsonReply.reply("figured").put("figure", figured.figure());
    ArrayNode figures = reply.putArray("figures");
    for (Figured.Value value : figured.values()) {
      String sentence = words.say(value.key(), value.arguments().toArray(Argument[]::new));
      ObjectNode one = figures.addObject().put("name", value.name());
      one.setAll(ArgumentJson.of(value.arguments().getFirst()));
      one.put("sentence", sentence);
      if (!json) {
        out.println(sentence);
      }
    }
    ArrayNode told = reply.putArray("told");
    for (Figured.Told one : figured.told()) {
      String sentence = words.say(one.key(), one.arguments().toArray(Argument[]::new));
      told.addObject().put("key", one.key()).put("sentence", sentence);
      if (!json) {
        out.println(sentence);
      }
    }
    if (json) {
      out.println(reply.toPrettyString());
    }
    return figured.open() ? ExitCode.SOMETHING_OPEN : ExitCode.DONE;
  }
}
