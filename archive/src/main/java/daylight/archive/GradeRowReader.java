package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Shape;
import daylight.line.book.BookFault;
import daylight.line.book.Catalogue;
import daylight.line.condition.Applies;
import daylight.line.condition.Cited;
import daylight.line.condition.ShareOf;
import daylight.line.condition.Sized;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads what the rows of a table of grades have in common. */
final class GradeRowReader {
  private final Fields row;
  private final String id;
  private final Catalogue.@Nullable Kind kind;

  GradeRowReader(Fields row, Catalogue catalogue) {
    this.row = row;
    this.id = row.wantedWords("kind");
    Catalogue.Kind found = catalogue.find(id).orElse(null);
    this.kind = found;
    if (row.has("kind") && found == null) {
      List<String> ids = catalogue.kinds().stream().map(Catalogue.Kind::id).toList();
      Argument near = new Argument.Choices(Nearest.of(id, ids).stream().toList());
      row.complain(GradeTrouble.KIND_UNKNOWN, "kind", new Argument.Text(id), near);
    }
    if (found != null && found.hazard() == Catalogue.Hazard.STOP) {
      row.complain(GradeTrouble.KIND_OUTRANKS, "kind", new Argument.Text(id));
    }
  }

  String kind() {
    return id;
  }

  Cited cited() {
    return new Cited(
        row.wantedWords("clause"),
        row.wantedWords("source"),
        row.wantedChoice("mark", Mark.class),
        row.words("note"));
  }

  /** Which findings the row is for; null where that is not said well. */
  @Nullable Applies applies() {
    String word = row.words("word");
    List<String> is =
        row.texts("is").stream().map(text -> text.strip().toLowerCase(Locale.ROOT)).toList();
    Catalogue.Kind known = kind;
    if (word != null && known != null && !known.words().contains(word)) {
      notOfKind("word", word, known.words());
    }
    String without = row.words("without");
    if (without != null && known != null && !known.words().contains(without)) {
      notOfKind("without", without, known.words());
    }
    boolean empty = row.has("is") && is.isEmpty() && row.sound();
    if (row.has("word") != row.has("is") || empty) {
      String lacking = row.has("word") ? "is" : "word";
      row.complain(FormTrouble.MISSING, lacking, new Argument.Text(lacking));
    }
    Applies.Bores bores = bores();
    return row.sound() ? new Applies(word, is, without, bores) : null;
  }

  private Applies.@Nullable Bores bores() {
    Reading from = bore("bore-from");
    Reading to = bore("bore-to");
    Reading below = bore("bore-below");
    if (to != null && below != null) {
      row.complain(
          FileTrouble.ONE_OF, "bore-below", new Argument.Choices(List.of("bore-to", "bore-below")));
    }
    Reading end = to == null ? below : to;
    boolean rises =
        from == null
            || end == null
            || from.value() < end.value()
            || (below == null && from.value() <= end.value());
    if (from != null && end != null && !rises) {
      row.complain(
          BookFault.FROM_AFTER_TO,
          to == null ? "bore-below" : "bore-to",
          new Argument.Bore(from.value()),
          new Argument.Bore(end.value()));
    }
    boolean none = from == null && end == null;
    return none || !row.sound()
        ? null
        : new Applies.Bores(
            from == null ? 0 : from.value(),
            end == null ? Double.POSITIVE_INFINITY : end.value(),
            below == null);
  }

  private @Nullable Reading bore(String key) {
    return positive(row, key, row.reading(key));
  }

  /** The size that decides; null where it is not said well. */
  @Nullable Sized sized() {
    String quantity = row.wantedWords("quantity");
    ShareOf of = row.choice("of", ShareOf.class);
    String or = row.words("or");
    Catalogue.Kind known = kind;
    if (known == null || !row.has("quantity")) {
      return null;
    }
    Dimension dimension = known.quantities().get(quantity);
    if (dimension == null) {
      notOfKind("quantity", quantity, known.quantities().keySet());
      return null;
    }
    if (dimension == Dimension.SHARE && !row.has("of")) {
      row.complain(FormTrouble.MISSING, "of", new Argument.Text("of"));
    }
    if (dimension != Dimension.SHARE) {
      noShare();
    } else if (or != null) {
      height(or, known);
    }
    return row.sound() ? new Sized(quantity, dimension, of, or) : null;
  }

  /** Complains of what only a share can have. */
  void noShare() {
    for (String key : List.of("of", "or")) {
      if (row.has(key)) {
        row.unknown(key, Set.of());
      }
    }
  }

  private void height(String or, Catalogue.Kind known) {
    Dimension height = known.quantities().get(or);
    if (height == null) {
      notOfKind("or", or, known.quantities().keySet());
    } else if (height != Dimension.LENGTH) {
      row.complain(GradeTrouble.NOT_A_HEIGHT, "or", new Argument.Text(or));
    }
  }

  private void notOfKind(String key, String name, Collection<String> known) {
    Argument has = new Argument.Choices(List.copyOf(known));
    row.complain(GradeTrouble.NOT_OF_KIND, key, new Argument.Text(name), has);
  }

  /** A limit of a size, which must be above nothing; null where there is none or it is wrong. */
  @Nullable Reading limit(Fields part, String key, Sized size) {
    return positive(part, key, part.reading(key, new Shape.Amount(size.dimension(), Bare.NONE)));
  }

  private static @Nullable Reading positive(Fields part, String key, @Nullable Reading reading) {
    if (reading != null && !(reading.value() > 0)) {
      part.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
      return null;
    }
    return reading;
  }

  /** Complains where an earlier row is for some of the findings of this one. */
  void apart(Applies earlier, Applies applies) {
    if (earlier.equals(applies)) {
      row.complain(GradeTrouble.ROW_TWICE, "kind", new Argument.Text(id));
    } else if (earlier.overlaps(applies)) {
      row.complain(GradeTrouble.ROWS_OVERLAP, "kind", new Argument.Text(id));
    }
  }
}
