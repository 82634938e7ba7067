package daylight.line.book;

import daylight.line.measure.Argument;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * No two entries of one kind share a label, nor two points of whatever kind, nor any two entries an
 * identity.
 */
final class LabelCheck {
  private final FaultList faults;
  private final Map<UUID, Entry> identities = new HashMap<>();
  private final Map<String, Set<String>> taken = new HashMap<>();

  LabelCheck(FaultList faults) {
    this.faults = faults;
  }

  void check(FieldBook book) {
    check("book", List.of(book));
    Site site = book.site();
    check("site", List.of(site));
    check("point", site.landmarks());
    check("point", site.nodes());
    check("boundary", site.boundaries());
    check("reach", site.reaches());
    check("roof", site.surroundings().roofs());
    check("fixture", site.surroundings().fixtures());
    check("pump", site.surroundings().pumps());
    check("visit", book.visits());
    book.visits().forEach(this::check);
  }

  private void check(Visit visit) {
    check("pass", visit.passes());
    for (Pass pass : visit.passes()) {
      check("finding", pass.findings());
      check("bend", pass.bends());
      check("counter-check", pass.counterChecks());
      check("reset", pass.resets());
      check("anchor", pass.anchors());
      check("correction", pass.corrections());
    }
    check("point", visit.locates());
    check("point", visit.exposures());
    check("tie", visit.ties());
    check("level", visit.levels());
    check("test", visit.tests());
    check("work", visit.works());
    Papers papers = visit.papers();
    check("media", papers.media());
    check("consent", papers.consents());
    check("ticket", papers.tickets());
    check("service", papers.services());
    check("declined", papers.declined());
  }

  private void check(String kind, List<? extends Entry> entries) {
    Set<String> labels = taken.computeIfAbsent(kind, key -> new HashSet<>());
    for (Entry entry : entries) {
      boolean labelFree = labels.add(entry.label());
      if (!labelFree) {
        faults.add(BookFault.DUPLICATE_LABEL, entry, "label", new Argument.Label(entry.label()));
      }
      Entry earlier = identities.putIfAbsent(entry.id().uuid(), entry);
      // An identity derived from the label is told twice by the label alone.
      if (earlier != null && labelFree) {
        faults.add(BookFault.DUPLICATE_ID, entry, "id", new Argument.Label(earlier.label()));
      }
    }
  }
}
