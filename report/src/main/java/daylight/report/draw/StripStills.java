package daylight.report.draw;

import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.shots.Still;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Small pictures above the pipe, each with a leader to its distance. */
final class StripStills {
  private static final double HEIGHT = 48;
  private static final double WIDEST = 78;
  private static final double GAP = 6;
  private static final double HEAD = 22;

  private final StripCanvas canvas;
  private final StripFrame frame;
  private final StripRows rows;
  private final StripPins pins;

  /** A picture with how wide it is on the sheet. */
  record Hung(StripItem item, Still still, double width) {}

  StripStills(StripCanvas canvas, StripFrame frame, StripRows rows, StripPins pins) {
    this.canvas = canvas;
    this.frame = frame;
    this.rows = rows;
    this.pins = pins;
  }

  /**
   * The pictures that find room on a band: what matters most first, and of what matters as much,
   * what is furthest from the others.
   */
  static List<Hung> chosen(Subject subject, List<StripItem> items, StripFrame frame) {
    List<Hung> offered = new ArrayList<>();
    for (StripItem item : items) {
      Still still = item.still(subject);
      if (still != null && item.begins(frame)) {
        double width = HEIGHT * still.picture().width() / still.picture().height();
        offered.add(new Hung(item, still, Math.min(WIDEST, width)));
      }
    }
    List<Hung> chosen = new ArrayList<>();
    double room = frame.right() - frame.left();
    while (!offered.isEmpty()) {
      Hung best = offered.stream().min(order(chosen)).orElseThrow();
      offered.remove(best);
      if (best.width() <= room) {
        room -= best.width() + GAP;
        chosen.add(best);
      }
    }
    chosen.sort(Comparator.comparingDouble(one -> one.item().from()));
    return chosen;
  }

  private static Comparator<Hung> order(List<Hung> chosen) {
    ToDoubleFunction<Hung> near =
        one ->
            chosen.stream()
                .mapToDouble(other -> Math.abs(other.item().from() - one.item().from()))
                .min()
                .orElse(0);
    return Comparator.comparingInt((Hung one) -> one.item().rank())
        .thenComparing(Comparator.comparingDouble(near).reversed());
  }

  void draw(List<Hung> hung) {
    List<Double> middles =
        Spread.middles(
            hung.stream().map(one -> frame.x(one.item().from())).toList(),
            hung.stream().map(one -> one.width() + GAP).toList(),
            frame.left() - GAP / 2,
            frame.right() + GAP / 2);
    for (int i = 0; i < hung.size(); i++) {
      hang(hung.get(i), middles.get(i) - hung.get(i).width() / 2);
    }
  }

  private void hang(Hung one, double left) {
    double top = rows.pictures() + HEAD;
    Box box = new Box(left, top, one.width(), HEIGHT);
    Tag group = Pen.at(one.item().place());
    group.add(image(one, box));
    group.add(Pen.box(box, "none", Ink.DARK).with("stroke-width", 0.8));
    heading(group, box, one.still().finding() + " " + one.item().text(), rows.pictures() + 8, true);
    heading(group, box, canvas.words().length(one.item().from()), rows.pictures() + 18, false);
    canvas.solid(
        one.item().place(), new Box(left, rows.pictures(), box.width(), HEAD + HEIGHT), group);
    leader(one, box);
  }

  private static void heading(Tag group, Box box, String text, double baseline, boolean bold) {
    String cut = Pen.cut(text, StripCanvas.TINY, bold, box.width());
    group.add(Pen.text(box.x(), baseline, cut, StripCanvas.TINY, bold, Ink.DARK));
  }

  /** Inside an image that a reader may not see, the words say what it shows. */
  private Tag image(Hung one, Box box) {
    String says =
        canvas
            .words()
            .say(
                "draw.strip.picture",
                new Argument.Label(one.still().finding()),
                new Argument.Text(one.item().kind(canvas.words())),
                new Argument.Length(one.item().from()));
    return Tag.of("image")
        .with("xmlns:xlink", "http://www.w3.org/1999/xlink")
        .with("xlink:href", one.still().picture())
        .with("x", box.x())
        .with("y", box.y())
        .with("width", box.width())
        .with("height", box.height())
        .with("preserveAspectRatio", "xMidYMid slice")
        .with("role", "img")
        .with("aria-label", says)
        .add(Tag.of("title", says));
  }

  /** Straight up from the pin, then aslant to the picture; leaders in order never cross. */
  private void leader(Hung one, Box box) {
    Point pin = pins.of(one.item()).orElseThrow().head();
    double knee = rows.above() + 2;
    double hook = Math.clamp(pin.x(), box.x() + 4, box.right() - 4);
    List<Point> points = List.of(new Point(hook, box.bottom()), new Point(pin.x(), knee), pin);
    Tag path = Pen.path(Pen.through(points, false), Ink.SOFT, 0.6);
    canvas.sheet().add(Pen.at(one.item().place()).add(path));
    canvas.labeller().keepClear(new Box(pin.x() - 1.5, knee, 3, pin.y() - knee));
    double a = Math.min(hook, pin.x());
    double width = Math.abs(hook - pin.x());
    canvas.labeller().keepClear(new Box(a, box.bottom(), width, knee - box.bottom()));
  }
}
