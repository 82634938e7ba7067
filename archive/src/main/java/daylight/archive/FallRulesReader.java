package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.BookFault;
import daylight.line.book.Reach;
import daylight.line.fall.FallRules;
import daylight.line.measure.Argument;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;

/** Reads a table of smallest slopes row by row. */
final class FallRulesReader {
  /** Where a row names no largest bore, in metres: no drain is as large. */
  private static final double ANY_BORE = 10;

  private FallRulesReader() {}

  static FallRules read(Fields fields) {
    List<FallRules.Row> rows = new ArrayList<>();
    for (Fields row : fields.rows("rows")) {
      FallRules.Row read = row(row);
      if (row.sound()) {
        rows.add(read);
      }
    }
    if (!fields.has("rows")) {
      fields.complain(FormTrouble.MISSING, "rows", new Argument.Text("rows"));
    }
    String title = fields.wantedWords("title");
    String edition = fields.words("edition");
    return new FallRules(
        fields.wantedWords("id"),
        edition == null ? title : title + " (" + edition + ")",
        rows,
        fields.words("note"));
  }

  private static FallRules.Row row(Fields row) {
    Reading from = row.reading("bore-from");
    Reading to = row.reading("bore-to");
    Reading slope = row.wantedReading("slope");
    if (!(slope.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, "slope", new Argument.Text(slope.written()));
    }
    if (from != null && to != null && to.value() < from.value()) {
      row.complain(
          BookFault.FROM_AFTER_TO,
          "bore-to",
          new Argument.Bore(from.value()),
          new Argument.Bore(to.value()));
    }
    return new FallRules.Row(
        from == null ? 0 : from.value(),
        to == null ? ANY_BORE : to.value(),
        Scalars.choices(row, "uses", Reach.Use.class),
        slope.value(),
        row.wantedWords("clause"),
        row.wantedWords("source"),
        row.wantedChoice("mark", Mark.class));
  }
}
