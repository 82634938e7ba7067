package daylight.report.draw;

import daylight.line.answer.PumpAtWork;
import daylight.line.flow.Operation;
import daylight.line.flow.Propagated;
import daylight.line.flow.Pumping;
import daylight.line.flow.Water;
import daylight.line.measure.Measured;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The head a pump lifts and the head its pipe needs, over the flow. */
final class PumpPlot {
  private static final String COMES_BAND = "#dbe6f2";
  private static final int POINTS = 80;
  private static final double ROOM = 1.08;
  private static final double BAR = 1.2;

  private final Words words;
  private final PumpAtWork pump;
  private final Axes axes;
  private final double most;
  private final double highest;

  PumpPlot(Sheet sheet, Box plot, Words words, PumpAtWork pump) {
    this.words = words;
    this.pump = pump;
    double flow = pump.curve().last();
    double head = Math.max(pump.curve().shutOff(), pump.discharge().lift().upper95());
    Propagated in = pump.inflow();
    if (in != null) {
      flow = Math.max(flow, in.value().upper95());
    }
    if (pump.operation() instanceof Operation.Pumps works) {
      flow = Math.max(flow, works.flow().value().upper95());
      head = Math.max(head, works.head().value().upper95());
    }
    this.most = ROOM * flow;
    this.highest = ROOM * head;
    this.axes = new Axes(sheet, words, plot, most, highest, false);
  }

  void draw() {
    Propagated in = pump.inflow();
    if (in != null) {
      comes(in.value());
    }
    List<Point> lifts = lifts();
    List<Point> needs = needs();
    axes.curve(lifts, Ink.DRAIN, 2.2, "");
    axes.curve(needs, Ink.DARK, 1.6, "6 3");
    if (pump.operation() instanceof Operation.Pumps works) {
      worksAt(works);
    }
    if (in != null) {
      axes.name(axes.at(in.value().value(), highest), words.word("draw.pump.comes"));
    }
    axes.name(lifts.get(lifts.size() / 3), words.word("draw.pump.lifts"));
    axes.name(needs.get(needs.size() / 4), words.word("draw.pump.needs"));
    axes.across(AxisUnit.flow(words.shown()));
    axes.up(AxisUnit.length(words.shown()));
  }

  private void comes(Measured in) {
    double least = Math.max(0, in.lower95());
    axes.band(
        List.of(axes.at(least, 0), axes.at(in.upper95(), 0)),
        List.of(axes.at(least, highest), axes.at(in.upper95(), highest)),
        COMES_BAND);
    List<Point> line = List.of(axes.at(in.value(), 0), axes.at(in.value(), highest));
    axes.curve(line, Ink.WATER, 1.4, "2 2");
  }

  private List<Point> lifts() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      double flow = pump.curve().last() * i / POINTS;
      points.add(axes.at(flow, pump.curve().head(flow)));
    }
    return points;
  }

  /** As far as it stays within the plot. */
  private List<Point> needs() {
    double viscosity = Water.viscosity(Water.USUAL_CELSIUS);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      double flow = most * i / POINTS;
      double head = Pumping.head(pump.discharge(), flow, viscosity);
      if (head <= highest) {
        points.add(axes.at(flow, head));
      }
    }
    return points;
  }

  private void worksAt(Operation.Pumps works) {
    Measured flow = works.flow().value();
    Measured head = works.head().value();
    double least = Math.max(0, flow.lower95());
    bar(axes.at(least, head.value()), axes.at(flow.upper95(), head.value()));
    bar(axes.at(flow.value(), head.lower95()), axes.at(flow.value(), head.upper95()));
    Point at = axes.at(flow.value(), head.value());
    axes.dot(at);
    axes.name(axes.at(flow.upper95(), head.value()), words.word("draw.pump.here"));
  }

  private void bar(Point from, Point to) {
    axes.curve(List.of(from, to), Ink.DARK, BAR, "");
  }
}
