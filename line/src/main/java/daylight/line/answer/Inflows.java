package daylight.line.answer;

import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Test;
import daylight.line.book.WaterWay;
import daylight.line.flow.Cycles;
import daylight.line.flow.FlowInput;
import daylight.line.flow.FlowTables;
import daylight.line.flow.Operation;
import daylight.line.flow.Propagated;
import daylight.line.flow.Rain;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What may come into a pipe or a pit at most, as far as the book says: rain off roofs, fixtures as
 * if all ran together, pumps further up, and for a pit a timed rise of its water.
 */
final class Inflows {
  /**
   * How far off a flow, an area or a rain may be that was written without its doubt, of itself;
   * common practice.
   */
  private static final double USUAL = 0.1;

  /** The same of an area; common practice. */
  private static final double USUAL_AREA = 0.05;

  private final Case one;
  private final Telling tell;
  private final Site site;

  Inflows(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
    this.site = one.book().site();
  }

  /** The pumped reaches that end at one of these nodes. */
  private List<Reach> pumpedTo(Set<String> nodes) {
    return site.reaches().stream()
        .filter(reach -> reach.use() == Reach.Use.PUMPED && nodes.contains(reach.downstream()))
        .toList();
  }

  /**
   * What may come into a reach at its upper end; null where that is not known, and what is missing
   * is asked for.
   */
  @Nullable Propagated into(Reach reach) {
    Set<String> above = WaterWay.runsTo(site, reach.upstream());
    List<Reach> pumpedTo = pumpedTo(above);
    List<Propagated> parts = new ArrayList<>();
    boolean known = gather(above, parts);
    for (Reach pumped : pumpedTo) {
      Operation operation = new Pumps(one, tell).operation(pumped);
      if (operation instanceof Operation.Pumps pumps) {
        parts.add(pumps.flow());
        tell.reason(
            CopeKey.PUMP_FEEDS,
            Cope.flow(tell, FigureKey.PUMPED, pumps.flow().value().value()),
            tell.node(pumped.upstream()));
      } else {
        known &= operation instanceof Operation.WillNotPump;
      }
    }
    boolean rained = reach.use() == Reach.Use.STORM || reach.use() == Reach.Use.COMBINED;
    boolean roof = roofs(above).findAny().isPresent();
    if (pumpedTo.isEmpty() && rained && !roof) {
      tell.missing(AnswerKey.MISSING_AREA);
      known = false;
    } else if (parts.isEmpty() && known) {
      tell.missing(CopeKey.MISSING_FIXTURES);
      known = false;
    }
    return known ? Propagated.sum(parts) : null;
  }

  /**
   * What comes into a pit: the more of what may come and of what was timed; null where neither is
   * known.
   */
  @Nullable Propagated intoPit(Surroundings.Pump pump) {
    Propagated timed = timed(pump);
    Set<String> above = WaterWay.runsTo(site, pump.node());
    List<Propagated> parts = new ArrayList<>();
    boolean known = gather(above, parts) && !parts.isEmpty();
    Propagated most = known ? Propagated.sum(parts) : null;
    if (timed == null && most == null) {
      tell.missing(CopeKey.MISSING_PIT_RISE, tell.node(pump.node()));
    }
    if (timed == null || most == null) {
      return timed == null ? most : timed;
    }
    return timed.value().value() > most.value().value() ? timed : most;
  }

  /** What a timed rise tells; null where none was timed in a pit whose area is known. */
  private @Nullable Propagated timed(Surroundings.Pump pump) {
    Reading area = pump.area();
    for (Test test : one.visit().tests()) {
      Reading rise = test.drop();
      Reading time = test.duration();
      boolean here = test.kind() == Test.Kind.PIT_RISE && test.at().equals(pump.node());
      if (here && rise != null && time != null && time.value() > 0 && rise.value() > 0) {
        if (area == null || !(area.value() > 0)) {
          tell.missing(CopeKey.MISSING_PIT_AREA, tell.node(pump.node()));
          return null;
        }
        tell.noted(test, new Argument.Term("test.pit_rise"));
        Priors priors = one.rules().priors();
        return Cycles.inflow(
            test.label(),
            area(area),
            new Measured(rise.value(), priors.sd(Priors.Kind.WATER_DROP, rise)),
            new Measured(time.value(), priors.sd(Priors.Kind.WATCH, time)));
      }
    }
    return null;
  }

  /**
   * Adds what comes in at some nodes; false where something comes of which nobody knows how much.
   */
  private boolean gather(Set<String> nodes, List<Propagated> parts) {
    boolean known = true;
    List<Surroundings.Roof> roofs = roofs(nodes).toList();
    if (!roofs.isEmpty()) {
      Propagated rain = rain(roofs);
      known = rain != null;
      if (rain != null) {
        parts.add(rain);
      }
    }
    for (Surroundings.Fixture fixture : site.surroundings().fixtures()) {
      Reading flow = fixture.flow();
      if (nodes.contains(fixture.node())) {
        if (flow == null) {
          tell.missing(CopeKey.MISSING_FIXTURE_FLOW, tell.node(fixture.label()));
          known = false;
        } else if (flow.value() > 0) {
          Measured gives = measured(flow, USUAL);
          parts.add(Propagated.measured(FlowInput.FIXTURES, fixture.label(), gives));
        }
      }
    }
    return known;
  }

  private Stream<Surroundings.Roof> roofs(Set<String> nodes) {
    return site.surroundings().roofs().stream()
        .filter(roof -> nodes.contains(roof.node()) && roof.area().value() > 0);
  }

  private @Nullable Propagated rain(List<Surroundings.Roof> roofs) {
    Surroundings.Climate climate = site.surroundings().climate();
    Reading rain = climate == null ? null : climate.rain();
    if (rain == null || !(rain.value() > 0)) {
      tell.missing(AnswerKey.MISSING_RAIN);
      return null;
    }
    FlowTables.Surface surface =
        one.rules().flow().surface("roof").orElseThrow(() -> new IllegalStateException("no roof"));
    tell.note(
        CopeKey.RUNOFF,
        tell.figure(
            FigureKey.RUNOFF, new Argument.Quantity(Dimension.SHARE, surface.typical()), null),
        Cope.origin(surface.origin()));
    List<Rain.Catch> areas =
        roofs.stream()
            .map(roof -> new Rain.Catch(roof.label(), area(roof.area()), surface.runoff()))
            .toList();
    return Rain.of(areas, measured(rain, USUAL));
  }

  /** An area with its own doubt, else with what is usual of itself. */
  Measured area(Reading reading) {
    return measured(reading, USUAL_AREA);
  }

  /** A reading with its own doubt, else with what is usual of itself. */
  private Measured measured(Reading reading, double usual) {
    Double own = reading.sd();
    if (own == null) {
      tell.note(CopeKey.USUAL_DOUBT);
    }
    return new Measured(reading.value(), Objects.requireNonNullElse(own, usual * reading.value()));
  }
}
