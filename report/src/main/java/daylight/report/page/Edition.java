package daylight.report.page;

import daylight.report.draw.Subject;
import daylight.report.markup.Tag;

/**
 * A report as one reader gets it.
 *
 * @param subject what it tells of
 * @param sender whose it is
 * @param title what a browser and a reader call it
 * @param about in a sentence
 * @param main what it says, for screen and paper alike
 */
public record Edition(Subject subject, Sender sender, String title, String about, Tag main) {
  /** Rules for a style sheet: the sender's own colour. */
  public String colour() {
    return Head.colour(sender);
  }
}
