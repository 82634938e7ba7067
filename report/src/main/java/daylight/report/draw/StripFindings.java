package daylight.report.draw;

import daylight.line.measure.Measured;
import daylight.report.markup.Tag;
import daylight.report.shots.Still;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Findings and bends at their distance, at their height on the wall, with the doubt of both. */
final class StripFindings {
  private static final double DOT = 1.6;

  private final StripCanvas canvas;
  private final List<StripPiece> pieces;
  private final StripFrame frame;
  private final StripPins pins;
  private final List<Box> signs;
  private final List<Box> bars = new ArrayList<>();

  /**
   * @param signs of nodes, which nothing covers
   */
  StripFindings(
      StripCanvas canvas,
      List<StripPiece> pieces,
      StripFrame frame,
      StripPins pins,
      List<Box> signs) {
    this.canvas = canvas;
    this.pieces = pieces;
    this.frame = frame;
    this.pins = pins;
    this.signs = new ArrayList<>(signs);
  }

  /** Water first, then what lies in it. */
  void fillings(List<StripItem> items) {
    for (boolean water : new boolean[] {true, false}) {
      for (StripItem item : items) {
        if (item.placed() != null && StripContents.isWater(item.placed()) == water) {
          new StripContents(canvas, frame)
              .draw(item.placed(), item.from(), item.to(), bore(item.from()));
        }
      }
    }
  }

  /**
   * The signs.
   *
   * @param pictured what its picture names
   */
  void draw(List<StripItem> items, Set<StripItem> pictured) {
    for (StripItem item : items) {
      if (item.isStretch() ? frame.meets(item.from(), item.to()) : frame.holds(item.from())) {
        if (item.isPlainJoint()) {
          joint(item);
        } else {
          item(item, pictured.contains(item));
        }
      }
    }
  }

  private double bore(double station) {
    return StripPiece.at(pieces, station).bore();
  }

  private void joint(StripItem item) {
    double x = frame.x(item.from());
    Tag group = Pen.at(item.place());
    for (double y : new double[] {frame.y(bore(item.from())), frame.y(0)}) {
      group.add(Pen.line(new Stroke(x, y - 4, x, y + 4), Ink.DARK, 1.1));
    }
    canvas.sheet().add(group);
    canvas.legend().use(Legend.Entry.STRIP_JOINT);
  }

  private void item(StripItem item, boolean named) {
    double bore = bore(item.from());
    boolean filling = item.placed() != null && StripContents.fills(item.placed(), bore);
    String sign = filling ? null : sign(item, bore);
    pins.of(item).ifPresent(pin -> pinned(item, pin, named, sign));
  }

  private void pinned(StripItem item, StripPins.Pin pin, boolean named, @Nullable String sign) {
    whisker(item, pin.foot());
    Point head = pin.head();
    Stroke stroke = new Stroke(pin.foot().x(), pin.foot().y(), head.x(), head.y());
    canvas.sheet().add(Pen.at(item.place()).add(Pen.line(stroke, Ink.SOFT, 0.6)));
    canvas.labeller().keepClear(pin.room());
    if (!named) {
      Box own = canvas.marks().numberRoom(head, pin.below());
      canvas
          .marks()
          .write(Pen.at(item.place()), head, sign, text(item), item.isStop(), item.rank(), own);
    }
  }

  /** A finding whose picture found no room goes by its label, under which the picture is kept. */
  private String text(StripItem item) {
    Still still = item.still(canvas.subject());
    String label = item.label(canvas.words());
    return still == null ? label : still.finding() + " " + label;
  }

  private double middle(StripItem item) {
    return (Math.max(item.from(), frame.cut().from()) + Math.min(item.to(), frame.cut().to())) / 2;
  }

  /** Where its distance lies, 19 times of 20. */
  private void whisker(StripItem item, Point at) {
    double half = Measured.Z95 * item.sd();
    double x = at.x();
    double y = at.y();
    double a = Math.max(frame.left(), frame.x(item.from() - half));
    double b = Math.min(frame.right(), frame.x(item.from() + half));
    Tag group = Pen.at(item.place());
    if (b - a > 2 * DOT + 1) {
      group.add(Pen.line(new Stroke(a, y, b, y), Ink.DARK, 0.8));
      group.add(Pen.line(new Stroke(a, y - 2, a, y + 2), Ink.DARK, 0.8));
      group.add(Pen.line(new Stroke(b, y - 2, b, y + 2), Ink.DARK, 0.8));
      canvas.legend().use(Legend.Entry.STRIP_DOUBT);
    }
    group.add(Pen.circle(x, y, DOT, Ink.DARK, "none", 0));
    canvas.solid(item.place(), new Box(Math.min(a, x - 2), y - 2, Math.max(b - a, 4), 4), group);
  }

  /** Draws the sign where there is room for it, else a dot; then the label brings the sign. */
  private @Nullable String sign(StripItem item, double bore) {
    Tag group = Pen.at(item.place());
    double x = frame.x(middle(item));
    double y = height(item, x, bore);
    if (item.isStretch()) {
      Box bar = bar(item, y);
      bars.add(bar);
      group.add(Pen.box(bar, Ink.DARK, Ink.PAPER).with("stroke-width", 0.6));
      canvas.legend().use(Legend.Entry.STRIP_STRETCH);
    }
    item.wall()
        .filter(on -> on.high() - on.low() > 0.2)
        .ifPresent(on -> group.add(span(x, on, bore)));
    Box room = Box.around(x, y, Symbols.RADIUS);
    boolean free = signs.stream().noneMatch(room::overlaps);
    if (free) {
      signs.add(room);
      canvas.labeller().keepClear(room);
      canvas.legend().use(item.symbol());
      group.add(Symbols.finding(item.symbol(), x, y));
    } else {
      group.add(Pen.circle(x, y, 2.1, Ink.PAPER, Ink.DARK, 1));
    }
    canvas.sheet().add(group);
    return free ? null : item.symbol();
  }

  /** How much of the wall it takes, from its lowest to its highest point. */
  private Tag span(double x, StripLook.OnWall on, double bore) {
    double low = frame.y(on.low() * bore);
    double high = frame.y(on.high() * bore);
    return Pen.path(
        "M%s %sV%s".formatted(Tag.number(x), Tag.number(high), Tag.number(low)), Ink.DARK, 1.6);
  }

  private Box bar(StripItem item, double y) {
    return frame.row(item.from(), item.to(), y - 1.6, 3.2);
  }

  /** At its height on the wall; where that is not known, wherever there is room for it. */
  private double height(StripItem item, double x, double bore) {
    if (item.wall().isPresent()) {
      return inside(item.wall().get().height(), bore);
    }
    List<Double> offered = item.isLow() ? List.of(0.0, 0.5) : List.of(0.5, 0.2, 0.8);
    return offered.stream()
        .map(fraction -> inside(fraction, bore))
        .filter(y -> signs.stream().noneMatch(Box.around(x, y, Symbols.RADIUS)::overlaps))
        .filter(y -> !item.isStretch() || bars.stream().noneMatch(bar(item, y)::overlaps))
        .findFirst()
        .orElse(inside(offered.getFirst(), bore));
  }

  /** A height in parts of the bore, with room for a sign between it and the walls. */
  private double inside(double fraction, double bore) {
    double y = frame.y(fraction * bore);
    double top = frame.y(bore) + Symbols.RADIUS;
    double bottom = frame.y(0) - Symbols.RADIUS;
    return top < bottom ? Math.clamp(y, top, bottom) : (top + bottom) / 2;
  }
}
