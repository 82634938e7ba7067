package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.line.book.Catalogue;
import daylight.line.condition.Applies;
import daylight.line.condition.Aspect;
import daylight.line.condition.Cited;
import daylight.line.condition.Grade;
import daylight.line.condition.GradeRow;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.ImmediateRow;
import daylight.line.condition.Sized;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a table of grades row by row over the kinds of a catalogue. */
final class GradesReader {
  private final Catalogue catalogue;
  private final List<GradeRow> rows = new ArrayList<>();
  private final List<ImmediateRow> immediate = new ArrayList<>();

  private GradesReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  static GradeScheme read(Fields fields, Catalogue catalogue) {
    return new GradesReader(catalogue).read(fields);
  }

  private GradeScheme read(Fields fields) {
    String id = fields.wantedWords("id");
    String title = fields.wantedWords("title");
    String edition = fields.words("edition");
    GradeScheme.OnLimit onLimit = fields.wantedChoice("on-limit", GradeScheme.OnLimit.class);
    if (!fields.has("rows")) {
      fields.complain(FormTrouble.MISSING, "rows", new Argument.Text("rows"));
    }
    fields.rows("rows").forEach(this::grade);
    fields.rows("immediate").forEach(this::immediate);
    return new GradeScheme(
        id,
        edition == null ? title : title + " (" + edition + ")",
        fields.words("adapted-for"),
        onLimit,
        rows,
        immediate,
        fields.words("note"));
  }

  private void grade(Fields row) {
    GradeRowReader reader = new GradeRowReader(row, catalogue);
    Aspect aspect = row.wantedChoice("aspect", Aspect.class);
    Applies applies = reader.applies();
    GradeRow.By by = by(row, reader);
    Cited cited = reader.cited();
    if (by == null || applies == null || !row.sound()) {
      return;
    }
    GradeRow read = new GradeRow(reader.kind(), aspect, applies, by, cited);
    for (GradeRow earlier : rows) {
      if (earlier.kind().equals(read.kind()) && earlier.aspect() == aspect) {
        reader.apart(earlier.applies(), applies);
      }
    }
    rows.add(read);
  }

  private static GradeRow.@Nullable By by(Fields row, GradeRowReader reader) {
    boolean fixed = row.has("class");
    boolean sized = row.has("quantity") || row.has("from") || row.has("below");
    if (fixed == sized) {
      row.complain(
          FileTrouble.ONE_OF,
          fixed ? "class" : "kind",
          new Argument.Choices(List.of("class", "quantity, from, below")));
      return null;
    }
    if (fixed) {
      reader.noShare();
      return new GradeRow.By.Always(row.wantedChoice("class", Grade.class));
    }
    Sized size = reader.sized();
    Grade below = row.wantedChoice("below", Grade.class);
    List<GradeRow.Limit> limits = size == null ? List.of() : limits(row, reader, size, below);
    if (size == null && !row.has("from")) {
      row.complain(FormTrouble.MISSING, "from", new Argument.Text("from"));
    }
    return size == null || limits.isEmpty() || !row.sound()
        ? null
        : new GradeRow.By.Limits(size, limits, below);
  }

  private static List<GradeRow.Limit> limits(
      Fields row, GradeRowReader reader, Sized size, Grade below) {
    List<GradeRow.Limit> limits = new ArrayList<>();
    Fields part = row.part("from");
    if (part == null) {
      if (!row.has("from")) {
        row.complain(FormTrouble.MISSING, "from", new Argument.Text("from"));
      }
      return limits;
    }
    for (Grade grade : GradeShape.BEGINNING) {
      String key = Section.word(grade);
      Reading limit = reader.limit(part, key, size);
      if (limit != null) {
        if (!limits.isEmpty() && !(limit.value() < limits.getLast().at().value())) {
          part.complain(
              GradeTrouble.NOT_FALLING,
              key,
              new Argument.Text(limit.written()),
              new Argument.Text(limits.getLast().at().written()));
        }
        limits.add(new GradeRow.Limit(grade, limit));
      }
    }
    if (limits.isEmpty() && part.sound()) {
      row.complain(FormTrouble.MISSING, "from", new Argument.Text("from"));
    }
    if (!part.sound()) {
      row.spoil();
    }
    if (row.has("below") && !limits.isEmpty() && !limits.getLast().grade().worseThan(below)) {
      Argument word = new Argument.Text(Section.word(below));
      row.complain(GradeTrouble.BELOW_NOT_MILDER, "below", word);
    }
    return limits;
  }

  private void immediate(Fields row) {
    GradeRowReader reader = new GradeRowReader(row, catalogue);
    Applies applies = reader.applies();
    boolean sized = row.has("quantity") || row.has("over");
    Sized size = sized ? reader.sized() : null;
    Reading limit = size == null ? null : reader.limit(row, "over", size);
    if (!sized) {
      reader.noShare();
    }
    if (sized && !row.has("over")) {
      row.complain(FormTrouble.MISSING, "over", new Argument.Text("over"));
    }
    Cited cited = reader.cited();
    if (applies == null || !row.sound()) {
      return;
    }
    ImmediateRow.Over over =
        size == null || limit == null ? null : new ImmediateRow.Over(size, limit);
    ImmediateRow read = new ImmediateRow(reader.kind(), applies, over, cited);
    for (ImmediateRow earlier : immediate) {
      if (earlier.kind().equals(read.kind()) && sameSize(earlier, read)) {
        reader.apart(earlier.applies(), applies);
      }
    }
    immediate.add(read);
  }

  /** Of two rows that ask for different sizes either may hold. */
  private static boolean sameSize(ImmediateRow one, ImmediateRow other) {
    ImmediateRow.Over a = one.over();
    ImmediateRow.Over b = other.over();
    if (a == null || b == null) {
      boolean neither = a == null && b == null;
      return neither;
    }
    return a.sized().quantity().equals(b.sized().quantity());
  }
}
