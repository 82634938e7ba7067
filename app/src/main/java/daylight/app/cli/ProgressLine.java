package daylight.app.cli;

import daylight.app.Progress;
import daylight.footage.Watch;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.PrintWriter;

/**
 * Tells on standard error how far long work is. On a terminal one line is written over and over; in
 * a file each step is one line.
 */
final class ProgressLine implements Progress {
  private static final int WIDTH = 78;

  private final PrintWriter err;
  private final boolean terminal;
  private final Words words;

  private ProgressLine(PrintWriter err, boolean terminal, Words words) {
    this.words = words;
    this.err = err;
    this.terminal = terminal;
  }

  /** Of this process. */
  static ProgressLine on(PrintWriter err, Words words) {
    return new ProgressLine(err, isTerminal(), words);
  }

  /** Whether somebody sits at a terminal. */
  @SuppressWarnings("SystemConsoleNull") // there is none where a file or a program listens
  static boolean isTerminal() {
    java.io.Console console = System.console();
    return console != null && console.isTerminal();
  }

  static ProgressLine on(PrintWriter err, boolean terminal) {
    return new ProgressLine(err, terminal, Words.of(Language.EN, Shown.METRES));
  }

  @Override
  public Watch begin(Step step, String what) {
    String text = words.say(Statement.of(step, new Argument.Text(what)));
    if (!terminal) {
      err.println(text);
      return Watch.NOBODY;
    }
    return new Watch() {
      private int shown = -1;

      @Override
      public void done(double share) {
        int percent = (int) (100 * Math.clamp(share, 0.0, 1.0));
        if (percent > shown) {
          shown = percent;
          String line = text + " " + words.written(percent + " %");
          err.print("\r" + (percent == 100 ? " ".repeat(WIDTH) + "\r" : line));
          err.flush();
        }
      }

      @Override
      public boolean stopped() {
        return Thread.currentThread().isInterrupted();
      }
    };
  }
}
