package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.Shape;
import daylight.line.book.Catalogue;
import daylight.line.book.Finding;
import daylight.line.book.Where;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads what was seen in a pipe. A finding's further keys are the quantities and words that its
 * kind has in the catalogue; those of a kind that the catalogue does not know are kept as words.
 */
final class FindingReader {
  private static final Set<String> OWN = BookShape.FINDING.keys().keySet();

  private final Clerk clerk;

  FindingReader(Clerk clerk) {
    this.clerk = clerk;
  }

  void read(Fields row, List<Finding> kept) {
    String kind = row.wantedWords("kind");
    SortedMap<String, Reading> quantities = new TreeMap<>();
    SortedMap<String, String> words = new TreeMap<>();
    Optional<Catalogue.Kind> known = clerk.catalogue().find(kind);
    for (String key : row.written()) {
      if (!OWN.contains(key)) {
        particular(row, key, known, quantities, words);
      }
    }
    List<Finding.Outline> outlines = new ArrayList<>();
    row.rows("outlines").forEach(outline -> outline(row, outline, outlines));
    Finding finding =
        new Finding(
            clerk.name(row, "finding", "F"),
            kind,
            where(row),
            row.choice("moving", Finding.Moving.class, Finding.Moving.PUSHING),
            Scalars.clock(row, "clock"),
            quantities,
            words,
            row.words("node"),
            row.texts("stills"),
            outlines,
            row.words("remark"));
    clerk.keep(kept, row, finding);
  }

  private static void outline(Fields finding, Fields row, List<Finding.Outline> kept) {
    String on = row.words("on");
    double across = Pixels.along(row, "across");
    double down = Pixels.along(row, "down");
    double wide = Pixels.size(row, "wide");
    double high = Pixels.size(row, "high");
    if (row.sound()) {
      kept.add(new Finding.Outline(on, across, down, wide, high));
    } else {
      finding.spoil();
    }
  }

  private static void particular(
      Fields row,
      String key,
      Optional<Catalogue.Kind> kind,
      SortedMap<String, Reading> quantities,
      SortedMap<String, String> words) {
    Dimension dimension = kind.map(k -> k.quantities().get(key)).orElse(null);
    if (dimension != null) {
      Reading reading = row.reading(key, new Shape.Amount(dimension, Bare.NONE));
      if (reading != null) {
        quantities.put(key, reading);
      }
    } else if (kind.isEmpty() || kind.get().words().contains(key)) {
      String text = row.words(key);
      if (text != null) {
        words.put(key, text);
      }
    } else {
      Set<String> all = new TreeSet<>(OWN);
      all.addAll(kind.get().quantities().keySet());
      all.addAll(kind.get().words());
      row.unknown(key, all);
    }
  }

  private static Where where(Fields row) {
    boolean stretch = row.has("from") || row.has("to");
    Fields moment = row.part("moment");
    int places = (row.has("cable") ? 1 : 0) + (stretch ? 1 : 0) + (row.has("moment") ? 1 : 0);
    if (places != 1) {
      String key = row.has("cable") ? "cable" : "kind";
      row.complain(
          FileTrouble.WHICH_PLACE, key, new Argument.Choices(List.of("cable", "from", "moment")));
      return new Where.AtCable(new Reading(0, null, "?"));
    }
    if (stretch) {
      return new Where.FromTo(row.wantedReading("from"), row.wantedReading("to"));
    }
    if (moment != null) {
      String media = moment.wantedWords("media");
      double seconds = moment.wantedReading("at").value();
      if (!moment.sound()) {
        row.spoil();
      }
      return new Where.AtMoment(media, seconds);
    }
    return new Where.AtCable(row.wantedReading("cable"));
  }
}
