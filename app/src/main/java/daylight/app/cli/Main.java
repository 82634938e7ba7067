package daylight.app.cli;

import daylight.app.Program;
import daylight.footage.codec.Footage;
import daylight.report.words.Language;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
    name = "daylight",
    mixinStandardHelpOptions = true,
    version = "Daylight " + Program.VERSION,
    description = "From what was measured on site to where a buried drain runs and how it fares.",
    footerHeading = "%nBegin with:%n",
    footer = {
      "  daylight demo                   answer an invented property and look at the results",
      "  daylight answer BOOK -o DIR     answer your own field book",
      "  daylight leaving BOOK           before the van doors close: what is still missing",
      "  daylight open BOOK              look at your book in a browser",
      "  daylight keep BOOK              put your book into the archive, with its history",
      "  daylight figure                 one calculation by itself, such as depth from nulls",
      "",
      "The format of a field book is explained in docs/field-book.md; the shortest useful one is",
      "docs/examples/shortest.yaml.",
      "",
      "Exit codes: 0 done; 1 something is missing or contradicts itself (leaving, figure), or the",
      "recording shows no counter or not that distance; 2 the book must be mended first, or the",
      "recording is refused; 3 the results could not be written; 64 the command was not understood;",
      "69 it could not be started; 70 a fault of Daylight's own."
    })
public final class Main implements Runnable {
  @Option(
      names = "--language",
      paramLabel = "LANGUAGE",
      scope = ScopeType.INHERIT,
      description = "Speak and write in en, English, or fr, French; default: en.")
  private @Nullable Language language;

  @Spec private @Nullable CommandSpec spec;

  private Main() {}

  /** Runs the command that the words name and leaves with its exit code. */
  public static void main(String[] words) {
    if (AllCommands.lookAtFootage(words)) {
      Footage.ahead();
    }
    System.exit(
        run(
            new PrintWriter(System.out, true, StandardCharsets.UTF_8),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            words));
  }

  /**
   * The same without leaving: what is to be read goes to {@code out}, what went wrong to {@code
   * err}.
   */
  static int run(PrintWriter out, PrintWriter err, String... words) {
    CommandLine line = AllCommands.under(new Main(), words);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(out);
    line.setErr(err);
    line.registerConverter(Manner.UnitsWord.class, units());
    line.registerConverter(Language.class, languages());
    line.setParameterExceptionHandler(Main::misunderstood);
    line.setExecutionExceptionHandler(Main::fault);
    return line.execute(words);
  }

  private static ITypeConverter<Manner.UnitsWord> units() {
    return word -> {
      Manner.UnitsWord units = Manner.UnitsWord.of(word);
      if (units == null) {
        throw new CommandLine.TypeConversionException(
            "'" + word + "' is not feet-inches, feet or metres");
      }
      return units;
    };
  }

  private static ITypeConverter<Language> languages() {
    return code ->
        Language.of(code.strip().toLowerCase(Locale.ROOT))
            .orElseThrow(
                () -> new CommandLine.TypeConversionException("'" + code + "' is not en or fr"));
  }

  /** The language that was asked for; null where nobody asked. */
  @Nullable Language language() {
    return language;
  }

  private static int misunderstood(CommandLine.ParameterException e, String[] words) {
    CommandLine line = e.getCommandLine();
    line.getErr().println("daylight: " + e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, line.getErr());
    line.getErr().println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.USAGE;
  }

  /** A fault of ours is named in one line; DAYLIGHT_TRACE=1 shows where it came from. */
  private static int fault(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
    line.getErr().println("daylight: a fault of the program, not of the book: " + e);
    if ("1".equals(System.getenv("DAYLIGHT_TRACE"))) {
      e.printStackTrace(line.getErr());
    } else {
      line.getErr().println("Run it again with DAYLIGHT_TRACE=1 to see where it came from.");
    }
    return ExitCode.FAULT;
  }

  @Override
  public void run() {
    CommandSpec here = spec;
    if (here != null) {
      here.commandLine().usage(here.commandLine().getOut());
    }
  }
}
