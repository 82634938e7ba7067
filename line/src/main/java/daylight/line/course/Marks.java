package daylight.line.course;

import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import daylight.line.sonde.LocateReading;
import daylight.line.sonde.Sonde;
import daylight.line.survey.LevelAdjusted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gathers what is known from above of the places of one tree. */
final class Marks {
  private final FieldBook book;
  private final Layout layout;
  private final Lengths lengths;
  private final Walks walks;
  private final Priors priors;
  private final @Nullable LevelAdjusted levels;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Statement> suspicions = new ArrayList<>();

  private Marks(
      FieldBook book,
      Layout layout,
      Lengths lengths,
      Walks walks,
      Priors priors,
      @Nullable LevelAdjusted levels) {
    this.book = book;
    this.layout = layout;
    this.lengths = lengths;
    this.walks = walks;
    this.priors = priors;
    this.levels = levels;
  }

  /** What is known from above, and the traps that locates look like. */
  record Found(List<Mark> marks, List<Statement> suspicions) {}

  /** The marks of a tree by label. */
  static Found gather(
      FieldBook book,
      Layout layout,
      Lengths lengths,
      Walks walks,
      Priors priors,
      @Nullable LevelAdjusted levels) {
    Marks gatherer = new Marks(book, layout, lengths, walks, priors, levels);
    for (Visit visit : book.visits()) {
      visit.locates().forEach(locate -> gatherer.take(visit, locate));
      visit.exposures().forEach(exposure -> gatherer.take(visit, exposure));
    }
    gatherer.takeNodes();
    gatherer.nameShared();
    gatherer.marks.sort((a, b) -> a.id().compareTo(b.id()));
    return new Found(List.copyOf(gatherer.marks), List.copyOf(gatherer.suspicions));
  }

  /** What was found from above on a walk of this line at no known counter reading. */
  static List<Statement> withoutCable(FieldBook book, Walks walks) {
    List<Statement> doubts = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Locate locate : visit.locates()) {
        if (locate.cable() == null && walk(walks, visit, locate.pass()) != null) {
          doubts.add(Statement.of(CourseKey.NO_CABLE, new Argument.Label(locate.label())));
        }
      }
      for (Exposure exposure : visit.exposures()) {
        if (exposure.cable() == null && walk(walks, visit, exposure.pass()) != null) {
          doubts.add(Statement.of(CourseKey.NO_CABLE, new Argument.Label(exposure.label())));
        }
      }
    }
    return doubts;
  }

  /** Whether the reach that a reading falls on still lies as it did when it was taken. */
  private boolean holds(Visit visit, Walk walk, Reading cable) {
    int limb =
        walk.at(new double[layout.shared()], cable.value(), Finding.Moving.PUSHING, -1).limb();
    return Altered.holds(book, visit, reach(limb));
  }

  private String reach(int limb) {
    return layout.tree().limbs().get(limb).reach().label();
  }

  /** Lays out the unknowns that several marks share: surfaces, and the instruments of a visit. */
  private void nameShared() {
    if (!layout.heights()) {
      return;
    }
    if (marks.stream().allMatch(mark -> mark.surface() == null)) {
      layout.named(Surfaces.plane(""));
    }
    for (Mark mark : marks) {
      String surface = mark.surface();
      if (surface != null) {
        layout.named(Surfaces.plane(surface));
      }
      if (mark.depth() instanceof Mark.DepthRead.ByReceiver
          || mark.silent() != null
          || mark.vote() != null) {
        layout.named("receiver/" + mark.visit());
        layout.named("above/" + mark.visit());
      }
    }
  }

  private void take(Visit visit, Locate locate) {
    Walk walk = walk(walks, visit, locate.pass());
    Reading cable = locate.cable();
    if (walk == null || cable == null || !holds(visit, walk, cable)) {
      return;
    }
    LocateReading read = Sonde.read(locate, priors, material(walk, cable));
    suspicions.addAll(read.doubts());
    marks.add(
        new Mark(
            locate.id(),
            Source.Sort.LOCATE,
            visit.label(),
            new Mark.Position.ByCable(
                walk, cable, locate.moving(), layout.named("behind/" + visit.label())),
            locate.surface(),
            receiver(locate),
            layout.heights() ? silent(read) : null,
            layout.heights() ? read.vote() : null,
            layout.heights()));
  }

  private Material material(Walk walk, Reading cable) {
    int limb =
        walk.at(new double[layout.shared()], cable.value(), Finding.Moving.PUSHING, -1).limb();
    return layout.tree().limbs().get(limb).reach().material();
  }

  /** The depth that the silent places tell; upright ones only where they are all there is. */
  private static @Nullable Measured silent(LocateReading read) {
    return read.depths().stream()
        .filter(by -> by.way() != LocateReading.Way.SHOWN)
        .min(Comparator.comparing(LocateReading.DepthBy::way))
        .map(LocateReading.DepthBy::depth)
        .orElse(null);
  }

  private Mark.@Nullable DepthRead receiver(Locate locate) {
    Reading depth = locate.depth();
    if (depth == null || !layout.heights()) {
      return null;
    }
    double multiplier = multiplier(priors.of(Priors.Kind.DEPTH_READING), locate.signal());
    double raised = value(locate.receiverHeight()) + value(locate.cover());
    return new Mark.DepthRead.ByReceiver(
        depth.value(),
        raised,
        multiplier * priors.sd(Priors.Kind.DEPTH_READING, depth),
        priors.sd(Priors.Kind.DEPTH_DISTORTION, depth.value()));
  }

  static double multiplier(Priors.Prior prior, Locate.Signal signal) {
    return switch (signal) {
      case GOOD -> 1;
      case FAIR -> prior.fair();
      case POOR -> prior.poor();
    };
  }

  private void take(Visit visit, Exposure exposure) {
    Walk walk = walk(walks, visit, exposure.pass());
    Reading cable = exposure.cable();
    if (walk == null || cable == null || !holds(visit, walk, cable)) {
      return;
    }
    marks.add(
        new Mark(
            exposure.id(),
            Source.Sort.EXPOSURE,
            visit.label(),
            new Mark.Position.ByCable(walk, cable, Finding.Moving.PUSHING, -1),
            exposure.surface(),
            tape(exposure, walk),
            null,
            null,
            layout.heights()));
  }

  private Mark.@Nullable DepthRead tape(Exposure exposure, Walk walk) {
    if (!layout.heights()) {
      return null;
    }
    Reading invert = exposure.invert();
    if (invert != null) {
      return new Mark.DepthRead.ByTape(
          invert.value(), 0, priors.sd(Priors.Kind.EXPOSURE, invert), 0, null);
    }
    Reading crown = exposure.crown();
    Reach reach = layout.tree().limbs().get(walk.limbs().getFirst()).reach();
    Reading bore = reach.bore();
    if (crown == null || bore == null) {
      return null;
    }
    return new Mark.DepthRead.ByTape(
        crown.value(),
        bore.value(),
        priors.sd(Priors.Kind.EXPOSURE, crown),
        priors.sd(Priors.Kind.BORE, bore),
        reach.id());
  }

  /** Every end of a limb counts as a mark: its spot, its ground and its invert may be known. */
  private void takeNodes() {
    Set<String> seen = new HashSet<>();
    List<Tree.Limb> limbs = layout.tree().limbs();
    for (int limb = 0; limb < limbs.size(); limb++) {
      takeNode(limbs.get(limb).near(), limb, false, seen);
      // How far along the pipe an end lies that nobody came to is not known, wherever it shows.
      if (lengths.measured()[limb] || lengths.met()[limb]) {
        takeNode(limbs.get(limb).far(), limb, true, seen);
      }
    }
  }

  private void takeNode(String label, int limb, boolean far, Set<String> seen) {
    Node node = book.site().findNode(label).orElse(null);
    if (node != null && seen.add(label)) {
      boolean ground = layout.heights() && levelled(label, Level.Part.GROUND);
      marks.add(
          new Mark(
              node.id(),
              Source.Sort.NODE,
              "",
              new Mark.Position.AtEnd(limb, far),
              null,
              null,
              null,
              null,
              ground));
    }
  }

  private boolean levelled(String label, Level.Part part) {
    return levels != null && levels.heights().containsKey(LevelsOfBook.name(label, part));
  }

  private static @Nullable Walk walk(Walks walks, Visit visit, @Nullable String pass) {
    if (pass != null) {
      return walks.find(visit.label(), pass);
    }
    return visit.passes().size() == 1
        ? walks.find(visit.label(), visit.passes().getFirst().label())
        : null;
  }

  private static double value(@Nullable Reading reading) {
    return reading == null ? 0 : reading.value();
  }
}
