package daylight.report.draw;

import daylight.line.answer.PumpAtWork;
import daylight.line.flow.Cycle;
import daylight.line.flow.Pit;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The height of the water in a pit over the time, with as much coming in as may come at most. */
final class PitPlot {
  private static final int TIMES = 3;
  private static final double ROOM = 1.25;

  private final Sheet sheet;
  private final Box plot;
  private final Words words;
  private final PumpAtWork pump;
  private final Pit pit;
  private final double stop;
  private final double start;
  private final Cycle cycle;

  PitPlot(Sheet sheet, Box plot, Words words, PumpAtWork pump, PumpAtWork.Filling filling) {
    this.sheet = sheet;
    this.plot = plot;
    this.words = words;
    this.pump = pump;
    this.pit = filling.pit();
    this.stop = filling.stop();
    this.start = filling.stop() + filling.pit().swing().value();
    this.cycle = filling.cycle();
  }

  /** A pit that only rests, or whose pump goes round on its own water, has no course to draw. */
  static boolean isFor(Cycle cycle) {
    return cycle instanceof Cycle.Turns || cycle instanceof Cycle.CannotKeepUp;
  }

  /** The water at a time. */
  private record Level(double time, double height) {}

  void draw() {
    List<Level> levels = levels();
    double until = levels.getLast().time();
    double highest = ROOM * levels.stream().mapToDouble(Level::height).max().orElse(start);
    Axes axes = new Axes(sheet, words, plot, until, highest, false);
    List<Point> starts = List.of(axes.at(0, start), axes.at(until, start));
    List<Point> stops = List.of(axes.at(0, stop), axes.at(until, stop));
    axes.curve(starts, Ink.SOFT, 1, "4 3");
    axes.curve(stops, Ink.SOFT, 1, "4 3");
    List<Point> water = levels.stream().map(l -> axes.at(l.time(), l.height())).toList();
    axes.curve(water, Ink.WATER, 2, "");
    axes.name(starts.getLast(), words.word("draw.pump.starts"));
    axes.name(stops.getLast(), words.word("draw.pump.stops"));
    axes.across(AxisUnit.time(until));
    axes.up(AxisUnit.length(words.shown()));
  }

  private List<Level> levels() {
    List<Level> levels = new ArrayList<>(List.of(new Level(0, stop)));
    switch (cycle) {
      case Cycle.Turns turns -> {
        double back = stop + pit.runsBack() / pit.area().value();
        for (int i = 0; i < TIMES; i++) {
          double from = levels.getLast().time();
          levels.add(new Level(from, back));
          double rested = from + turns.rest().value().value();
          levels.add(new Level(rested, start));
          levels.add(new Level(rested + turns.run().value().value(), stop));
        }
      }
      case Cycle.CannotKeepUp never -> {
        double comes = pump.inflow() == null ? 0 : pump.inflow().value().value();
        double full = pit.volume() / comes;
        levels.add(new Level(full, start));
        levels.add(new Level(2 * full, start + never.more() * full / pit.area().value()));
      }
      case Cycle.PumpsItsOwnWater own -> {}
      case Cycle.Rests none -> {}
    }
    return levels;
  }
}
