package daylight.line.measure;

/** Positions on the pipe's wall as hours of a clock, and ranges of them. */
final class ClockFace {
  private static final double HOUR = StrictMath.PI / 6;

  private ClockFace() {}

  /** Understands {@code 3}, {@code 3 o'clock}, {@code 9:30}; twelve is 0 radians. */
  static Parsed<Double> radians(Phrase phrase) {
    boolean withMinutes = phrase.first().unit().equals(":") && phrase.terms().size() == 2;
    if (!withMinutes && !phrase.isSingle()) {
      return Parsed.refused(Refusal.TRAILING_TEXT);
    }
    Phrase.Term last = phrase.terms().getLast();
    if (!last.unit().isEmpty() && !last.unit().matches("o'?clock")) {
      return Parsed.refused(Meaning.whyNoUnit(Dimension.CLOCK, last));
    }
    if (!phrase.first().isWhole() || !last.isWhole()) {
      return Parsed.refused(Refusal.NOT_WHOLE);
    }
    if (withMinutes && last.digits().length() != 2) {
      return Parsed.refused(Refusal.AMBIGUOUS_COLON);
    }
    double hour = phrase.first().number();
    double minute = withMinutes ? last.number() : 0;
    if (phrase.negative() || hour < 1 || hour > 12 || minute > 59) {
      return Parsed.refused(Refusal.OUT_OF_RANGE);
    }
    return new Parsed.Value<>((hour % 12 + minute / 60) * HOUR);
  }

  /** Understands {@code 9-3} and {@code 9 to 3}, clockwise from the first to the second. */
  static Parsed<ClockRange> range(String plain, String typed) {
    String dashed = plain.replace(" to ", "-");
    int dash = dashed.indexOf('-');
    if (plain.isEmpty()) {
      return Parsed.refused(Refusal.EMPTY);
    }
    if (dash < 0) {
      return Meaning.of(Dimension.CLOCK, plain, null)
          .then(lone -> Parsed.refused(Refusal.PARTS_DO_NOT_FIT));
    }
    Parsed<Double> end = Meaning.of(Dimension.CLOCK, dashed.substring(dash + 1).strip(), null);
    return Meaning.of(Dimension.CLOCK, dashed.substring(0, dash).strip(), null)
        .then(from -> end.map(to -> new ClockRange(from, to, typed)));
  }
}
