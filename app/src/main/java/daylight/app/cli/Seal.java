package daylight.app.cli;

import daylight.app.Job;
import daylight.app.SealedAnswer;
import daylight.line.measure.Argument;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** An answer and all it rests on in one file that tells whether it was changed. */
@Command(
    name = "seal",
    mixinStandardHelpOptions = true,
    description = {
      "Answer a field book, and seal what it rests on and what came of it in one file: the book, the",
      "recordings and photographs it names, tables of your own, every result, and a list of all that",
      "ends in its seal. verify tells whether anything in it was changed since.",
      "",
      "With --archive, BOOK is a site of the archive, as for answer."
    })
final class Seal implements Callable<Integer> {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE",
      required = true,
      description = "The file to write; it must not be there yet.")
  private Path out = Path.of("sealed.zip");

  @Mixin private BookOrSite what = new BookOrSite();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    Choices choices = what.choices();
    Console console = Console.of(here, choices.json());
    String wrong = choices.wrong();
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    Job.Settings settings = choices.settings(here);
    return what.with(
        here,
        book -> told(here, SealedAnswer.seal(book, settings, console.progress(), out), console),
        (open, site) ->
            told(here, SealedAnswer.seal(open, site, settings, console.progress(), out), console));
  }

  private int told(CommandSpec here, SealedAnswer.Outcome outcome, Console console) {
    ArchiveChoice says = ArchiveChoice.of(out, what.choices().json());
    return switch (outcome) {
      case SealedAnswer.Outcome.NotAnswered not -> console.refused(not.refused());
      case SealedAnswer.Outcome.NotSealed not ->
          says.refused(here, not.why(), ExitCode.NOT_WRITTEN);
      case SealedAnswer.Outcome.Sealed sealed -> {
        says.say(
            here,
            "cli.seal.sealed",
            new Argument.Text(out.toString()),
            new Argument.Count(sealed.files()),
            new Argument.Text(sealed.seal().hex()));
        says.say(here, "cli.seal.note");
        says.json(
            here,
            JsonReply.reply("sealed")
                .put("file", out.toString())
                .put("files", sealed.files())
                .put("seal", sealed.seal().hex()));
        yield ExitCode.DONE;
      }
    };
  }
}
