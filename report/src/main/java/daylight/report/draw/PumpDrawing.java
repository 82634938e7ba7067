package daylight.report.draw;

import daylight.line.answer.PumpAtWork;
import daylight.line.flow.Cycle;
import daylight.line.flow.Operation;
import daylight.line.flow.Propagated;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pump on its pipe: the head it lifts and the head the pipe needs over the flow, with the point
 * at which it works; and beside it how the water in the pit rises and falls, where that is known.
 */
public final class PumpDrawing {
  private static final double HEIGHT = 400;

  /** Room for the marks left of and below a plot, and for its heading. */
  private static final double LEFT = 44;

  private static final double BELOW = 34;
  private static final double ABOVE = 18;
  private static final double BETWEEN = 16;

  private final PumpAtWork pump;
  private final Words words;
  private final Sheet sheet;

  private PumpDrawing(Subject subject, PumpAtWork pump, int count) {
    this.pump = pump;
    this.words = subject.words();
    Argument pit = new Argument.Text(Captions.node(subject, pump.node()));
    this.sheet =
        new Sheet(
            "pump-" + count,
            subject,
            HEIGHT,
            words.say("draw.pump.title", new Argument.Text(subject.book().site().name()), pit),
            words.word("draw.pump.desc"));
  }

  /** One sheet for each pump; none where what they do is not known. */
  public static List<Tag> sheets(Subject subject) {
    List<Tag> sheets = new ArrayList<>();
    for (PumpAtWork pump : subject.answers().pumps()) {
      sheets.add(new PumpDrawing(subject, pump, sheets.size() + 1).draw());
    }
    return sheets;
  }

  private Tag draw() {
    Box body = sheet.body();
    PumpAtWork.Filling filling = pump.filling();
    boolean both = filling != null && PitPlot.isFor(filling.cycle());
    double wide = both ? (body.width() - BETWEEN) / 2 : body.width();
    Box left = new Box(body.x(), body.y(), wide, body.height());
    new PumpPlot(sheet, plot(left, "draw.pump.heads"), words, pump).draw();
    if (filling != null && both) {
      Box right = new Box(body.right() - wide, body.y(), wide, body.height());
      new PitPlot(sheet, plot(right, "draw.pump.pit"), words, pump, filling).draw();
    }
    told(filling);
    return sheet.finished();
  }

  /** The room inside the axes; what it shows is written above it. */
  private Box plot(Box room, String heading) {
    double x = room.x() + LEFT;
    sheet.add(Pen.text(x, room.y() + 6, words.word(heading), 9, true, Ink.DARK));
    double high = room.height() - ABOVE - BELOW;
    return new Box(x, room.y() + ABOVE, room.width() - LEFT - 10, high);
  }

  private void told(PumpAtWork.@Nullable Filling filling) {
    sheet.sideHeading(words.word("draw.pump.reads"));
    Propagated in = pump.inflow();
    switch (pump.operation()) {
      case Operation.Pumps works -> {
        note("draw.pump.works", flow(works.flow().value()), head(works.head().value()));
        sheet.note(words.word("draw.pump.bars"));
      }
      case Operation.WillNotPump never -> sheet.note(words.word("draw.pump.never"));
      case Operation.BeyondCurve beyond -> sheet.note(words.word("draw.pump.beyond"));
    }
    if (!(pump.operation() instanceof Operation.WillNotPump)) {
      sheet.note(words.word(in == null ? "draw.pump.inflow_open" : "draw.pump.inflow_left"));
    }
    if (filling != null) {
      cycle(filling.cycle());
    }
  }

  private void cycle(Cycle cycle) {
    switch (cycle) {
      case Cycle.Turns turns ->
          note("draw.pump.turns", time(turns.run().value()), time(turns.rest().value()));
      case Cycle.CannotKeepUp never -> sheet.note(words.word("draw.pump.fills"));
      case Cycle.PumpsItsOwnWater own -> sheet.note(words.word("draw.pump.own_water"));
      case Cycle.Rests none -> {}
    }
  }

  private void note(String key, Argument... arguments) {
    sheet.note(words.say(key, arguments));
  }

  private static Argument flow(Measured flow) {
    return new Argument.Quantity(Dimension.FLOW, flow.value());
  }

  private static Argument head(Measured head) {
    return new Argument.Length(head.value());
  }

  private static Argument time(Measured seconds) {
    return new Argument.Quantity(Dimension.DURATION, seconds.value());
  }
}
