package daylight.report.draw;

import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;

/** The door for the strip: the pipe straightened out and laid down, the water running right. */
public final class StripDrawing {
  private StripDrawing() {}

  /** The strip of every route that was looked into. */
  public static Tag draw(Subject subject) {
    Words words = subject.words();
    String title = words.say("draw.strip.title", new Argument.Text(subject.book().site().name()));
    Sheet sheet = new Sheet("strip", subject, 420, title, words.word("draw.strip.desc"));
    sheet.note(words.word("draw.nothing"));
    return sheet.finished();
  }
}
