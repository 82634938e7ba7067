package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.line.book.Catalogue;
import daylight.line.book.Reported;
import daylight.line.cause.Ask;
import daylight.line.cause.CauseTable;
import daylight.line.cause.Sign;
import daylight.line.cause.WordList;
import daylight.line.condition.Grade;
import daylight.line.fall.WaterCause;
import daylight.line.measure.Argument;
import daylight.line.measure.Mark;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Reads a table of causes row by row, and the words of complaints. */
final class CausesReader {
  private static final double MOST = 1000;

  private final Catalogue catalogue;
  private final List<CauseTable.Row> rows = new ArrayList<>();

  private CausesReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The table; null where something in it is wrong. */
  static @Nullable CauseTable read(Fields fields, Catalogue catalogue) {
    return new CausesReader(catalogue).table(fields);
  }

  private @Nullable CauseTable table(Fields fields) {
    String id = fields.wantedWords("id");
    double probable = number(fields, "probable-from", 1, MOST);
    double unlikely = number(fields, "unlikely-to", 0, 1);
    double near = positive(fields, "near");
    Reading shallow = fields.wantedReading("shallow");
    double deep = positive(fields, "deep");
    if (fields.sound() && !(shallow.value() < deep)) {
      fields.complain(
          RuleTrouble.NOT_LESS,
          "shallow",
          new Argument.Text(shallow.written()),
          new Argument.Text(fields.wantedReading("deep").written()));
    }
    fields.rows("causes").forEach(this::cause);
    wanted(fields, "causes");
    boolean words = probable > 1 && unlikely > 0 && unlikely < 1;
    return fields.sound() && words
        ? new CauseTable(
            id,
            new CauseTable.Said(probable, unlikely),
            new CauseTable.Limits(near, shallow.value(), deep),
            rows)
        : null;
  }

  private static void wanted(Fields fields, String key) {
    if (!fields.has(key)) {
      fields.complain(FormTrouble.MISSING, key, new Argument.Text(key));
    }
  }

  private static double number(Fields fields, String key, double least, double most) {
    wanted(fields, key);
    Double number = fields.number(key, least, most);
    if (number != null && (number <= least || number >= most)) {
      fields.complain(
          FormTrouble.NOT_A_NUMBER,
          key,
          new Argument.Text(String.valueOf(fields.text(key))),
          new Argument.Number(least),
          new Argument.Number(most));
    }
    return number == null ? least : number;
  }

  private static double positive(Fields fields, String key) {
    Reading reading = fields.wantedReading(key);
    if (fields.has(key) && !(reading.value() > 0)) {
      fields.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
    }
    return reading.value();
  }

  private void cause(Fields row) {
    String cause = row.wantedWords("cause");
    List<Reported.Kind> of = Scalars.choices(row, "of", Reported.Kind.class);
    wanted(row, "of");
    wanted(row, "signs");
    List<Reported.When> when = Scalars.choices(row, "when", Reported.When.class);
    CauseTable.Reach where = row.wantedChoice("where", CauseTable.Reach.class);
    List<CauseTable.SignRow> signs = new ArrayList<>();
    for (Fields each : row.rows("signs")) {
      CauseTable.SignRow sign = sign(each);
      if (sign == null) {
        row.spoil();
      } else {
        signs.add(sign);
      }
    }
    List<Ask> asks = Scalars.choices(row, "asks", Ask.class);
    String source = row.wantedWords("source");
    Mark mark = row.wantedChoice("mark", Mark.class);
    String note = row.words("note");
    boolean twice =
        rows.stream()
            .anyMatch(one -> one.cause().equals(cause) && one.of().stream().anyMatch(of::contains));
    if (twice) {
      row.complain(RuleTrouble.ROW_TWICE, "cause", new Argument.Text(cause));
    }
    if (row.sound()) {
      rows.add(new CauseTable.Row(cause, of, when, where, signs, asks, source, mark, note));
    }
  }

  private CauseTable.@Nullable SignRow sign(Fields row) {
    Sign sign = row.wantedChoice("sign", Sign.class);
    double times = number(row, "times", 0, MOST);
    List<String> kinds = row.texts("kinds");
    kinds.forEach(kind -> known(row, kind));
    Reading share = row.reading("share-from");
    Grade grade = row.choice("class", Grade.class);
    WaterCause heldBy = row.choice("held-by", WaterCause.class);
    List<Reported.When> is = Scalars.choices(row, "is", Reported.When.class);
    if (sign == Sign.FOUND) {
      wanted(row, "kinds");
    } else {
      List.of("kinds", "share-from", "class", "held-by").forEach(key -> notOf(row, key, sign));
    }
    if (sign == Sign.WHEN) {
      wanted(row, "is");
    } else {
      notOf(row, "is", sign);
    }
    return row.sound()
        ? new CauseTable.SignRow(
            sign, times, kinds, share == null ? null : share.value(), grade, is, heldBy)
        : null;
  }

  private static void notOf(Fields row, String key, Sign sign) {
    if (row.has(key) && row.has("sign")) {
      row.complain(
          RuleTrouble.NOT_OF_SIGN,
          key,
          new Argument.Text(key),
          new Argument.Text(Section.word(sign)));
    }
  }

  private void known(Fields row, String kind) {
    if (catalogue.find(kind).isEmpty()) {
      List<String> ids = catalogue.kinds().stream().map(Catalogue.Kind::id).toList();
      Argument near = new Argument.Choices(Nearest.of(kind, ids).stream().toList());
      row.complain(RuleTrouble.KIND_UNKNOWN, "kinds", new Argument.Text(kind), near);
    }
  }

  /** By which words owners name each kind of complaint. */
  static WordList words(Fields fields) {
    SortedMap<Reported.Kind, List<String>> phrases = new TreeMap<>();
    for (Fields row : fields.rows("kinds")) {
      Reported.Kind kind = row.wantedChoice("kind", Reported.Kind.class);
      wanted(row, "phrases");
      List<String> list = row.texts("phrases").stream().map(CausesReader::plain).toList();
      if (row.sound() && phrases.put(kind, list) != null) {
        row.complain(RuleTrouble.ROW_TWICE, "kind", new Argument.Text(Section.word(kind)));
      }
    }
    wanted(fields, "kinds");
    Set<String> denying = new java.util.TreeSet<>();
    fields.texts("denying").forEach(word -> denying.add(plain(word)));
    return new WordList(fields.wantedWords("language"), phrases, List.copyOf(denying));
  }

  private static String plain(String words) {
    return words.strip().toLowerCase(Locale.ROOT).replace('’', '\'');
  }
}
