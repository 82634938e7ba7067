package daylight.line.course;

import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import daylight.line.counter.Track;
import daylight.line.counter.Tracks;
import daylight.line.measure.Reading;
import java.util.Comparator;
import java.util.List;

/**
 * A book with its entries by identity, so that the order in which they were written changes no bit
 * of the result, and with the counter readings that footage gives to locates that have a time only.
 * Landmarks keep their order, which fixes the grid, and visits theirs, which is time.
 */
final class Ordered {
  private Ordered() {}

  static FieldBook of(FieldBook book, Tracks tracks) {
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
        book.id(),
        book.units(),
        ordered,
        book.visits().stream().map(visit -> visit(visit, tracks)).toList());
  }

  private static Visit visit(Visit visit, Tracks tracks) {
    return new Visit(
        visit.id(),
        visit.date(),
        visit.crew(),
        visit.complaint(),
        visit.kit(),
        sorted(visit.passes()).stream().map(Ordered::pass).toList(),
        sorted(visit.locates()).stream().map(locate -> at(locate, tracks)).toList(),
        sorted(visit.exposures()),
        sorted(visit.ties()),
        sorted(visit.levels()),
        sorted(visit.tests()),
        sorted(visit.works()),
        visit.papers());
  }

  /** A locate that has a time only, at the reading at which the camera rested then. */
  private static Locate at(Locate locate, Tracks tracks) {
    Track.Between counter = tracks.located().get(locate.id());
    if (locate.cable() != null || counter == null) {
      return locate;
    }
    return new Locate(
        locate.id(),
        locate.pass(),
        new Reading(counter.value(), counter.sd(), ""),
        locate.moving(),
        locate.depth(),
        locate.receiverHeight(),
        locate.surface(),
        locate.cover(),
        locate.signal(),
        locate.lifts(),
        locate.offOn(),
        locate.time(),
        locate.remark(),
        locate.nulls());
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
