package daylight.line.course;

import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import java.util.Comparator;
import java.util.List;

/**
 * A book with its entries by identity, so that the order in which they were written changes no bit
 * of the result. Landmarks keep their order, which fixes the grid, and visits theirs, which is
 * time.
 */
final class Ordered {
  private Ordered() {}

  static FieldBook of(FieldBook book) {
    Site site = book.site();
    Site ordered =
        new Site(
            site.id(),
            site.name(),
            site.address(),
            site.zone(),
            site.invented(),
            site.landmarks(),
            sorted(site.boundaries()),
            sorted(site.nodes()),
            sorted(site.reaches()),
            site.surroundings());
    return new FieldBook(
        book.id(), book.units(), ordered, book.visits().stream().map(Ordered::visit).toList());
  }

  private static Visit visit(Visit visit) {
    return new Visit(
        visit.id(),
        visit.date(),
        visit.crew(),
        visit.complaint(),
        visit.kit(),
        sorted(visit.passes()).stream().map(Ordered::pass).toList(),
        sorted(visit.locates()),
        sorted(visit.exposures()),
        sorted(visit.ties()),
        sorted(visit.levels()),
        sorted(visit.tests()),
        sorted(visit.works()),
        visit.papers());
  }

  private static Pass pass(Pass pass) {
    return new Pass(
        pass.id(),
        pass.entry(),
        pass.walk(),
        pass.zero(),
        pass.head(),
        pass.end(),
        pass.sight().stream()
            .sorted(Comparator.comparingDouble((Pass.Sight s) -> s.from().value()))
            .toList(),
        sorted(pass.findings()),
        sorted(pass.bends()),
        sorted(pass.counterChecks()),
        sorted(pass.resets()),
        pass.anchors(),
        pass.corrections(),
        pass.after(),
        pass.start(),
        pass.remark());
  }

  private static <T extends Entry> List<T> sorted(List<T> entries) {
    return entries.stream().sorted(Comparator.comparing(Entry::id)).toList();
  }
}
