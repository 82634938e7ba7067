package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a letterhead. */
public enum LetterTrouble implements ComplaintCode {
  /** The file of the logo lies outside the folder of the letterhead: its name. */
  LOGO_LEADS_OUT(Gravity.STOPS),
  /** Not a colour as in {@code #17703a}: the text. */
  NOT_A_COLOUR(Gravity.STOPS),
  /** A colour too pale to be read on paper: the text. */
  TOO_PALE(Gravity.STOPS),
  /** A kind of finding that the catalogue does not know: its id. */
  KIND_UNKNOWN(Gravity.STOPS),
  /** A kind that has its price already: its id. */
  KIND_TWICE(Gravity.STOPS),
  /** The most is less than the least: both. */
  LESS_THAN_LEAST(Gravity.STOPS),
  /** There is no such file: its name. The report comes without it. */
  LOGO_MISSING(Gravity.DOUBT),
  /** The file cannot be read as a picture: its name. The report comes without it. */
  LOGO_NO_PICTURE(Gravity.DOUBT);

  private final Gravity gravity;

  LetterTrouble(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "letterhead." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }
}
