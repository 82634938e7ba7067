package daylight.line.book;

import java.util.List;

/**
 * Asks whether a book makes sense: labels that name something, a tree without loops, lengths that
 * can be. Finds every fault and refuses nothing.
 */
public final class BookCheck {
  private BookCheck() {}

  /** Every fault of a book, in the order of the book. */
  public static List<Fault> faults(FieldBook book, Catalogue catalogue) {
    FaultList faults = new FaultList();
    Names names = Names.of(book);
    new LabelCheck(faults).check(book);
    new SiteCheck(faults, names).check(book.site());
    PassCheck passes = new PassCheck(faults, names, book.site(), catalogue);
    SpotCheck spots = new SpotCheck(faults, names);
    VisitCheck visits = new VisitCheck(faults, names, book.site().surroundings());
    visits.checkOrder(book.visits());
    for (Visit visit : book.visits()) {
      visit.passes().forEach(passes::check);
      spots.check(visit);
      visits.check(visit);
    }
    return faults.all();
  }
}
