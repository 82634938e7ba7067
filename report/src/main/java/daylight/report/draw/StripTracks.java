package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Place;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedPass;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Below the pipe, row by row: sight, passes, what was found from the ground, distance. */
final class StripTracks {
  private static final double GUTTER = 5;

  private final StripCanvas canvas;
  private final StripRoute strip;
  private final StripFrame frame;
  private final StripRows rows;

  StripTracks(StripCanvas canvas, StripRoute strip, StripFrame frame, StripRows rows) {
    this.canvas = canvas;
    this.strip = strip;
    this.frame = frame;
    this.rows = rows;
  }

  void draw(List<PlacedPass> passes) {
    Words words = canvas.words();
    name(words.word("draw.strip.pipe"), rows.tracks());
    name(words.word("draw.strip.sight"), rows.sight());
    strip.sight().stream().filter(s -> frame.meets(s.from(), s.to())).forEach(this::sight);
    for (int i = 0; i < passes.size(); i++) {
      name(passes.get(i).pass(), rows.pass(i));
      new StripPush(canvas, strip, frame, rows.pass(i) + StripRows.TRACK / 2).draw(passes.get(i));
    }
    locates();
    axis();
  }

  private void name(String text, double top) {
    double room = frame.left() - GUTTER - canvas.sheet().body().x();
    String cut = Pen.cut(text, StripCanvas.TINY, false, room);
    double width = Typeface.width(cut, StripCanvas.TINY, false);
    canvas.text(frame.left() - GUTTER - width, top + StripRows.TRACK / 2 + 2.6, cut, false);
  }

  private void sight(Sight sight) {
    Box row = frame.row(sight.from(), sight.to(), rows.sight() + 2, StripRows.TRACK - 4);
    Place place = strip.route().place(Math.max(sight.from(), frame.cut().from()));
    Legend.Entry entry = StripSigns.entry(sight.seen());
    canvas.solid(place, row, StripSigns.sight(sight.seen(), row));
    canvas.legend().use(entry);
    String word =
        canvas.words().word("draw.strip.seen." + sight.seen().name().toLowerCase(Locale.ROOT));
    double width = Typeface.width(word, StripCanvas.TINY, false);
    if (width + 8 <= row.width() && sight.seen() != Sight.Seen.CLEAR) {
      double x = row.middleX() - width / 2;
      canvas
          .sheet()
          .add(
              Pen.box(
                  new Box(x - 3, row.y() - 0.5, width + 6, row.height() + 1), Ink.PAPER, "none"));
      canvas.text(x, row.middleY() + 2.6, word, false);
    }
  }

  private void locates() {
    double y = rows.locateRow() + 7;
    double free = frame.left() - 20;
    List<LocateFit> here =
        canvas.subject().line().locates().stream()
            .filter(f -> strip.holds(f.place()) && frame.holds(strip.station(f.place())))
            .sorted(Comparator.comparingDouble(f -> strip.station(f.place())))
            .toList();
    for (LocateFit fit : here) {
      double x = frame.x(strip.station(fit.place()));
      Tag sign = Located.drawn(canvas.subject(), fit, new Point(x, y), canvas.legend());
      canvas.solid(fit.place(), Box.around(x, y, Symbols.RADIUS), sign);
      free = label(fit, x, y, free);
    }
  }

  /** The label of a locate beside its sign, where the one before leaves room. */
  private double label(LocateFit fit, double x, double y, double free) {
    String text = Located.name(canvas.subject(), fit);
    double width = Typeface.width(text, StripCanvas.TINY, false);
    double right = x - Symbols.RADIUS - 2;
    if (right - width > free) {
      canvas.text(right - width, y + 2.6, text, false);
    } else {
      canvas.marks().write(Pen.at(fit.place()), new Point(x, y), Symbols.RADIUS, text, false);
    }
    return x + Symbols.RADIUS + 2;
  }

  private void axis() {
    double y = rows.axis();
    Shown shown = canvas.words().shown();
    double step = AxisUnit.length(shown).step(80 / frame.scale().points());
    canvas.sheet().add(Pen.line(new Stroke(frame.left(), y, frame.right(), y), Ink.DARK, 1));
    int first = (int) Math.ceil(frame.cut().from() / step - 1e-9);
    int last = (int) Math.floor(frame.cut().to() / step + 1e-9);
    for (int i = first; i <= last; i++) {
      double x = frame.x(i * step);
      canvas.sheet().add(Pen.line(new Stroke(x, y, x, y + 4), Ink.DARK, 1));
      String text = AxisUnit.length(shown).tick(i * step, canvas.words());
      double half = Typeface.width(text, 7.5, false) / 2;
      canvas.sheet().add(Pen.text(x - half, y + 13, text, 7.5, false, Ink.DARK));
      canvas.labeller().keepClear(Box.ofText(x - half, y + 13, text, 7.5, false));
    }
    canvas.labeller().keepClear(new Box(frame.left(), y - 1, frame.right() - frame.left(), 5));
  }
}
