package daylight.app.field;

import java.util.Locale;

/** In what light the pages are looked at. */
enum Light {
  /** Indoors: dark ink on paper white. */
  PAPER,
  /** In a basement: light on dark, so that eyes stay used to the dark. */
  BASEMENT,
  /** In bright daylight: black on white, heavier and larger. */
  SUN;

  String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
