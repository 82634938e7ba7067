package daylight.app.cli;

import daylight.app.HandedFootage;
import daylight.app.Job;
import daylight.app.Progress;
import daylight.archive.ResultFolder;
import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Asks;
import daylight.line.answer.StopOrder;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.line.measure.Gravity;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.report.Handout;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** What the commands say, as sentences or as JSON, and the exit code that goes with it. */
final class Console {
  private static final int WIDTH = 96;

  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean json;
  private final Language language;

  private Console(CommandSpec spec, boolean json) {
    this.out = spec.commandLine().getOut();
    this.err = spec.commandLine().getErr();
    this.json = json;
    this.language = Spoken.in(spec);
  }

  static Console of(@Nullable CommandSpec spec, boolean json) {
    if (spec == null) {
      throw new IllegalStateException("a command has its own description before it runs");
    }
    return new Console(spec, json);
  }

  /** Who tells how far long work is; nobody where another program listens. */
  Progress progress() {
    return json ? Progress.NONE : ProgressLine.on(err, Words.of(language, Shown.METRES));
  }

  int misunderstood(String wrong) {
    err.println("daylight: " + wrong);
    return ExitCode.USAGE;
  }

  /** Every complaint, and that nothing was written. */
  int refused(Job.Outcome.Refused refused) {
    return refused(refused.complaints(), refused.shown());
  }

  /** Every complaint, and that nothing was written. */
  int refused(List<Complaint> complaints, Shown shown) {
    Words words = Words.of(language, shown);
    if (json) {
      out.println(JsonReply.refused(complaints, words));
      return ExitCode.BOOK_REFUSED;
    }
    for (Complaint complaint : complaints) {
      err.println(words.complaint(complaint));
    }
    long stops = complaints.stream().filter(c -> c.code().gravity() == Gravity.STOPS).count();
    err.println(words.say("cli.refused", new daylight.line.measure.Argument.Count(stops)));
    return ExitCode.BOOK_REFUSED;
  }

  /** An adjusted network, with whatever is to be said of the file. */
  int ties(TiesReport report, List<Complaint> complaints, Shown shown) {
    Words words = Words.of(language, shown);
    if (json) {
      out.println(JsonReply.ties(report, complaints, words));
    } else {
      complaints.forEach(complaint -> err.println(words.complaint(complaint)));
      report.sentences(words).forEach(line -> wrapped(line, "    "));
    }
    return report.open() ? ExitCode.SOMETHING_OPEN : ExitCode.DONE;
  }

  /** Something of somebody's own lies where a book was to be written. */
  int inTheWay(Path file) {
    String reason = Words.of(language, Shown.METRES).word("cli.in_the_way");
    err.println("daylight: " + file + ": " + reason);
    return ExitCode.NOT_WRITTEN;
  }

  int notWritten(Path folder, ResultFolder.Outcome.Refused refused) {
    String reason = Words.of(language, Shown.METRES).name(refused.reason());
    err.println("daylight: " + folder + ": " + reason + ": " + refused.what());
    return ExitCode.NOT_WRITTEN;
  }

  int notWritten(Path file, IOException e) {
    err.println("daylight: " + file + ": " + e.getMessage());
    return ExitCode.NOT_WRITTEN;
  }

  /** One line, for people and scripts alike. */
  void serving(URI address) {
    out.println(address);
    out.flush();
  }

  int notStarted(String reason) {
    err.println("daylight: " + reason);
    return ExitCode.NOT_STARTED;
  }

  int stopped() {
    err.println(Words.of(language, Shown.METRES).word("cli.stopped"));
    return ExitCode.NOT_WRITTEN;
  }

  /**
   * The answers and where they lie.
   *
   * @param files that were written, by name
   */
  int answered(Handout handout, SortedMap<String, byte[]> files, Path folder) {
    return answered(handout, files.keySet(), folder, List.of());
  }

  /**
   * The same with what became of the recordings that were handed over.
   *
   * @param files that were written beside those
   */
  int answered(Handout handout, Set<String> files, Path folder, List<HandedFootage.Told> handed) {
    if (json) {
      out.println(HandedTold.reply(handout, folder, files, handed));
      return ExitCode.DONE;
    }
    Words words = Words.of(handout.language(), handout.shown());
    stops(handout, words);
    out.println(handout.book().site().name());
    if (handout.book().site().invented()) {
      out.println(words.word("cli.invented"));
    }
    for (Answers.LineAnswers line : handout.answers().lines()) {
      out.println();
      out.println(words.say("cli.line", new daylight.line.measure.Argument.Label(line.line())));
      for (Answer answer : line.answers()) {
        String state = words.word(answer.state()) + ", " + words.word(answer.sure());
        wrapped("  " + words.word(answer.question()) + " — " + state, "    ");
        wrapped("    " + words.say(answer.headline()), "    ");
      }
    }
    complaints(handout, words);
    out.println();
    if (!files.contains("maps/site.kml")) {
      wrapped(words.word("map.no_kml"), "");
    }
    handed.forEach(one -> wrapped(new HandedTold(words).say(one), "  "));
    out.println(words.word("cli.caution"));
    out.println(folder.resolve("report.html"));
    return ExitCode.DONE;
  }

  /** What contradicts what, then what each question still wants. */
  int leaving(Job.Outcome.Answered answered) {
    Handout handout = answered.handout();
    Words words = Words.of(handout.language(), handout.shown());
    List<Statement> doubts = handout.line().doubts();
    boolean open =
        !doubts.isEmpty()
            || handout.answers().lines().stream()
                .flatMap(line -> line.answers().stream())
                .anyMatch(answer -> !answer.missing().isEmpty());
    int code = open ? ExitCode.SOMETHING_OPEN : ExitCode.DONE;
    if (json) {
      out.println(JsonReply.leaving(handout));
      return code;
    }
    stops(handout, words);
    complaints(handout, words);
    out.println(words.word(doubts.isEmpty() ? "cli.no_contradiction" : "cli.contradictions"));
    doubts.forEach(doubt -> wrapped("  " + words.say(doubt), "    "));
    handout.line().unchecked().ifPresent(statement -> wrapped("  " + words.say(statement), "    "));
    for (Answers.LineAnswers line : handout.answers().lines()) {
      out.println();
      out.println(words.say("cli.line", new daylight.line.measure.Argument.Label(line.line())));
      Asks asks = Asks.of(handout.book(), handout.line(), handout.answers(), line);
      asks(words, asks.now(), "cli.asks.now");
      asks(words, asks.more(), "cli.asks.more");
      asks(words, asks.later(), "cli.asks.later");
      if (asks.now().isEmpty() && asks.later().isEmpty()) {
        out.println("  " + words.word("cli.nothing_missing"));
      }
    }
    return code;
  }

  private void asks(Words words, List<Asks.Ask> asks, String heading) {
    if (!asks.isEmpty()) {
      out.println("  " + words.word(heading));
    }
    for (Asks.Ask ask : asks) {
      Argument minutes = new Argument.Quantity(Dimension.DURATION, 60 * ask.minutes());
      String takes = ask.minutes() > 0 ? " " + words.say("cli.asks.takes", minutes) : "";
      wrapped(
          "    " + words.word(ask.question()) + " — " + words.say(ask.what()) + takes, "      ");
    }
  }

  private void stops(Handout handout, Words words) {
    for (StopOrder stop : handout.answers().stops()) {
      out.println(words.word("report.stop"));
      wrapped("  " + words.finding(stop.finding()), "  ");
      wrapped("  " + words.word("report.stop.do"), "  ");
      out.println();
    }
  }

  private void complaints(Handout handout, Words words) {
    if (!handout.complaints().isEmpty()) {
      out.println();
      handout.complaints().forEach(complaint -> out.println(words.complaint(complaint)));
    }
  }

  private void wrapped(String text, String indent) {
    StringBuilder line = new StringBuilder();
    for (String word : text.split("(?<=\\S) ", -1)) {
      if (!line.isEmpty() && line.length() + word.length() >= WIDTH) {
        out.println(line);
        line.setLength(0);
        line.append(indent);
      } else if (!line.isEmpty() && !line.toString().isBlank()) {
        line.append(' ');
      }
      line.append(word);
    }
    out.println(line);
  }
}
