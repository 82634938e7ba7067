package daylight.report.view;

import java.util.Locale;

/** From where a line is drawn. */
public enum Side {
  /** From above. */
  PLAN,
  /** From the side. */
  PROFILE,
  /** Straightened out. */
  STRIP;

  /** Its word on a page, by which its section goes. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
