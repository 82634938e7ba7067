package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.condition.Grade;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import daylight.line.urgency.Consequence;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import daylight.line.urgency.UrgencyTable;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Reads a table of urgency row by row. */
final class UrgencyReader {
  static final String URGENCY_KEY = "daylight-urgency";

  private static final Section ROW = row();

  static final Section URGENCY =
      Section.named("urgency")
          .words(URGENCY_KEY, "id", "note")
          .oneOf("when-unknown", UrgencyTable.WhenUnknown.class)
          .amount("near", Dimension.LENGTH)
          .rows("rows", ROW)
          .with(TimesReader.SECTION);

  private UrgencyReader() {}

  private static Section row() {
    Section row = Section.named("urgency-row").oneOf("class", Grade.class);
    for (Consequence consequence : Consequence.values()) {
      row = row.with(Section.word(consequence), new Shape.OneOf(Urgency.class));
    }
    return row.words("source", "note").oneOf("mark", Mark.class);
  }

  /** The table; null where something in it is wrong. */
  static @Nullable UrgencyTable read(Fields fields) {
    String id = fields.wantedWords("id");
    fields.words("note");
    UrgencyTable.WhenUnknown whenUnknown =
        fields.wantedChoice("when-unknown", UrgencyTable.WhenUnknown.class);
    Reading near = fields.wantedReading("near");
    if (fields.has("near") && !(near.value() > 0)) {
      fields.complain(FormTrouble.NOT_POSITIVE, "near", new Argument.Text(near.written()));
    }
    SortedMap<Grade, UrgencyTable.Row> rows = new TreeMap<>();
    fields.rows("rows").forEach(row -> row(row, rows, fields));
    for (Grade grade : Grade.values()) {
      if (!rows.containsKey(grade) && fields.sound()) {
        fields.complain(
            RuleTrouble.ROW_MISSING,
            fields.has("rows") ? "rows" : "id",
            new Argument.Text(Section.word(grade)));
      }
    }
    TimeLimits times = TimesReader.read(fields);
    return fields.sound() && rows.size() == Grade.values().length
        ? new UrgencyTable(id, whenUnknown, near.value(), rows, times)
        : null;
  }

  private static void row(Fields row, SortedMap<Grade, UrgencyTable.Row> rows, Fields fields) {
    Grade grade = row.wantedChoice("class", Grade.class);
    SortedMap<Consequence, Urgency> urgency = new TreeMap<>();
    for (Consequence consequence : Consequence.values()) {
      urgency.put(consequence, row.wantedChoice(Section.word(consequence), Urgency.class));
    }
    UrgencyTable.Row read =
        new UrgencyTable.Row(
            urgency,
            row.wantedWords("source"),
            row.wantedChoice("mark", Mark.class),
            row.words("note"));
    if (row.sound()) {
      order(row, urgency);
      rows.forEach((other, before) -> compare(row, grade, urgency, other, before.urgency()));
      if (rows.putIfAbsent(grade, read) != null) {
        row.complain(RuleTrouble.ROW_TWICE, "class", new Argument.Text(Section.word(grade)));
      }
    }
    if (!row.sound()) {
      fields.spoil();
    }
  }

  /** Within a class, what is worse is never less urgent. */
  private static void order(Fields row, SortedMap<Consequence, Urgency> urgency) {
    Urgency worse = Urgency.AT_ONCE;
    for (Consequence consequence : Consequence.values()) {
      Urgency one = urgency.getOrDefault(consequence, worse);
      if (one.compareTo(worse) < 0) {
        milder(row, consequence, worse, one);
      }
      worse = one;
    }
  }

  /** Of two classes the worse is never less urgent. */
  private static void compare(
      Fields row,
      Grade grade,
      SortedMap<Consequence, Urgency> urgency,
      Grade other,
      SortedMap<Consequence, Urgency> before) {
    for (Consequence consequence : Consequence.values()) {
      Urgency mine = urgency.getOrDefault(consequence, Urgency.WATCH);
      Urgency theirs = before.getOrDefault(consequence, Urgency.WATCH);
      int sooner = mine.compareTo(theirs);
      if (other.worseThan(grade) && sooner < 0) {
        milder(row, consequence, theirs, mine);
      } else if (grade.worseThan(other) && sooner > 0) {
        milder(row, consequence, mine, theirs);
      }
    }
  }

  private static void milder(Fields row, Consequence at, Urgency worse, Urgency better) {
    row.complain(
        RuleTrouble.MILDER_THOUGH_WORSE,
        Section.word(at),
        new Argument.Text(Section.word(worse)),
        new Argument.Text(Section.word(better)));
  }
}
