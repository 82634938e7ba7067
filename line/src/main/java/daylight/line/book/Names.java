package daylight.line.book;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The labels of a book by what they name.
 *
 * @param points everything that has a place in plan: landmarks, nodes, locates, exposures and the
 *     points of service marks
 */
record Names(
    Set<String> points,
    Set<String> fixtures,
    Set<String> landmarks,
    Set<String> nodes,
    Set<String> reaches,
    Set<String> works,
    Set<String> media) {

  static Names of(FieldBook book) {
    Site site = book.site();
    Set<String> landmarks = labels(site.landmarks());
    Set<String> nodes = labels(site.nodes());
    Set<String> points = new TreeSet<>(landmarks);
    points.addAll(nodes);
    Set<String> works = new TreeSet<>();
    Set<String> media = new TreeSet<>();
    for (Visit visit : book.visits()) {
      points.addAll(labels(visit.locates()));
      points.addAll(labels(visit.exposures()));
      visit.papers().services().forEach(mark -> points.addAll(mark.points()));
      works.addAll(labels(visit.works()));
      media.addAll(labels(visit.papers().media()));
    }
    Set<String> fixtures = labels(site.surroundings().fixtures());
    return new Names(points, fixtures, landmarks, nodes, labels(site.reaches()), works, media);
  }

  /** Where a complaint may be: at a fixture, or at anything that has a place in plan. */
  Set<String> complainedOf() {
    Set<String> all = new TreeSet<>(points);
    all.addAll(fixtures);
    return all;
  }

  /** The labels of some entries. */
  static Set<String> labels(List<? extends Entry> entries) {
    Set<String> labels = new TreeSet<>();
    entries.forEach(entry -> labels.add(entry.label()));
    return labels;
  }
}
