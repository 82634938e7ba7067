package daylight.report.draw;

import daylight.line.book.Pass;
import daylight.line.course.PlacedPass;
import daylight.report.markup.Tag;
import java.util.Optional;

/** The row of one pass: where it went through, which way, and where it was stopped. */
final class StripPush {
  private final StripCanvas canvas;
  private final StripRoute strip;
  private final StripFrame frame;
  private final double y;

  StripPush(StripCanvas canvas, StripRoute strip, StripFrame frame, double y) {
    this.canvas = canvas;
    this.strip = strip;
    this.frame = frame;
    this.y = y;
  }

  void draw(PlacedPass pass) {
    for (PlacedPass.Leg leg : pass.legs()) {
      if (strip.holds(leg.from())) {
        double up = strip.station(leg.down() ? leg.from() : leg.to());
        double down = strip.station(leg.down() ? leg.to() : leg.from());
        if (frame.meets(up, down)) {
          Box row = frame.row(up, down, y - 4, 8);
          line(leg, row);
          double end = leg.down() ? down : up;
          if (leg.equals(pass.legs().getLast()) && frame.holds(end)) {
            end(pass).ifPresent(why -> stopped(leg, row, why));
          }
        }
      }
    }
  }

  private void line(PlacedPass.Leg leg, Box row) {
    double tip = leg.down() ? row.right() : row.x();
    String head = leg.down() ? "M%s %sl-5 -3v6z" : "M%s %sl5 -3v6z";
    Tag group = Pen.at(leg.from());
    group.add(Pen.line(new Stroke(row.x(), y, row.right(), y), Ink.DARK, 1.1));
    group.add(Pen.filled(head.formatted(Tag.number(tip), Tag.number(y)), Ink.DARK));
    canvas.sheet().add(group);
    canvas.labeller().keepClear(row);
    canvas.legend().use(Legend.Entry.STRIP_PUSH);
  }

  /** Why it went no further; empty where it came to a node, or nobody noted it. */
  private Optional<Pass.Why> end(PlacedPass placed) {
    return canvas.subject().visit().stream()
        .flatMap(visit -> visit.passes().stream())
        .filter(pass -> pass.label().equals(placed.pass()))
        .map(Pass::end)
        .filter(end -> end != null && end.node() == null)
        .map(Pass.End::why)
        .findFirst();
  }

  private void stopped(PlacedPass.Leg leg, Box row, Pass.Why why) {
    double x = leg.down() ? row.right() : row.x();
    Tag bar = Pen.line(new Stroke(x, y - 4.5, x, y + 4.5), Ink.DARK, 1.8);
    canvas.sheet().add(Pen.at(leg.to()).add(bar));
    canvas.legend().use(Legend.Entry.STRIP_STOPPED);
    String text = canvas.words().name(why);
    double width = Typeface.width(text, StripCanvas.TINY, false);
    double beyond = leg.down() ? frame.right() - x : x - frame.left();
    if (width + 6 <= beyond) {
      canvas.text(leg.down() ? x + 5 : x - 5 - width, y + 2.6, text, false);
    } else if (width + 24 <= row.width()) {
      double at = leg.down() ? x - 12 - width : x + 12;
      canvas.sheet().add(Pen.box(new Box(at - 2, y - 4, width + 4, 8), Ink.PAPER, "none"));
      canvas.text(at, y + 2.6, text, false);
    } else {
      canvas.marks().write(Pen.at(leg.to()), new Point(x, y), 5, text, false);
    }
  }
}
