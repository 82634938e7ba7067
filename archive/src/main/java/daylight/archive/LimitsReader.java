package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.line.answer.Rules;
import daylight.line.fall.FallLimit;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the thresholds of the judgement row by row. */
final class LimitsReader {
  /** What a row sets. */
  enum What {
    SEEN_SHARE("share"),
    OBSTRUCTION("share"),
    TRENCH_NOTICE("depth"),
    TRENCH_PROTECT("depth");

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
    }
    for (Fields row : fields.rows("limits")) {
      What what = row.wantedChoice("what", What.class);
      row.wantedChoice("mark", FallLimit.Mark.class);
      row.wantedWords("source");
      row.words("note");
      Reading share = row.reading("share");
      Reading depth = row.reading("depth");
      Reading set = what.key.equals("share") ? share : depth;
      if (set == null) {
        row.complain(FormTrouble.MISSING, what.key, new Argument.Text(what.key));
      } else if (!(set.value() > 0)) {
        row.complain(FormTrouble.NOT_POSITIVE, what.key, new Argument.Text(set.written()));
      } else {
        rows.put(what, set.value());
      }
    }
    for (What what : What.values()) {
      if (!rows.containsKey(what)) {
        fields.complain(FormTrouble.MISSING, "limits", new Argument.Text(Section.word(what)));
        return null;
      }
    }
    return new Rules.Limits(
        of(rows, What.SEEN_SHARE),
        of(rows, What.OBSTRUCTION),
        of(rows, What.TRENCH_NOTICE),
        of(rows, What.TRENCH_PROTECT));
  }

  private static double of(Map<What, Double> rows, What what) {
    Double value = rows.get(what);
    if (value == null) {
      throw new IllegalStateException("checked before: " + what);
    }
    return value;
  }
}
