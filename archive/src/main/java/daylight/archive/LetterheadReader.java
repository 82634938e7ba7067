package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Catalogue;
import daylight.line.book.Letterhead;
import daylight.line.measure.Argument;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads whose report it is. */
final class LetterheadReader {
  static final String KEY = "daylight-letterhead";

  /**
   * What a text and the paper behind it must differ by to be read (WCAG 2.2, success criterion
   * 1.4.3).
   */
  private static final double CONTRAST = 4.5;

  /** More than any work on a drain costs: whoever writes that has slipped. */
  private static final double MOST = 1e9;

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");

  private static final Section PRICE =
      Section.named("price")
          .words("kind", "what")
          .plain("from", Shape.Kind.NUMBER)
          .plain("to", Shape.Kind.NUMBER);

  static final Section LETTERHEAD =
      Section.named("letterhead")
          .words(KEY, "name", "logo", "colour", "money")
          .texts("lines")
          .texts("licences")
          .texts("terms")
          .texts("warranty")
          .rows("prices", PRICE);

  private LetterheadReader() {}

  /** The letterhead; null where something in it is wrong. */
  static @Nullable Letterhead read(Fields fields, Catalogue catalogue) {
    String logo = fields.words("logo");
    if (logo != null && MediaFiles.leadsOut(logo)) {
      fields.complain(LetterTrouble.LOGO_LEADS_OUT, "logo", new Argument.Text(logo));
    }
    String colour = fields.words("colour");
    if (colour != null) {
      check(fields, colour);
    }
    List<Letterhead.Price> prices = new ArrayList<>();
    Set<String> priced = new HashSet<>();
    fields.rows("prices").forEach(row -> price(row, catalogue, priced, prices, fields));
    String money = fields.words("money");
    if (fields.has("prices") && money == null) {
      fields.complain(FormTrouble.MISSING, "prices", new Argument.Text("money"));
    }
    Letterhead read =
        new Letterhead(
            fields.words("name"),
            fields.texts("lines"),
            fields.texts("licences"),
            logo,
            colour == null ? null : colour.toLowerCase(Locale.ROOT),
            fields.texts("terms"),
            fields.texts("warranty"),
            money == null ? "" : money,
            prices);
    return fields.sound() ? read : null;
  }

  private static void price(
      Fields row,
      Catalogue catalogue,
      Set<String> priced,
      List<Letterhead.Price> prices,
      Fields fields) {
    String kind = row.wantedWords("kind");
    if (row.has("kind") && catalogue.find(kind).isEmpty()) {
      row.complain(LetterTrouble.KIND_UNKNOWN, "kind", new Argument.Text(kind));
    } else if (row.has("kind") && !priced.add(kind)) {
      row.complain(LetterTrouble.KIND_TWICE, "kind", new Argument.Text(kind));
    }
    String what = row.wantedWords("what");
    Double from = wanted(row, "from");
    Double to = wanted(row, "to");
    if (from != null && to != null && to < from) {
      row.complain(LetterTrouble.LESS_THAN_LEAST, "to", new Argument.Number(to), number(from));
    }
    if (!row.sound()) {
      fields.spoil();
    } else if (from != null && to != null) {
      prices.add(new Letterhead.Price(kind, what, from, to));
    }
  }

  private static Argument number(double value) {
    return new Argument.Number(value);
  }

  private static @Nullable Double wanted(Fields row, String key) {
    if (!row.has(key)) {
      row.wantedWords(key);
      return null;
    }
    return row.number(key, 0, MOST);
  }

  private static void check(Fields fields, String colour) {
    if (!COLOUR.matcher(colour).matches()) {
      fields.complain(LetterTrouble.NOT_A_COLOUR, "colour", new Argument.Text(colour));
    } else if (contrast(Integer.parseInt(colour.substring(1), 16)) < CONTRAST) {
      fields.complain(LetterTrouble.TOO_PALE, "colour", new Argument.Text(colour));
    }
  }

  /** Against white (WCAG 2.2, contrast ratio and relative luminance). */
  private static double contrast(int rgb) {
    double luminance =
        0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double share = (channel & 0xff) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
