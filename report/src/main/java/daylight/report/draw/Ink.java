package daylight.report.draw;

/**
 * The colours of everything handed over. Each stands on white with a contrast of at least 4.5 to 1
 * where it is text (Web Content Accessibility Guidelines 2.2, 1.4.3), except the faint ones, which
 * never are.
 */
public final class Ink {
  public static final String PAPER = "#ffffff";
  public static final String DARK = "#1d2433";
  public static final String SOFT = "#4f586b";
  public static final String FAINT = "#d5d9e0";

  /** Of lines that only lead the eye: 3 to 1 on white, and drawn thin. */
  public static final String RULE = "#868e9c";

  public static final String DRAIN = "#17703a";
  public static final String WATER = "#1f5fa8";
  public static final String STOP = "#9b1c1c";

  private Ink() {}
}
