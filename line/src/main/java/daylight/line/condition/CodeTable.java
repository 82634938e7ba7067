package daylight.line.condition;

import daylight.line.book.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How somebody else calls what is found: the codes of a company, over the same catalogue.
 *
 * <p>The first row that what was noted of a finding fits gives its code; a row that asks for what
 * nobody noted is passed over. Whether a code is right by any manual is for whoever wrote the table
 * to know.
 *
 * @param title what the codes are called
 * @param checked whether whoever wrote the table vouches for it
 * @param rows in the order in which they are tried
 */
public record CodeTable(String title, boolean checked, List<CodeRow> rows) {
  /** No codes. */
  public static final CodeTable NONE = new CodeTable("", true, List.of());

  public CodeTable {
    rows = List.copyOf(rows);
  }

  /**
   * The main codes of EN 13508-2:2003+A1:2011 that the catalogue holds, one a kind: from memory,
   * not checked against a bought copy.
   */
  public static CodeTable letters(Catalogue catalogue) {
    List<CodeRow> rows = new ArrayList<>();
    for (Catalogue.Kind kind : catalogue.kinds()) {
      String letters = kind.letters();
      if (letters != null) {
        rows.add(new CodeRow(letters, List.of(kind.id()), Applies.ALWAYS, null, null));
      }
    }
    return new CodeTable("EN 13508-2:2003+A1:2011", false, rows);
  }

  /** Whether there is none. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** What a finding is called. */
  public Optional<CodeRow> find(Seen seen) {
    return rows.stream().filter(row -> row.fits(seen)).findFirst();
  }

  /** Whether a finding has no code only because something of it was not noted. */
  public boolean wantsMore(Seen seen) {
    return find(seen).isEmpty() && rows.stream().anyMatch(row -> row.mightFit(seen));
  }
}
