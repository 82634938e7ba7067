package daylight.line.sonde;

import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads one locate: depth by each way, lift check, and the traps it looks like. */
final class Reader {
  /** Surfaces that may hold steel. */
  private static final Set<String> HARD =
      Set.of("slab", "floor", "pavement", "drive", "paving", "concrete");

  /** Two figures of the same thing differ by more once in a hundred times. */
  private static final double DIFFER = 2.576;

  private static final double UPRIGHT_SPACING = 2 * StrictMath.sqrt(2);

  private final Locate locate;
  private final Priors priors;
  private final @Nullable Material material;
  private final List<LocateReading.DepthBy> depths = new ArrayList<>();
  private final List<Suspicion> suspicions = new ArrayList<>();
  private @Nullable Measured onward;
  private @Nullable Measured tilt;
  private @Nullable LiftCheck lift;

  Reader(Locate locate, Priors priors, @Nullable Material material) {
    this.locate = locate;
    this.priors = priors;
    this.material = material;
  }

  LocateReading read() {
    Measured shown = shown();
    Measured silent = locate.nulls() == null ? null : nulls(locate.nulls());
    boolean differ = shown != null && silent != null && differ(shown, silent);
    lift();
    if (locate.offOn() == Locate.OffOn.STAYED) {
      suspect(Trap.OTHER_SOURCE);
    }
    if (shown != null && silent != null && differ) {
      disagree(shown, silent);
    }
    boolean off = lift != null && lift.verdict() != LiftCheck.Verdict.AGREES;
    if (HARD.contains(locate.surface().toLowerCase(Locale.ROOT)) && (differ || off)) {
      suspect(Trap.SLAB_OR_MESH, new Argument.Text(locate.surface()));
    }
    iron();
    return new LocateReading(
        locate.label(), depths, onward, tilt, lift, lift == null ? null : vote(lift), suspicions);
  }

  private void suspect(Trap trap, Argument... evidence) {
    List<Argument> all = new ArrayList<>(List.of(new Argument.Label(locate.label())));
    all.addAll(List.of(evidence));
    suspicions.add(new Suspicion(trap, all));
  }

  private double multiplier(Priors.Kind kind) {
    return switch (locate.signal()) {
      case GOOD -> 1;
      case FAIR -> priors.of(kind).fair();
      case POOR -> priors.of(kind).poor();
    };
  }

  private double sd(Priors.Kind kind, double size) {
    return multiplier(kind) * priors.sd(kind, size);
  }

  private double sd(Priors.Kind kind, Reading reading) {
    @Nullable Double stated = reading.sd();
    return stated != null ? stated : sd(kind, reading.value());
  }

  /** What lay between the receiver's foot and the surface. */
  private double raised() {
    return value(locate.receiverHeight()) + value(locate.cover());
  }

  private static double value(@Nullable Reading reading) {
    return reading == null ? 0 : reading.value();
  }

  /** The receiver's own depth below the surface, with all three of its errors. */
  private @Nullable Measured shown() {
    Reading depth = locate.depth();
    if (depth == null || !(depth.value() > raised())) {
      return null;
    }
    double below = depth.value();
    double sd =
        StrictMath.hypot(
            sd(Priors.Kind.DEPTH_READING, depth),
            StrictMath.hypot(
                sd(Priors.Kind.DEPTH_DISTORTION, below),
                priors.sd(Priors.Kind.RECEIVER_SCALE, 0) * below));
    Measured shown = new Measured(below - raised(), sd);
    depths.add(new LocateReading.DepthBy(LocateReading.Way.SHOWN, shown));
    return shown;
  }

  /** The depth below the surface by the silent places; null where they do not say. */
  private @Nullable Measured nulls(Locate.Nulls nulls) {
    Measured upright = upright(nulls);
    if (upright != null) {
      return upright;
    }
    Reading before = nulls.before();
    Reading after = nulls.after();
    if (before == null || after == null || !(before.value() + after.value() > 0)) {
      return null;
    }
    double level = (before.value() + after.value()) / StrictMath.sqrt(2);
    Measured first = mark(-before.value(), before, level);
    Measured second = mark(after.value(), after, level);
    Measured over = nulls.over() == null ? null : mark(nulls.over().value(), nulls.over(), level);
    if (before.value() < 0 || after.value() < 0) {
      return sidePeak(first, second);
    }
    if (over == null) {
      uneven(first, second, level);
    }
    Measured believed = new Measured(0, priors.sd(Priors.Kind.SONDE_TILT, 0));
    return switch (Sonde.nulls(new NullMarks(first, second, over, null), believed)) {
      case NoDipole _ -> {
        suspect(Trap.UNEVEN, new Argument.Length(StrictMath.abs(first.value() + second.value())));
        yield null;
      }
      case NullFix fix -> {
        onward = fix.position();
        tilt = over == null ? null : fix.tilt();
        yield below(LocateReading.Way.NULLS, fix.depth());
      }
    };
  }

  private Measured mark(double at, Reading written, double depth) {
    @Nullable Double stated = written.sd();
    return new Measured(at, stated != null ? stated : sd(Priors.Kind.NULL_MARK, depth));
  }

  /** From below the antenna to below the surface. */
  private Measured below(LocateReading.Way way, Measured antenna) {
    Measured height = priors.recordedOrTypical(Priors.Kind.ANTENNA_ABOVE_FOOT, null);
    Measured depth = antenna.minus(height).plus(-raised());
    depths.add(new LocateReading.DepthBy(way, depth));
    return depth;
  }

  private @Nullable Measured upright(Locate.Nulls nulls) {
    Reading before = nulls.uprightBefore();
    Reading after = nulls.uprightAfter();
    if (before == null || after == null || !(before.value() + after.value() > 0)) {
      return null;
    }
    double guess = (before.value() + after.value()) / UPRIGHT_SPACING;
    Measured spacing =
        mark(after.value(), after, guess).minus(mark(-before.value(), before, guess));
    Measured depth = spacing.times(1 / UPRIGHT_SPACING);
    Measured below = below(LocateReading.Way.UPRIGHT_NULLS, depth);
    suspect(Trap.UPRIGHT, new Argument.UncertainLength(below));
    return below;
  }

  /** Both silent places on one side: the sonde lies between them, not under the spot. */
  private Measured sidePeak(Measured first, Measured second) {
    Measured depth = Sonde.level(second.minus(first));
    double middle = (first.value() + second.value()) / 2;
    onward = new Measured(middle, StrictMath.hypot(first.sd(), second.sd()) / 2);
    suspect(
        Trap.SIDE_PEAK,
        new Argument.Length(StrictMath.abs(middle)),
        new Argument.Term(middle > 0 ? "sonde.onward" : "sonde.back"));
    return below(LocateReading.Way.NULLS, depth);
  }

  private void uneven(Measured first, Measured second, double depth) {
    double off = (first.value() + second.value()) / 2;
    double marks = StrictMath.hypot(first.sd(), second.sd()) / 2;
    double sd = StrictMath.hypot(marks, sd(Priors.Kind.LOCATE_SPOT, depth));
    if (StrictMath.abs(off) > DIFFER * sd) {
      suspect(Trap.UNEVEN, new Argument.Length(2 * StrictMath.abs(off)));
    }
  }

  private static boolean differ(Measured one, Measured other) {
    Measured apart = one.minus(other);
    return StrictMath.abs(apart.value()) > DIFFER * apart.sd();
  }

  /** Feet and inches mixed up where that would explain it, else just that they disagree. */
  private void disagree(Measured shown, Measured silent) {
    Reading depth = locate.depth();
    if (depth == null) {
      return;
    }
    for (double other : FeetAndInches.others(depth.written(), depth.value())) {
      Measured instead = shown.plus(other - depth.value());
      if (!differ(instead, silent)) {
        suspect(
            Trap.FEET_AND_INCHES,
            new Argument.Text(depth.written()),
            new Argument.Length(other),
            new Argument.UncertainLength(silent));
        return;
      }
    }
    suspect(
        Trap.DEPTHS_DISAGREE,
        new Argument.UncertainLength(shown),
        new Argument.UncertainLength(silent));
  }

  private void lift() {
    Reading depth = locate.depth();
    List<Lifted> lifts = new ArrayList<>();
    for (Locate.Lift one : locate.lifts()) {
      if (one.by().value() > 0) {
        lifts.add(
            new Lifted(
                new Measured(one.by().value(), priors.sd(Priors.Kind.TAPE, one.by())),
                new Measured(one.depth().value(), sd(Priors.Kind.DEPTH_READING, one.depth()))));
      }
    }
    if (depth == null || lifts.isEmpty()) {
      return;
    }
    Measured shown = new Measured(depth.value(), sd(Priors.Kind.DEPTH_READING, depth));
    LiftCheck check = LiftCheck.of(shown, lifts);
    lift = check;
    if (check.verdict() != LiftCheck.Verdict.AGREES) {
      Lifted highest = lifts.getFirst();
      for (Lifted one : lifts) {
        highest = one.by().value() > highest.by().value() ? one : highest;
      }
      suspect(
          Trap.LIFT_OFF,
          new Argument.Length(highest.by().value()),
          new Argument.Length(highest.shown().value() - depth.value()));
    }
  }

  private Measured vote(LiftCheck check) {
    double distortion = multiplier(Priors.Kind.DEPTH_DISTORTION);
    return check.vote(distortion * priors.of(Priors.Kind.DEPTH_DISTORTION).b());
  }

  private void iron() {
    Material of = material;
    if (of != null && of.ferrous()) {
      suspect(
          Trap.IRON_PIPE,
          new Argument.Term("material." + of.name().toLowerCase(Locale.ROOT)),
          new Argument.Number(Wall.of(of).inSkinDepths()));
    }
  }
}
