package daylight.report.map;

import java.time.LocalDate;

/** What sort of value a field holds. */
public enum Type {
  TEXT(String.class),
  /** A number that may have decimals. */
  NUMBER(Double.class),
  /** A whole number. */
  WHOLE(Long.class),
  YES_NO(Boolean.class),
  DAY(LocalDate.class);

  private final Class<?> holds;

  Type(Class<?> holds) {
    this.holds = holds;
  }

  /** Whether a value is of this sort. */
  boolean holds(Object value) {
    return holds.isInstance(value);
  }
}
