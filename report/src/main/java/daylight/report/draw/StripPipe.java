package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import java.util.List;

/** The pipe itself: its walls to scale, what it is made of, where the drawing is broken. */
final class StripPipe {
  private final StripCanvas canvas;
  private final StripRoute strip;
  private final List<StripPiece> pieces;
  private final StripFrame frame;
  private final StripRows rows;

  StripPipe(
      StripCanvas canvas,
      StripRoute strip,
      List<StripPiece> pieces,
      StripFrame frame,
      StripRows rows) {
    this.canvas = canvas;
    this.strip = strip;
    this.pieces = pieces;
    this.frame = frame;
    this.rows = rows;
  }

  void draw() {
    for (StripPiece piece : pieces) {
      if (frame.meets(piece.from(), piece.to())) {
        double known = Math.clamp(strip.known(), piece.from(), piece.to());
        wall(piece, piece.from(), known, false);
        wall(piece, known, piece.to(), true);
        material(piece);
      }
    }
    boreAtLeft();
    breaks();
    flow();
  }

  /** Walls are bars outside the bore; dashed where nobody followed the pipe. */
  private void wall(StripPiece piece, double from, double to, boolean guessed) {
    if (to <= from || !frame.meets(from, to)) {
      return;
    }
    Box bore = frame.box(from, to, 0, piece.bore());
    Place place = strip.route().place(Math.max(from, frame.cut().from()));
    Tag group = Pen.at(place).with("data-bore", piece.bore());
    for (double y : new double[] {bore.y() - StripRows.WALL, bore.bottom()}) {
      Box bar = new Box(bore.x(), y, bore.width(), StripRows.WALL);
      Tag rect = Pen.box(bar, guessed ? Ink.PAPER : Ink.DRAIN, Ink.DRAIN).with("stroke-width", 0.7);
      group.add(guessed ? rect.with("stroke-dasharray", "3 2") : rect);
    }
    canvas.sheet().add(group);
    canvas.labeller().keepClear(bore.grown(StripRows.WALL));
    canvas.legend().use(guessed ? Legend.Entry.STRIP_GUESSED : Legend.Entry.STRIP_WALL);
  }

  private String bore(StripPiece piece) {
    Double recorded = piece.recorded();
    return recorded == null
        ? canvas.words().word("draw.strip.bore_unknown")
        : canvas.words().figure(new Argument.Bore(recorded));
  }

  /** The first track: material and bore between ticks, as much of it as fits. */
  private void material(StripPiece piece) {
    Box row = frame.row(piece.from(), piece.to(), rows.tracks(), StripRows.TRACK);
    double y = row.middleY();
    Tag group = Pen.at(strip.route().place(Math.max(piece.from(), frame.cut().from())));
    group.add(Pen.line(new Stroke(row.x(), y, row.right(), y), Ink.SOFT, 0.7));
    for (double x : new double[] {row.x(), row.right()}) {
      group.add(Pen.line(new Stroke(x, y - 3, x, y + 3), Ink.DARK, 1));
    }
    canvas.sheet().add(group);
    canvas.labeller().keepClear(row);
    String whole = piece.material() + ", " + bore(piece);
    double room = row.width() - 10;
    String text =
        width(whole) <= room ? whole : width(piece.material()) <= room ? piece.material() : "";
    if (text.isEmpty()) {
      Point at = new Point(row.middleX(), row.y());
      canvas.marks().write(Tag.of("g"), at, 1, whole, false);
    } else {
      double x = row.middleX() - width(text) / 2;
      Box behind = new Box(x - 3, row.y() + 1, width(text) + 6, StripRows.TRACK - 2);
      canvas.sheet().add(Pen.box(behind, Ink.PAPER, "none"));
      canvas.text(x, y + 2.6, text, false);
    }
  }

  private static double width(String text) {
    return Typeface.width(text, StripCanvas.TINY, false);
  }

  /** The bore with a measure line before the pipe. */
  private void boreAtLeft() {
    StripPiece piece = StripPiece.at(pieces, frame.cut().from());
    double x = frame.left() - 10;
    double top = frame.y(piece.bore());
    double bottom = frame.y(0);
    String d =
        "M%s %sH%sM%s %sV%sM%s %sH%s"
            .formatted(
                Tag.number(x - 2),
                Tag.number(top),
                Tag.number(x + 2),
                Tag.number(x),
                Tag.number(top),
                Tag.number(bottom),
                Tag.number(x - 2),
                Tag.number(bottom),
                Tag.number(x + 2));
    canvas.sheet().add(Pen.path(d, Ink.SOFT, 0.8));
    canvas.labeller().keepClear(new Box(x - 2, top, 4, bottom - top));
    Double recorded = piece.recorded();
    String text = recorded == null ? "?" : canvas.words().figure(new Argument.Bore(recorded));
    canvas.text(x - 5 - width(text), (top + bottom) / 2 + 2.6, text, false);
  }

  /** A wavy edge where the strip goes on in the next band, or nobody knows how far. */
  private void breaks() {
    if (frame.cut().from() > 0) {
      wave(frame.left());
    }
    boolean open = strip.known() < strip.length() || strip.ends().stream().noneMatch(this::atEnd);
    if (frame.cut().to() < strip.length() || open) {
      wave(frame.right());
    }
  }

  private boolean atEnd(StripRoute.End end) {
    return end.station() >= strip.length() - 1e-6;
  }

  private void wave(double x) {
    double top = frame.y(StripPiece.at(pieces, frame.cut().to()).bore()) - 6;
    double quarter = (rows.invert() + 6 - top) / 4;
    String q = Tag.number(quarter);
    String d =
        "M%s %sq3 %s 0 %st0 %st0 %st0 %s"
            .formatted(Tag.number(x), Tag.number(top), Tag.number(quarter / 2), q, q, q, q);
    canvas.sheet().add(Pen.path(d, Ink.PAPER, 4), Pen.path(d, Ink.DARK, 0.9));
    canvas.legend().use(Legend.Entry.STRIP_BREAK);
  }

  /** An arrow out of the right end of every band, where the water's way is known. */
  private void flow() {
    if (strip.flowKnown()) {
      double y = (frame.y(0) + rows.crown()) / 2;
      double x = frame.right() + 9;
      String d = "M%s %sh9m-4 -3.5l4 3.5l-4 3.5".formatted(Tag.number(x), Tag.number(y));
      canvas.sheet().add(Pen.path(d, Ink.WATER, 1.6));
      canvas.labeller().keepClear(new Box(x - 1, y - 5, 12, 10));
      canvas.legend().use(Legend.Entry.STRIP_FLOW);
    }
  }
}
