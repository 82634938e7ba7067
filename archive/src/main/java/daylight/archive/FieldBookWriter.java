package daylight.archive;

import daylight.archive.form.TreeWriter;
import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Units;
import daylight.line.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Writes a field book as YAML that {@link FieldBookReader} reads back to an equal book: with every
 * identity, every value in the words it was written in, every measurement in plan in the list of
 * ties. Comments of a file that was read before do not survive.
 */
public final class FieldBookWriter {
  private FieldBookWriter() {}

  /** The version of the format that is written. */
  public static int version() {
    return Versions.newest();
  }

  /** The text of a book in the newest version of the format. */
  public static String write(FieldBook book) {
    return write(book, Bundled.catalogue());
  }

  /**
   * The text of a book.
   *
   * @param catalogue the one it is read with, which says what the sizes of findings are sizes of
   */
  public static String write(FieldBook book, Catalogue catalogue) {
    Units units = book.units();
    VisitWriter visits = new VisitWriter(units, catalogue);
    Sheet sheet =
        new Sheet(BookShape.BOOK, units)
            .words(Versions.KEY, Integer.toString(Versions.newest()))
            .id(book.id());
    if (!units.equals(Units.UNSTATED)) {
      sheet.part("units", units(units));
    }
    sheet.part("site", new SiteWriter(units).site(book.site()));
    return TreeWriter.write(sheet.rows("visits", book.visits(), visits::visit).tree());
  }

  private static Sheet units(Units units) {
    return new Sheet(BookShape.UNITS, units)
        .words("distance", symbol(units.distance()))
        .words("depth", symbol(units.depth()))
        .words("bore", symbol(units.bore()))
        .words("level", symbol(units.level()));
  }

  private static @Nullable String symbol(@Nullable Unit unit) {
    return unit == null ? null : unit.symbol();
  }
}
