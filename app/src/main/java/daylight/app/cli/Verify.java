package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.SealedAnswer;
import daylight.archive.Sha256;
import daylight.archive.seal.SealCheck;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether a sealed bundle is as it was sealed. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Tell whether a bundle is as it was when seal made it, and if not, what differs. It proves no",
      "more than that: not who sealed it, not when, not that what was noted is true.",
      "",
      "Exit code 1 if anything differs."
    })
final class Verify implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "What seal wrote.")
  private Path file = Path.of("sealed.zip");

  @Option(
      names = "--seal",
      paramLabel = "DIGEST",
      description = {
        "The seal that was noted when it was sealed: without it a bundle that was made anew as a",
        "whole cannot be told from the first."
      })
  private @Nullable String noted;

  @Option(
      names = "--again",
      description = "Answer the book again from what is in it, and compare every result.")
  private boolean again;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    Console console = Console.of(here, json);
    String seal = noted == null ? null : noted.strip().toLowerCase(Locale.ROOT);
    if (seal != null && !Sha256.isOne(seal)) {
      return console.misunderstood("--seal: '" + noted + "' is not 64 digits from 0 to f");
    }
    SealCheck.Checked checked = SealCheck.of(file, seal == null ? null : new Sha256(seal));
    SealedAnswer.Again fresh = null;
    if (again && checked.isUnchanged()) {
      try {
        fresh = SealedAnswer.again(file, checked, console.progress());
      } catch (IOException e) {
        return console.notWritten(file, e);
      }
    }
    told(here, checked, fresh);
    return checked.isUnchanged() && (fresh == null || fresh.differing().isEmpty())
        ? ExitCode.DONE
        : ExitCode.SOMETHING_OPEN;
  }

  private void told(
      CommandSpec here, SealCheck.Checked checked, SealedAnswer.@Nullable Again fresh) {
    Words words = Spoken.plain(here);
    if (json) {
      ArchiveChoice.out(here).println(reply(checked, fresh, words).toPrettyString());
      return;
    }
    Argument name = new Argument.Text(file.toString());
    Sha256 seal = checked.seal();
    say(
        here,
        checked.isUnchanged() && seal != null
            ? words.say("cli.seal.unchanged", name, new Argument.Text(seal.hex()))
            : words.say("cli.seal.changed", name));
    checked.differences().forEach(one -> say(here, "  " + words.say(one)));
    if (fresh != null) {
      say(
          here,
          words.word(fresh.differing().isEmpty() ? "cli.seal.again_same" : "cli.seal.again_other"));
      fresh.differing().forEach(one -> say(here, "  " + one));
      if (fresh.other()) {
        say(here, words.word("cli.seal.other_program"));
      }
    }
    say(here, words.word("cli.seal.proves"));
  }

  private static void say(CommandSpec here, String line) {
    ArchiveChoice.out(here).println(line.stripTrailing());
  }

  private ObjectNode reply(
      SealCheck.Checked checked, SealedAnswer.@Nullable Again fresh, Words words) {
    ObjectNode reply =
        JsonReply.reply(checked.isUnchanged() ? "unchanged" : "changed")
            .put("file", file.toString());
    Sha256 seal = checked.seal();
    if (seal != null) {
      reply.put("seal", seal.hex());
    }
    ObjectNode facts = reply.putObject("facts");
    checked.facts().forEach(facts::put);
    ArrayNode differences = reply.putArray("differences");
    for (Statement one : checked.differences()) {
      differences.addObject().put("code", one.key().key()).put("sentence", words.say(one));
    }
    if (fresh != null) {
      names(reply.putArray("differing"), fresh.differing());
      reply.put("otherProgram", fresh.other());
    }
    return reply;
  }

  private static void names(ArrayNode into, List<String> names) {
    names.forEach(into::add);
  }
}
