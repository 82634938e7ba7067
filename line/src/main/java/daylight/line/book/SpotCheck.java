package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Locates, exposures, ties and levels name what is known and measure what can be. */
final class SpotCheck {
  private final FaultList faults;
  private final Names names;

  SpotCheck(FaultList faults, Names names) {
    this.faults = faults;
    this.names = names;
  }

  void check(Visit visit) {
    Set<String> placed = new HashSet<>();
    visit.ties().forEach(tie -> tie(tie, placed));
    visit.locates().forEach(locate -> locate(locate, visit, placed));
    visit.exposures().forEach(exposure -> exposure(exposure, visit));
    visit.levels().forEach(this::level);
  }

  private void locate(Locate locate, Visit visit, Set<String> placed) {
    cable(locate, locate.pass(), locate.cable(), visit);
    faults.notNegative(locate, "depth", locate.depth());
    faults.notNegative(locate, "receiver-height", locate.receiverHeight());
    faults.notNegative(locate, "cover", locate.cover());
    if (!placed.contains(locate.label())) {
      faults.add(BookFault.NO_SPOT, locate, "");
    }
    Locate.Nulls nulls = locate.nulls();
    if (nulls != null) {
      crossed(locate, "nulls.after", nulls.before(), nulls.after());
      crossed(locate, "nulls.upright-after", nulls.uprightBefore(), nulls.uprightAfter());
    }
    Reading depth = locate.depth();
    for (int i = 0; i < locate.lifts().size(); i++) {
      Locate.Lift lift = locate.lifts().get(i);
      faults.positive(locate, "lifts[" + i + "].by", lift.by());
      if (depth != null && lift.depth().value() <= depth.value()) {
        faults.add(
            BookFault.LIFT_SHRINKS,
            locate,
            "lifts[" + i + "].depth",
            new Argument.Length(lift.by().value()),
            new Argument.Length(lift.depth().value()));
      }
    }
  }

  private void crossed(
      Locate locate, String field, @Nullable Reading before, @Nullable Reading after) {
    if (before != null && after != null && !(before.value() + after.value() > 0)) {
      faults.add(
          BookFault.NULLS_CROSSED,
          locate,
          field,
          new Argument.Length(before.value()),
          new Argument.Length(after.value()));
    }
  }

  private void exposure(Exposure exposure, Visit visit) {
    cable(exposure, exposure.pass(), exposure.cable(), visit);
    faults.notNegative(exposure, "crown", exposure.crown());
    faults.notNegative(exposure, "invert", exposure.invert());
  }

  /** Asks that a counter reading belong to one pass and not lie past its end. */
  private void cable(Entry entry, @Nullable String label, @Nullable Reading cable, Visit visit) {
    faults.known(BookFault.UNKNOWN_PASS, entry, "pass", label, Names.labels(visit.passes()));
    List<Pass> passes =
        visit.passes().stream().filter(p -> label == null || p.label().equals(label)).toList();
    if (cable == null) {
      return;
    }
    if (passes.size() == 1) {
      CableCheck.check(faults, entry, "cable", cable, passes.getFirst());
    } else if (label == null) {
      faults.add(BookFault.WHICH_PASS, entry, "cable", new Argument.Length(cable.value()));
    }
  }

  private void tie(Tie tie, Set<String> placed) {
    switch (tie) {
      case Tie.Tape(Id id, String from, String to, Reading length) -> {
        ends(tie, "from", from, "to", to, placed);
        faults.positive(tie, "tape", length);
      }
      case Tie.AlongOut(
              Id id,
              String point,
              String zero,
              String toward,
              Reading along,
              Reading out) -> {
        point(tie, "point", point, placed);
        ends(tie, "wall", zero, "wall", toward, new HashSet<>());
        apart(tie, "point", point, zero, toward);
      }
      case Tie.Bearing(Id id, String from, String to, Reading bearing) ->
          ends(tie, "from", from, "to", to, placed);
      case Tie.Angle(Id id, String at, String from, String to, Reading angle) -> {
        ends(tie, "at", at, "from", from, placed);
        ends(tie, "at", at, "to", to, placed);
        apart(tie, "to", to, from);
      }
      case Tie.Direction(Id id, String set, String from, String to, Reading direction) ->
          ends(tie, "from", from, "to", to, placed);
      case Tie.Gnss gnss -> point(tie, "point", gnss.point(), placed);
      case Tie.Sketched sketched -> point(tie, "point", sketched.point(), placed);
      case Tie.Side(Id id, String point, String from, String to, boolean left) -> {
        point(tie, "point", point, new HashSet<>());
        ends(tie, "side.of", from, "side.of", to, new HashSet<>());
        apart(tie, "point", point, from, to);
      }
    }
  }

  private void point(Tie tie, String field, String label, Set<String> placed) {
    faults.known(BookFault.UNKNOWN_POINT, tie, field, label, names.points());
    placed.add(label);
  }

  private void ends(
      Tie tie, String field, String one, String otherField, String other, Set<String> placed) {
    point(tie, field, one, placed);
    point(tie, otherField, other, placed);
    if (one.equals(other)) {
      faults.add(BookFault.TIE_TO_ITSELF, tie, otherField, new Argument.Label(one));
    }
  }

  /** A point that a tie names twice says nothing. */
  private void apart(Tie tie, String field, String label, String... others) {
    if (List.of(others).contains(label)) {
      faults.add(BookFault.TIE_TO_ITSELF, tie, field, new Argument.Label(label));
    }
  }

  private void level(Level level) {
    switch (level) {
      case Level.Rod rod -> mark(level, "of", rod.mark());
      case Level.Height height -> mark(level, "of", height.mark());
      case Level.Rise(Id id, Level.Mark from, Level.Mark to, Reading rise) -> {
        mark(level, "from.of", from);
        mark(level, "to.of", to);
        if (from.equals(to)) {
          faults.add(BookFault.TIE_TO_ITSELF, level, "to.of", new Argument.Label(to.point()));
        }
      }
    }
  }

  private void mark(Level level, String field, Level.Mark mark) {
    faults.known(BookFault.UNKNOWN_POINT, level, field, mark.point(), names.points());
  }
}
