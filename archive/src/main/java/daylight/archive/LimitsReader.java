package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.line.answer.Rules;
import daylight.line.measure.Argument;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Reads the thresholds of the judgement row by row. */
final class LimitsReader {
  /** What a row sets. */
  enum What {
    SEEN_SHARE("share"),
    OBSTRUCTION("share"),
    TRENCH_NOTICE("depth"),
    TRENCH_PROTECT("depth"),
    DIG_MARGIN("length"),
    NEAR_MARK("length");

    private final String key;

    What(String key) {
      this.key = key;
    }
  }

  private LimitsReader() {}

  /** The limits over a base; null when a row is missing or wrong. */
  static Rules.@Nullable Limits read(Fields fields, Rules.@Nullable Limits base) {
    Map<What, Double> rows = new EnumMap<>(What.class);
    if (base != null) {
      rows.put(What.SEEN_SHARE, base.seenShare());
      rows.put(What.OBSTRUCTION, base.obstruction());
      rows.put(What.TRENCH_NOTICE, base.trenchNotice());
      rows.put(What.TRENCH_PROTECT, base.trenchProtect());
      rows.put(What.DIG_MARGIN, base.digMargin());
      rows.put(What.NEAR_MARK, base.nearMark());
    }
    Set<What> own = EnumSet.noneOf(What.class);
    for (Fields row : fields.rows("limits")) {
      row(row, own, rows);
    }
    for (What what : What.values()) {
      if (!rows.containsKey(what)) {
        fields.complain(FormTrouble.MISSING, "limits", new Argument.Text(Section.word(what)));
      }
    }
    if (rows.size() < What.values().length) {
      return null;
    }
    return new Rules.Limits(
        of(rows, What.SEEN_SHARE),
        of(rows, What.OBSTRUCTION),
        of(rows, What.TRENCH_NOTICE),
        of(rows, What.TRENCH_PROTECT),
        of(rows, What.DIG_MARGIN),
        of(rows, What.NEAR_MARK));
  }

  private static void row(Fields row, Set<What> own, Map<What, Double> rows) {
    What what = row.wantedChoice("what", What.class);
    row.wantedChoice("mark", Mark.class);
    row.wantedWords("source");
    row.words("note");
    Map<String, Reading> given = new TreeMap<>();
    for (String key : List.of("share", "depth", "length")) {
      Reading reading = row.reading(key);
      if (reading != null) {
        given.put(key, reading);
      }
    }
    if (!row.sound()) {
      return;
    }
    Reading set = given.remove(what.key);
    if (set == null) {
      row.complain(FormTrouble.MISSING, what.key, new Argument.Text(what.key));
    } else if (!given.isEmpty()) {
      row.unknown(given.keySet().iterator().next(), Set.of());
    } else if (!(set.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, what.key, new Argument.Text(set.written()));
    } else if (own.add(what)) {
      rows.put(what, set.value());
    } else {
      row.complain(FormTrouble.DUPLICATE_KEY, "what", new Argument.Text(Section.word(what)));
    }
  }

  private static double of(Map<What, Double> rows, What what) {
    Double value = rows.get(what);
    if (value == null) {
      throw new IllegalStateException("checked before: " + what);
    }
    return value;
  }
}
