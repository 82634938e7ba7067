package daylight.line.course;

import static daylight.line.course.Known.known;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Kit;
import daylight.line.book.Landmark;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.measure.Reading;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

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

  /** The same with every spot dropped on a sketch and no landmark. */
  static FieldBook sketched(FieldBook book, SortedMap<String, PlanPoint> spots) {
    List<Tie> ties = new ArrayList<>();
    spots.forEach(
        (label, at) ->
            ties.add(
                new Tie.Sketched(
                    Draft.id("tie", "S" + label),
                    label,
                    Draft.metres(at.x()).withSd(0.1),
                    Draft.metres(at.y()).withSd(0.1))));
    Site s = book.site();
    Site bare =
        new Site(
            s.id(),
            s.name(),
            s.address(),
            s.zone(),
            s.invented(),
            List.of(),
            List.of(),
            s.nodes(),
            s.reaches(),
            s.surroundings());
    return visits(site(book, bare), v -> with(v, v.passes(), v.locates(), ties));
  }

  /**
   * The same with its one reach of a stated length and a camera whose cable is pulled back with the
   * transmitter right at the lens, from the one end or with every distance counted from the other.
   */
  static FieldBook taped(FieldBook book, double length, boolean back) {
    Site s = book.site();
    Reach r = s.reaches().getFirst();
    Reach stated =
        new Reach(
            r.id(),
            r.line(),
            r.from(),
            r.to(),
            r.water(),
            r.use(),
            r.material(),
            r.bore(),
            Draft.metres(length).withSd(1e-6));
    Site taped =
        new Site(
            s.id(),
            s.name(),
            s.address(),
            s.zone(),
            s.invented(),
            s.landmarks(),
            s.boundaries(),
            s.nodes(),
            List.of(stated),
            s.surroundings());
    Reading none = new Reading(0, 1e-6, "0");
    return visits(
        site(book, taped),
        v ->
            new Visit(
                v.id(),
                v.date(),
                v.crew(),
                v.complaint(),
                new Kit(null, none, none, null, null),
                v.passes().stream().map(p -> turned(p, length, back)).toList(),
                v.locates().stream().map(l -> turned(l, length, back)).toList(),
                v.exposures(),
                v.ties(),
                v.levels(),
                v.tests(),
                v.works(),
                v.papers()));
  }

  private static Pass turned(Pass p, double length, boolean back) {
    boolean head = p.entry().equals("N1") != back;
    Pass other =
        new Pass(
            p.id(),
            head ? "N1" : "N2",
            p.walk(),
            p.zero(),
            p.head(),
            null,
            p.sight(),
            p.findings(),
            p.bends(),
            p.counterChecks(),
            p.resets(),
            p.anchors(),
            p.corrections(),
            p.after(),
            p.start(),
            p.remark());
    return bends(
        other,
        p.bends().stream()
            .map(
                b ->
                    new Bend(
                        b.id(),
                        from(b.cable(), length, back),
                        b.angle(),
                        back ? Flat.swapped(b.sense()) : b.sense()))
            .toList());
  }

  private static Locate turned(Locate l, double length, boolean back) {
    return with(l, from(known(l.cable()), length, back), Finding.Moving.PULLING, l.depth());
  }

  private static Reading from(Reading cable, double length, boolean back) {
    return back ? Draft.metres(length - cable.value()) : cable;
  }

  private static Locate with(
      Locate l, Reading cable, Finding.Moving moving, @Nullable Reading depth) {
    return new Locate(
        l.id(),
        l.pass(),
        cable,
        moving,
        depth,
        l.receiverHeight(),
        l.surface(),
        l.cover(),
        l.signal(),
        l.lifts(),
        l.offOn(),
        l.time(),
        l.remark());
  }

  /** The same with the depth at one locate told with little faith, but no other weight changed. */
  static FieldBook withVagueDepth(FieldBook book, String locate) {
    return visits(
        book,
        v ->
            with(
                v,
                v.passes(),
                v.locates().stream()
                    .map(
                        l ->
                            l.label().equals(locate)
                                ? with(l, known(l.cable()), l.moving(), known(l.depth()).withSd(2))
                                : l)
                    .toList(),
                v.ties()));
  }

  /** The same with nobody having tied one spot. */
  static FieldBook withoutTies(FieldBook book, String point) {
    return visits(
        book,
        v ->
            with(
                v,
                v.passes(),
                v.locates(),
                v.ties().stream().filter(tie -> !ties(tie, point)).toList()));
  }

  private static boolean ties(Tie tie, String point) {
    return switch (tie) {
      case Tie.Tape t -> t.to().equals(point);
      case Tie.AlongOut t -> t.point().equals(point);
      case Tie.Side t -> t.point().equals(point);
      default -> false;
    };
  }

  /** The same with every bend seen but its angle judged twice as badly. */
  static FieldBook withVagueBends(FieldBook book) {
    return passes(
        book,
        p ->
            bends(
                p,
                p.bends().stream()
                    .map(
                        b ->
                            new Bend(
                                b.id(),
                                b.cable(),
                                b.angle().withSd(2 * TestPriors.degrees(5)),
                                b.sense()))
                    .toList()));
  }
}
