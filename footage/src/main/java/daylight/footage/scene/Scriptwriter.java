package daylight.footage.scene;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Material;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Where;
import daylight.line.measure.Reading;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes the script of one footage from the book: where each thing is, and when the lens is. */
final class Scriptwriter {
  /** A small drain, where the book does not say; common practice, no source. */
  private static final double USUAL_RADIUS = 0.05;

  /** The lens stands this many radii short of the pipe's end when the end is noted. */
  private static final double RIM = 0.7;

  /**
   * Where a push was obstructed and no finding says by what, a joint stands out by so many radii;
   * common practice, no source.
   */
  private static final double LIP = 0.4;

  /** A main is so many times as wide as what runs into it; common practice, no source. */
  private static final double MAIN = 2.5;

  private static final LocalTime USUAL_START = LocalTime.of(10, 0);

  private final FieldBook book;
  private final Pass pass;
  private final String date;
  private final Motion motion;
  private final Odometer odometer;
  private final List<Script.Pipe> pipes = new ArrayList<>();

  Scriptwriter(FieldBook book, Pass pass, String media, String date) {
    this.book = book;
    this.pass = pass;
    this.date = date;
    this.odometer = Odometer.of(pass);
    List<Motion.Anchor> anchors =
        pass.anchors().stream()
            .filter(anchor -> anchor.media().equals(media))
            .map(anchor -> new Motion.Anchor(anchor.seconds(), anchor.counter().value()))
            .toList();
    if (anchors.isEmpty()) {
      throw new IllegalArgumentException(
          "pass " + pass.label() + " has no anchor in footage " + media);
    }
    this.motion = new Motion(anchors);
  }

  Script script() {
    writePipes();
    List<Thing> things = things();
    Script.Mouth mouth = mouth();
    if (mouth.into() == Script.Into.MAIN) {
      Script.Pipe last = pipeAt(mouth.at());
      pipes.add(new Script.Pipe(mouth.at(), Material.CONCRETE, MAIN * last.radius()));
    }
    LocalTime begun =
        pass.start() == null ? USUAL_START : LocalTime.ofInstant(pass.start(), book.site().zone());
    return new Script(
        motion,
        odometer,
        pipes,
        joints(things, mouth.at()),
        pass.bends().stream().map(this::turn).toList(),
        pass.sight().stream()
            .filter(s -> s.clarity() != Pass.Clarity.CLEAR)
            .map(this::veil)
            .toList(),
        things,
        mouth,
        place(),
        begun.toSecondOfDay(),
        date);
  }

  private void writePipes() {
    double from = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pass.walk().size(); i++) {
      Optional<Reach> reach = book.site().findReach(pass.walk().get(i).reach());
      if (reach.isPresent()) {
        add(from, reach.get().material(), radius(reach.get().bore()));
      }
      Optional<Finding> leaving = i + 1 < pass.walk().size() ? between(i) : Optional.empty();
      if (leaving.isPresent()) {
        from = from(leaving.get());
      }
    }
    if (pipes.isEmpty()) {
      add(from, Material.UNKNOWN, USUAL_RADIUS);
    }
    pass.findings().stream()
        .filter(f -> f.kind().equals("material-change") || f.kind().equals("bore-change"))
        .sorted(Comparator.comparingDouble(this::from))
        .forEach(this::change);
  }

  private void add(double from, Material material, double radius) {
    Script.Pipe last = pipes.isEmpty() ? null : pipes.getLast();
    if (last == null || last.material() != material || last.radius() != radius) {
      pipes.add(new Script.Pipe(from, material, radius));
    }
  }

  /** The finding of the node where the walk goes from one reach into the next. */
  private Optional<Finding> between(int leg) {
    Optional<Reach> one = book.site().findReach(pass.walk().get(leg).reach());
    Optional<Reach> next = book.site().findReach(pass.walk().get(leg + 1).reach());
    return pass.findings().stream()
        .filter(f -> f.node() != null && touches(one, f.node()) && touches(next, f.node()))
        .findFirst();
  }

  private static boolean touches(Optional<Reach> reach, String node) {
    return reach.isPresent() && (reach.get().from().equals(node) || reach.get().to().equals(node));
  }

  private void change(Finding finding) {
    double at = ahead(from(finding));
    Script.Pipe before = pipes.getFirst();
    for (Script.Pipe pipe : pipes) {
      before = pipe.from() <= at ? pipe : before;
    }
    Material material = before.material();
    double radius = before.radius();
    String becomes = finding.words().get("becomes");
    if (becomes != null) {
      material = material(becomes);
    }
    if (finding.quantities().containsKey("becomes")) {
      radius = finding.quantities().get("becomes").value() / 2;
    }
    pipes.add(new Script.Pipe(at, material, radius));
    pipes.sort(Comparator.comparingDouble(Script.Pipe::from));
  }

  private static Material material(String word) {
    String name = word.strip().replace('-', '_').replace(' ', '_').toUpperCase(Locale.ROOT);
    for (Material material : Material.values()) {
      if (material.name().equals(name)) {
        return material;
      }
    }
    return Material.UNKNOWN;
  }

  private static double radius(@Nullable Reading bore) {
    return bore == null || !(bore.value() > 0) ? USUAL_RADIUS : bore.value() / 2;
  }

  private List<Thing> things() {
    List<Thing> things = new ArrayList<>();
    for (Finding finding : pass.findings()) {
      double at = ahead(from(finding));
      double radius = pipeAt(at).radius();
      new Property(finding, at, ahead(upTo(finding)), radius).thing().ifPresent(things::add);
    }
    Pass.End end = pass.end();
    if (end != null
        && end.why() == Pass.Why.OBSTRUCTION
        && things.stream().noneMatch(thing -> thing instanceof Thing.Plug)) {
      double at = ahead(odometer.in(end.cable().value()));
      things.add(new Thing.Step(at, LIP * pipeAt(at).radius(), 1.5 * StrictMath.PI));
    }
    return things;
  }

  private Script.Pipe pipeAt(double in) {
    Script.Pipe found = pipes.getFirst();
    for (Script.Pipe pipe : pipes) {
      found = pipe.from() <= in ? pipe : found;
    }
    return found;
  }

  /** Where a thing stands whose reading was noted when the lens was here. */
  private double ahead(double in) {
    return in + Script.AHEAD * pipeAt(in).radius();
  }

  private double from(Finding finding) {
    return switch (finding.where()) {
      case Where.AtCable(Reading cable) -> odometer.in(cable.value());
      case Where.FromTo(Reading from, Reading to) ->
          odometer.in(Math.min(from.value(), to.value()));
      case Where.AtMoment(String media, double seconds) -> odometer.in(motion.readingAt(seconds));
    };
  }

  private double upTo(Finding finding) {
    return finding.where() instanceof Where.FromTo(Reading from, Reading to)
        ? odometer.in(Math.max(from.value(), to.value()))
        : from(finding);
  }

  private Script.Turn turn(Bend bend) {
    double at = odometer.in(bend.cable().value());
    return new Script.Turn(ahead(at), bend.angle().value(), bend.sense());
  }

  private Script.Veil veil(Pass.Sight sight) {
    return new Script.Veil(
        odometer.in(sight.from().value()), odometer.in(sight.to().value()), sight.clarity());
  }

  private Script.Mouth mouth() {
    Pass.End end = pass.end();
    if (end == null) {
      return new Script.Mouth(Double.POSITIVE_INFINITY, Script.Into.PIPE);
    }
    double at = odometer.in(end.cable().value());
    double rim = at + RIM * pipeAt(at).radius();
    return switch (end.why()) {
      case OUTLET_REACHED -> new Script.Mouth(rim, Script.Into.DAYLIGHT);
      case MAIN_REACHED -> new Script.Mouth(rim, Script.Into.MAIN);
      default -> new Script.Mouth(Double.POSITIVE_INFINITY, Script.Into.PIPE);
    };
  }

  /** Joints at the usual spacing of the pipe; the nearest moves to where a finding needs one. */
  private List<Double> joints(List<Thing> things, double mouth) {
    double last = Math.min(mouth, odometer.in(highest()) + 3);
    List<Double> joints = new ArrayList<>();
    for (int i = 0; i < pipes.size(); i++) {
      Script.Pipe pipe = pipes.get(i);
      double from = Math.max(pipe.from(), -1);
      double to = Math.min(last, i + 1 < pipes.size() ? pipes.get(i + 1).from() : last);
      double every = Skin.of(pipe.material()).jointEvery();
      if (pipe.from() > -1) {
        joints.add(pipe.from());
      }
      for (int k = 1; every > 0 && from + k * every < to - every / 4; k++) {
        joints.add(from + k * every);
      }
    }
    for (Thing thing : things) {
      boolean atJoint =
          thing instanceof Thing.Step
              || thing instanceof Thing.Gap
              || (thing instanceof Thing.Roots && thing.at() == thing.to());
      if (atJoint) {
        move(joints, thing.at());
      }
    }
    return joints.stream().sorted().distinct().toList();
  }

  private void move(List<Double> joints, double at) {
    double every = Skin.of(pipeAt(at).material()).jointEvery();
    joints.removeIf(joint -> Math.abs(joint - at) < every / 2);
    joints.add(at);
  }

  private double highest() {
    return pass.anchors().stream().mapToDouble(a -> a.counter().value()).max().orElse(0);
  }

  private String place() {
    String line =
        pass.walk().stream()
            .findFirst()
            .flatMap(leg -> book.site().findReach(leg.reach()))
            .map(Reach::line)
            .orElse(book.site().name());
    return line.toUpperCase(Locale.ROOT) + "  FROM " + pass.entry();
  }
}
