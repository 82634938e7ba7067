package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.BookFault;
import daylight.line.book.Catalogue;
import daylight.line.condition.Applies;
import daylight.line.condition.CodeRow;
import daylight.line.condition.CodeTable;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads a company's codes row by row. */
final class CodesReader {
  private static final Section ROW =
      Section.named("code-row")
          .words("code", "kinds", "word", "is", "quantity", "from", "below", "name");

  static final Section CODES = Section.named("codes").words("title").rows("rows", ROW);

  private final Catalogue catalogue;
  private final List<Placed> rows = new ArrayList<>();

  private CodesReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** A row and the line it stands in. */
  private record Placed(CodeRow row, int line) {}

  /**
   * The table; null where something in it is wrong.
   *
   * @param name of the file, which is the title of a table without one
   */
  static @Nullable CodeTable read(Fields fields, Catalogue catalogue, String name) {
    String title = fields.words("title", name);
    CodesReader reader = new CodesReader(catalogue);
    fields.rows("rows").forEach(row -> reader.take(row, fields));
    if (reader.rows.isEmpty() && fields.sound()) {
      fields.complain(FormTrouble.MISSING, "rows", new Argument.Text("code"));
    }
    return fields.sound()
        ? new CodeTable(title, true, reader.rows.stream().map(Placed::row).toList())
        : null;
  }

  private void take(Fields fields, Fields table) {
    String code = fields.wantedWords("code");
    List<Catalogue.Kind> kinds = kinds(fields);
    Applies applies = applies(fields, kinds);
    CodeRow.Range range = range(fields, kinds);
    String name = fields.words("name");
    for (Placed earlier : rows) {
      if (fields.has("code") && earlier.row().code().equals(code)) {
        fields.complain(
            CodeTrouble.CODE_TWICE,
            "code",
            new Argument.Text(code),
            new Argument.Number(earlier.line()));
      }
    }
    if (!fields.sound()) {
      table.spoil();
    }
    List<String> ids = kinds.stream().map(Catalogue.Kind::id).toList();
    CodeRow row = new CodeRow(code, ids, applies, range, name);
    if (fields.sound()) {
      reached(fields, row, table);
    }
    rows.add(new Placed(row, fields.place().line()));
  }

  /** Complains of a row all of whose findings earlier rows have. */
  private void reached(Fields fields, CodeRow row, Fields table) {
    int before = 0;
    for (String kind : row.kinds()) {
      int line =
          rows.stream()
              .filter(one -> one.row().kinds().contains(kind) && one.row().covers(row))
              .mapToInt(Placed::line)
              .findFirst()
              .orElse(0);
      if (line == 0) {
        return;
      }
      before = line;
    }
    fields.complain(
        CodeTrouble.NEVER_REACHED,
        "kinds",
        new Argument.Text(row.code()),
        new Argument.Number(before));
    table.spoil();
  }

  private List<Catalogue.Kind> kinds(Fields fields) {
    List<Catalogue.Kind> kinds = new ArrayList<>();
    List<String> known = catalogue.kinds().stream().map(Catalogue.Kind::id).toList();
    for (String id : split(fields.has("kinds") ? fields.wantedWords("kinds") : "", "\\s+")) {
      Catalogue.Kind kind = catalogue.find(id).orElse(null);
      if (kind == null) {
        Argument near = new Argument.Choices(Nearest.of(id, known).stream().toList());
        fields.complain(GradeTrouble.KIND_UNKNOWN, "kinds", new Argument.Text(id), near);
      } else {
        kinds.add(kind);
      }
    }
    if (!fields.has("kinds")) {
      fields.wantedWords("kinds");
    }
    return kinds;
  }

  private static List<String> split(String text, String by) {
    return text.isBlank() ? List.of() : List.of(text.strip().split(by));
  }

  private static Applies applies(Fields fields, List<Catalogue.Kind> kinds) {
    String word = fields.words("word");
    String texts = fields.words("is");
    if ((word == null) != (texts == null)) {
      String lacking = word == null ? "word" : "is";
      fields.complain(FormTrouble.MISSING, lacking, new Argument.Text(lacking));
    }
    if (word == null || texts == null) {
      return Applies.ALWAYS;
    }
    kinds.stream()
        .filter(kind -> !kind.words().contains(word))
        .forEach(kind -> notOfKind(fields, "word", word, kind.words()));
    List<String> is =
        split(texts, "\\|").stream().map(text -> text.strip().toLowerCase(Locale.ROOT)).toList();
    return new Applies(word, is, null, null);
  }

  private static void notOfKind(Fields fields, String key, String name, Collection<String> has) {
    Argument known = new Argument.Choices(List.copyOf(has));
    fields.complain(GradeTrouble.NOT_OF_KIND, key, new Argument.Text(name), known);
  }

  private static CodeRow.@Nullable Range range(Fields fields, List<Catalogue.Kind> kinds) {
    String quantity = fields.words("quantity");
    if (quantity == null) {
      for (String end : List.of("from", "below")) {
        if (fields.has(end)) {
          fields.complain(FormTrouble.MISSING, "quantity", new Argument.Text("quantity"));
        }
      }
      return null;
    }
    Dimension dimension = null;
    for (Catalogue.Kind kind : kinds) {
      dimension = kind.quantities().get(quantity);
      if (dimension == null) {
        notOfKind(fields, "quantity", quantity, kind.quantities().keySet());
        return null;
      }
    }
    if (dimension == null) {
      return null;
    }
    Shape.Amount amount = new Shape.Amount(dimension, Bare.NONE);
    Reading from = fields.reading("from", amount);
    Reading below = fields.reading("below", amount);
    if (!fields.has("from") && !fields.has("below")) {
      fields.complain(FileTrouble.ONE_OF, "from", new Argument.Choices(List.of("from", "below")));
    }
    if (from != null && below != null && !(from.value() < below.value())) {
      fields.complain(
          BookFault.FROM_AFTER_TO,
          "below",
          new Argument.Quantity(dimension, from.value()),
          new Argument.Quantity(dimension, below.value()));
    }
    return new CodeRow.Range(
        quantity, from == null ? null : from.value(), below == null ? null : below.value());
  }
}
