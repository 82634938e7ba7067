package daylight.line.course;

import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Visit;
import daylight.line.survey.Shares;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which entries the readings of survey and levels are, which go there by their labels: no two ties
 * and no two levels of a book share one.
 */
record Surveyed(Map<String, Source> ties, Map<String, Source> levels) {
  static Surveyed of(FieldBook book) {
    Map<String, Source> ties = new HashMap<>();
    Map<String, Source> levels = new HashMap<>();
    for (Visit visit : book.visits()) {
      take(visit.ties(), Source.Sort.TIE, ties);
      take(visit.levels(), Source.Sort.LEVEL, levels);
    }
    return new Surveyed(ties, levels);
  }

  private static void take(
      List<? extends Entry> entries, Source.Sort sort, Map<String, Source> into) {
    for (Entry entry : entries) {
      into.put(entry.label(), new Source.OfEntry(entry.id(), sort, Source.Part.READING));
    }
  }

  /** Books what the ties of a survey share. */
  void ties(Shares shares, Ledger ledger) {
    book(shares, ties, ledger);
  }

  /** Books what levels share. */
  void levels(Shares shares, Ledger ledger) {
    book(shares, levels, ledger);
  }

  private static void book(Shares shares, Map<String, Source> by, Ledger ledger) {
    shares
        .byEntry()
        .forEach(
            (label, variance) -> {
              Source source = by.get(label);
              if (source == null) {
                throw new IllegalStateException("a reading of no entry: " + label);
              }
              ledger.add(source, variance);
            });
  }
}
