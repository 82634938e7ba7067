package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Site;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import java.util.List;
import java.util.function.UnaryOperator;

/** Books made from other books by changing one thing. */
final class Reworked {
  private Reworked() {}

  static FieldBook visits(FieldBook book, UnaryOperator<Visit> by) {
    return new FieldBook(
        book.id(), book.units(), book.site(), book.visits().stream().map(by).toList());
  }

  static FieldBook passes(FieldBook book, UnaryOperator<Pass> by) {
    return visits(book, v -> with(v, v.passes().stream().map(by).toList(), v.locates(), v.ties()));
  }

  static FieldBook ties(FieldBook book, UnaryOperator<Tie> by) {
    return visits(book, v -> with(v, v.passes(), v.locates(), v.ties().stream().map(by).toList()));
  }

  static FieldBook site(FieldBook book, Site site) {
    return new FieldBook(book.id(), book.units(), site, book.visits());
  }

  static Visit with(Visit v, List<Pass> passes, List<Locate> locates, List<Tie> ties) {
    return new Visit(
        v.id(),
        v.date(),
        v.crew(),
        v.complaint(),
        v.kit(),
        passes,
        locates,
        v.exposures(),
        ties,
        v.levels(),
        v.tests(),
        v.works(),
        v.papers());
  }

  /** The same with other levels. */
  static FieldBook levels(FieldBook book, List<Level> levels) {
    return visits(
        book,
        v ->
            new Visit(
                v.id(),
                v.date(),
                v.crew(),
                v.complaint(),
                v.kit(),
                v.passes(),
                v.locates(),
                v.exposures(),
                v.ties(),
                levels,
                v.tests(),
                v.works(),
                v.papers()));
  }

  static Pass bends(Pass p, List<Bend> bends) {
    return new Pass(
        p.id(),
        p.entry(),
        p.walk(),
        p.zero(),
        p.head(),
        p.end(),
        p.sight(),
        p.findings(),
        bends,
        p.counterChecks(),
        p.resets(),
        p.anchors(),
        p.corrections(),
        p.after(),
        p.start(),
        p.remark());
  }

  /** Every list of the book in another order, but for landmarks, visits and walks. */
  static FieldBook shuffled(FieldBook book, SplitMix64 random) {
    Site s = book.site();
    Site site =
        new Site(
            s.id(),
            s.name(),
            s.address(),
            s.zone(),
            s.invented(),
            s.landmarks(),
            random.shuffled(s.boundaries()),
            random.shuffled(s.nodes()),
            random.shuffled(s.reaches()),
            s.surroundings());
    return visits(site(book, site), v -> shuffled(v, random));
  }

  private static Visit shuffled(Visit v, SplitMix64 random) {
    return new Visit(
        v.id(),
        v.date(),
        v.crew(),
        v.complaint(),
        v.kit(),
        random.shuffled(v.passes()).stream()
            .map(p -> bends(p, random.shuffled(p.bends())))
            .toList(),
        random.shuffled(v.locates()),
        random.shuffled(v.exposures()),
        random.shuffled(v.ties()),
        random.shuffled(v.levels()),
        v.tests(),
        v.works(),
        v.papers());
  }

  /** The property seen in a mirror along the wall: what was west of it is east. */
  static FieldBook mirrored(FieldBook book) {
    FieldBook ties =
        ties(
            book,
            tie ->
                switch (tie) {
                  case Tie.AlongOut t ->
                      new Tie.AlongOut(
                          t.id(),
                          t.point(),
                          t.zero(),
                          t.toward(),
                          t.along(),
                          Draft.metres(-t.out().value()));
                  case Tie.Side t -> new Tie.Side(t.id(), t.point(), t.from(), t.to(), !t.left());
                  default -> tie;
                });
    return passes(
        ties,
        p ->
            bends(
                p,
                p.bends().stream()
                    .map(b -> new Bend(b.id(), b.cable(), b.angle(), Flat.swapped(b.sense())))
                    .toList()));
  }

  /** The same with its landmarks in the opposite order, so that the grid starts at the other. */
  static FieldBook otherBase(FieldBook book) {
    Site s = book.site();
    List<Landmark> turned = s.landmarks().reversed();
    return site(
        book,
        new Site(
            s.id(),
            s.name(),
            s.address(),
            s.zone(),
            s.invented(),
            turned,
            s.boundaries(),
            s.nodes(),
            s.reaches(),
            s.surroundings()));
  }
}
