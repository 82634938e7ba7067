package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.BookFault;
import daylight.line.measure.Argument;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import daylight.line.proving.HoldLimit;
import daylight.line.proving.HoldLimits;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads criteria for hold tests row by row. */
final class HoldLimitsReader {
  private HoldLimitsReader() {}

  /** The criteria; null when a row is wrong or none is there. */
  static @Nullable HoldLimits read(Fields fields) {
    List<HoldLimit> rows = new ArrayList<>();
    for (Fields row : fields.rows("limits")) {
      HoldLimit read = row(row);
      if (read == null) {
        fields.spoil();
      } else if (rows.stream().anyMatch(earlier -> earlier.id().equals(read.id()))) {
        row.complain(BookFault.DUPLICATE_LABEL, "id", new Argument.Label(read.id()));
        fields.spoil();
      } else {
        rows.add(read);
      }
    }
    if (!fields.has("limits") || (rows.isEmpty() && fields.sound())) {
      fields.complain(FormTrouble.MISSING, "limits", new Argument.Text("limits"));
    }
    return fields.sound() ? new HoldLimits(rows) : null;
  }

  private static @Nullable HoldLimit row(Fields row) {
    HoldLimit.Allows allows = allows(row);
    Double hold = positive(row, "hold");
    Double from = positive(row, "head-from");
    Double to = positive(row, "head-to");
    if (from != null && to != null && to < from) {
      row.complain(
          BookFault.FROM_AFTER_TO, "head-to", new Argument.Length(from), new Argument.Length(to));
    }
    String id = row.wantedWords("id");
    String title = row.wantedWords("title");
    String clause = row.wantedWords("clause");
    String source = row.wantedWords("source");
    Mark mark = row.wantedChoice("mark", Mark.class);
    String note = row.words("note");
    return allows == null || !row.sound()
        ? null
        : new HoldLimit(id, title, allows, hold, from, to, clause, source, mark, note);
  }

  private static HoldLimit.@Nullable Allows allows(Fields row) {
    boolean surface = row.has("per-surface");
    boolean length = row.has("per-bore") || row.has("per-length");
    boolean none = row.yes("no-drop", false);
    if ((surface ? 1 : 0) + (length ? 1 : 0) + (none ? 1 : 0) != 1) {
      row.complain(
          FileTrouble.ONE_OF,
          "id",
          new Argument.Choices(
              List.of("loss, per-surface, in", "loss, per-bore, per-length, in", "no-drop")));
      return null;
    }
    if (none) {
      return new HoldLimit.Allows.NoDrop();
    }
    double perTime = wanted(row, "loss") / wanted(row, "in");
    return surface
        ? new HoldLimit.Allows.BySurface(perTime / wanted(row, "per-surface"))
        : new HoldLimit.Allows.ByBoreAndLength(
            perTime / (wanted(row, "per-bore") * wanted(row, "per-length")));
  }

  private static double wanted(Fields row, String key) {
    Reading reading = row.wantedReading(key);
    if (!(reading.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
      return 1;
    }
    return reading.value();
  }

  private static @Nullable Double positive(Fields row, String key) {
    Reading reading = row.reading(key);
    if (reading == null) {
      return null;
    }
    if (!(reading.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
    }
    return reading.value();
  }
}
