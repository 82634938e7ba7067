package daylight.line.course;

import daylight.line.book.Boundary;
import daylight.line.book.Entry;
import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Kit;
import daylight.line.book.Landmark;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Reported;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Test;
import daylight.line.book.Tie;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import daylight.line.measure.Reading;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A field book in the making, with one visit open at a time; everything in metres and radians. */
public final class Draft {
  private static final UUID SITE = UUID.fromString("00000000-0000-5000-8000-000000000001");

  private final List<Landmark> landmarks = new ArrayList<>();
  private final List<Boundary> boundaries = new ArrayList<>();
  private final List<Node> nodes = new ArrayList<>();
  private final List<Reach> reaches = new ArrayList<>();
  private final List<Visit> done = new ArrayList<>();
  private final List<Pass> passes = new ArrayList<>();
  private final List<Locate> locates = new ArrayList<>();
  private final List<Exposure> exposures = new ArrayList<>();
  private final List<Tie> ties = new ArrayList<>();
  private final List<Level> levels = new ArrayList<>();
  private final List<Test> tests = new ArrayList<>();
  private Kit kit = Kit.UNRECORDED;
  private Reported complaint = Reported.inWords("it backs up when it rains");
  private String visit = "V1";

  /** An identity by kind and label. */
  public static Id id(String kind, String label) {
    return Id.derived(SITE, kind, label);
  }

  /** A reading of so many metres, with nothing said of its uncertainty. */
  public static Reading metres(double value) {
    return new Reading(value, null, String.format(Locale.ROOT, "%.3f m", value));
  }

  public Draft landmark(String label, boolean base) {
    landmarks.add(new Landmark(id("landmark", label), null, Landmark.Kind.CORNER, base));
    return this;
  }

  public Draft boundary(Boundary boundary) {
    boundaries.add(boundary);
    return this;
  }

  public Draft node(String label, Node.Kind kind) {
    nodes.add(new Node(id("node", label), kind, null));
    return this;
  }

  /** A 100 mm storm drain of PVC on the line named "main", with the water from its first node. */
  public Draft reach(String label, String from, String to) {
    return reach(pipe(label, from, to, "main", Material.PVC, 0.1));
  }

  public Draft reach(Reach reach) {
    reaches.add(reach);
    return this;
  }

  public static Reach pipe(
      String label, String from, String to, String line, Material material, @Nullable Double bore) {
    return new Reach(
        id("reach", label),
        line,
        from,
        to,
        new Reach.Water.Forward(),
        Reach.Use.STORM,
        material,
        bore == null ? null : metres(bore),
        null);
  }

  public Draft kit(@Nullable Double behind, @Nullable Double above) {
    return kit(behind == null ? null : metres(behind), above == null ? null : metres(above));
  }

  public Draft kit(@Nullable Reading behind, @Nullable Reading above) {
    kit = new Kit(null, behind, above, null, null);
    return this;
  }

  public Draft pass(Push push) {
    passes.add(push.pass());
    return this;
  }

  public Draft locate(String label, @Nullable String pass, double cable, @Nullable Double depth) {
    return locate(label, pass, cable, depth, "yard", Finding.Moving.PUSHING);
  }

  public Draft locate(
      String label,
      @Nullable String pass,
      double cable,
      @Nullable Double depth,
      String surface,
      Finding.Moving moving) {
    return locate(
        new Locate(
            id("locate", label),
            pass,
            metres(cable),
            moving,
            depth == null ? null : metres(depth),
            null,
            surface,
            null,
            Locate.Signal.GOOD,
            List.of(),
            Locate.OffOn.NO,
            null,
            null));
  }

  public Draft locate(Locate locate) {
    locates.add(locate);
    return this;
  }

  public Draft exposure(
      String label, double cable, @Nullable Double crown, @Nullable Double invert, String surface) {
    exposures.add(
        new Exposure(
            id("exposure", label),
            Exposure.By.PIT,
            null,
            metres(cable),
            crown == null ? null : metres(crown),
            invert == null ? null : metres(invert),
            surface));
    return this;
  }

  /** So far along the wall from A toward B and so far out, which is west of it. */
  public Draft along(String point, double along, double out) {
    return tie(new Tie.AlongOut(tieId(), point, "A", "B", metres(along), metres(out)));
  }

  public Draft tape(String from, String to, double length) {
    return tie(new Tie.Tape(tieId(), from, to, metres(length)));
  }

  public Draft tie(Tie tie) {
    ties.add(tie);
    return this;
  }

  /** An identity for the next tie. */
  public Id tieId() {
    return id("tie", "T" + visit + "-" + (ties.size() + 1));
  }

  public Draft height(String point, Level.Part part, double height) {
    return level(new Level.Height(levelId(), new Level.Mark(point, part), metres(height)));
  }

  public Draft level(Level level) {
    levels.add(level);
    return this;
  }

  /** An identity for the next level. */
  public Id levelId() {
    return id("level", "H" + visit + "-" + (levels.size() + 1));
  }

  /** What the owner reported on every visit closed from here on. */
  public Draft reported(Reported what) {
    complaint = what;
    return this;
  }

  public Draft test(Test test) {
    tests.add(test);
    return this;
  }

  /** Closes the visit and opens another. */
  public Draft next(String label) {
    close();
    visit = label;
    return this;
  }

  private void close() {
    done.add(
        new Visit(
            id("visit", visit),
            null,
            List.of(),
            complaint,
            kit,
            passes,
            locates,
            exposures,
            ties,
            levels,
            tests,
            List.of(),
            Papers.NONE));
    for (List<? extends Entry> list : List.of(passes, locates, exposures, ties, levels, tests)) {
      list.clear();
    }
    kit = Kit.UNRECORDED;
  }

  public FieldBook book() {
    close();
    Site site =
        new Site(
            id("site", "invented"),
            "An invented property",
            null,
            ZoneId.of("UTC"),
            true,
            landmarks,
            boundaries,
            nodes,
            reaches,
            Surroundings.UNRECORDED);
    return new FieldBook(id("book", "book"), Units.UNSTATED, site, done);
  }
}
