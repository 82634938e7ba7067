package daylight.line.answer;

import daylight.line.measure.Key;

/** How sure an answer is. */
public enum Sureness implements Key {
  /** At least 95 % by what was measured. */
  SURE,
  /** At least 80 %. */
  LIKELY,
  /** Less, or not a matter of figures. */
  OPEN;

  /** The word for a probability that the answer is right. */
  public static Sureness of(double probability) {
    return probability >= 0.95 ? SURE : probability >= 0.80 ? LIKELY : OPEN;
  }

  @Override
  public String key() {
    return "sure." + name().toLowerCase(java.util.Locale.ROOT);
  }
}
