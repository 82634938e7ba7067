package daylight.footage.counter;

import java.util.List;

/** The digits of a text by their kinds, and how many of the last are inches. */
record Digits(List<Integer> kinds, int inches, boolean negative) {
  private static final int PER_FOOT = 12;

  /** The figure under names, in steps of its last place or inches. */
  long value(char[] names) {
    long value = 0;
    long whole = 0;
    int until = kinds.size() - inches;
    for (int i = 0; i < kinds.size(); i++) {
      if (i == until) {
        whole = value;
        value = 0;
      }
      value = value * 10 + names[kinds.get(i)] - '0';
    }
    long all = inches > 0 ? whole * PER_FOOT + value : value;
    return negative ? -all : all;
  }
}
