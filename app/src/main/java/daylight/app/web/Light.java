package daylight.app.web;

import java.util.Locale;

/** In what light the pages are looked at. */
public enum Light {
  /** Indoors: dark ink on paper white. */
  PAPER,
  /** In a basement: light on dark, so that eyes stay used to the dark. */
  BASEMENT,
  /** In bright daylight: black on white, heavier and larger. */
  SUN;

  /** What stands in its place where the device is followed. */
  static final String DEVICE = "device";

  /** Its word in cookies and style sheets. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
