package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The door for the strip: the pipe straightened out and laid down, the water running to the right,
 * in as many rows as it takes to keep it legible.
 */
public final class StripDrawing {
  private static final String ID = "strip";
  private static final double LEAST = 300;
  private static final double LEFT = 48;
  private static final double RIGHT = 22;
  private static final double HEAD = 16;
  private static final double FOOT = 16;
  private static final double BETWEEN = 6;

  /** So much higher than its rows a sheet may be for the sake of its side column. */
  private static final double A_LITTLE = 160;

  /** What the side column wants free below its last line. */
  private static final double SIDE_REST = 26;

  private final Subject subject;
  private final Words words;
  private final List<StripRoute> strips;
  private final Sheet sheet;
  private final Legend legend;
  private final Labeller labeller;
  private final StripCanvas canvas;
  private final List<Row> rows;

  /** How high the body of a sheet of paper is, and how high these rows stand. */
  private final double room;

  private final double high;
  private final List<Laid> bands = new ArrayList<>();

  /** One row of the drawing. */
  private record Row(StripRoute strip, StripScale.Cut cut) {}

  /** Where a row came to lie, from its top to its bottom. */
  private record Laid(StripRoute strip, StripFrame frame, double top, double bottom) {
    Spot spot(Place place) {
      double x = frame.x(strip.station(place));
      return new Spot(x, (top + bottom) / 2, top, bottom, 0, 0, 0);
    }
  }

  private StripDrawing(String id, Subject subject, List<Row> rows) {
    this.subject = subject;
    this.words = subject.words();
    this.rows = rows;
    this.strips = StripRoute.of(subject);
    String title = words.say("draw.strip.title", new Argument.Text(subject.book().site().name()));
    this.sheet = new Sheet(id, subject, Sheet.HIGHEST, title, words.word("draw.strip.desc"));
    this.room = sheet.body().height();
    this.legend = new Legend(words);
    // Only measured here; what is drawn has a sheet that is as high as that.
    StripCanvas measuring = canvas(new Labeller(sheet.body()));
    this.high = rows.isEmpty() ? 0 : height(measuring);
    sheet.endBody(sheet.body().y() + high);
    this.labeller = new Labeller(sheet.body());
    this.canvas = canvas(labeller);
    canvas.marks().expect(subject.line().findings().size());
  }

  private StripCanvas canvas(Labeller labels) {
    Marks marks = new Marks(labels, legend);
    return new StripCanvas(subject, sheet, labels, marks, legend, new StripLook(subject));
  }

  /** The strip of every route that was looked into, as high as it takes. */
  public static Tag draw(Subject subject) {
    return drawn(subject).sheet();
  }

  /** The same, and where a place lies on it. */
  public static Drawn drawn(Subject subject) {
    StripDrawing drawing = new StripDrawing(ID, subject, rows(subject));
    drawing.draw();
    double beside = drawing.beside();
    drawing.end(beside <= drawing.high + A_LITTLE ? beside : drawing.high);
    return new Drawn(drawing.sheet.finished(), drawing::spot);
  }

  /** The same on as many sheets as it takes, of which none is higher than it has to be. */
  public static List<Tag> sheets(Subject subject) {
    return drawnSheets(subject).stream().map(Drawn::sheet).toList();
  }

  /** The same sheets, and where a place lies on each. */
  public static List<Drawn> drawnSheets(Subject subject) {
    List<Drawn> sheets = new ArrayList<>();
    List<Row> rest = rows(subject);
    do {
      String id = sheets.isEmpty() ? ID : ID + "-" + (sheets.size() + 1);
      int count = Math.min(1, rest.size());
      StripDrawing drawing = new StripDrawing(id, subject, rest.subList(0, count));
      drawing.draw();
      boolean fits = true;
      while (fits && count < rest.size()) {
        StripDrawing longer = new StripDrawing(id, subject, rest.subList(0, count + 1));
        fits = longer.high <= longer.room;
        if (fits) {
          longer.draw();
          fits = longer.beside() <= longer.room;
        }
        if (fits) {
          drawing = longer;
          count++;
        }
      }
      drawing.end(Math.min(drawing.room, drawing.beside()));
      sheets.addAll(Drawn.first(drawing.sheet.sheets(), drawing::spot));
      rest = rest.subList(count, rest.size());
    } while (!rest.isEmpty());
    return sheets;
  }

  private static List<Row> rows(Subject subject) {
    StripDrawing measuring = new StripDrawing(ID, subject, List.of());
    if (measuring.strips.isEmpty()) {
      return List.of();
    }
    StripScale scale = measuring.scale();
    return measuring.strips.stream()
        .flatMap(strip -> scale.cuts(strip).stream().map(cut -> new Row(strip, cut)))
        .toList();
  }

  private Optional<Spot> spot(Place place) {
    return bands.stream()
        .filter(band -> band.strip().holds(place))
        .filter(band -> band.frame().holds(band.strip().station(place)))
        .findFirst()
        .map(band -> band.spot(place));
  }

  private StripScale scale() {
    return StripScale.of(strips.getFirst(), largest(), Sheet.BODY - LEFT - RIGHT, words.shown());
  }

  /** How high the side column is, with what it wants free below its last line. */
  private double beside() {
    return sheet.sideHeight() + SIDE_REST;
  }

  /** Makes the sheet as high as its rows and what stands beside them, and no lower than usual. */
  private void end(double beside) {
    double least = LEAST - (Sheet.HIGHEST - room);
    sheet.endBody(sheet.body().y() + Math.max(least, Math.max(high, beside)));
  }

  private List<StripScale.Cut> cuts(StripRoute strip) {
    return rows.stream().filter(row -> row.strip().equals(strip)).map(Row::cut).toList();
  }

  /** How high its rows stand. */
  private double height(StripCanvas measuring) {
    StripScale scale = scale();
    double height = 0;
    for (StripRoute strip : strips) {
      List<StripPiece> pieces = StripPiece.of(strip, measuring.look());
      List<StripItem> items = StripItem.of(strip, measuring.look());
      List<StripScale.Cut> cuts = cuts(strip);
      for (StripScale.Cut cut : cuts) {
        height += StripBand.height(measuring, strip, pieces, items, scale, cut);
      }
      height += cuts.isEmpty() ? 0 : HEAD + FOOT + BETWEEN;
    }
    return height;
  }

  private void draw() {
    if (rows.isEmpty()) {
      sheet.note(words.word("draw.nothing"));
      return;
    }
    patterns();
    StripScale scale = scale();
    double y = sheet.body().y();
    for (StripRoute strip : strips) {
      List<StripScale.Cut> cuts = cuts(strip);
      y = cuts.isEmpty() ? y : strip(strip, cuts, scale, y);
    }
    sheet.add(canvas.marks().settled());
    side();
  }

  private double largest() {
    return strips.stream()
        .flatMap(strip -> StripPiece.of(strip, new StripLook(subject)).stream())
        .mapToDouble(StripPiece::bore)
        .max()
        .orElse(StripPiece.NOMINAL);
  }

  private void patterns() {
    sheet.define(Pen.stripes(sheet.unique("water"), Ink.WATER, 0, 4));
    sheet.define(Pen.dashes(sheet.unique("flowing"), Ink.WATER));
    sheet.define(Pen.dots(sheet.unique("dirt"), Ink.DARK));
  }

  private double strip(StripRoute strip, List<StripScale.Cut> cuts, StripScale scale, double top) {
    double y = head(strip, top);
    List<StripPiece> pieces = StripPiece.of(strip, canvas.look());
    List<StripItem> items = StripItem.of(strip, canvas.look());
    Box body = sheet.body();
    for (StripScale.Cut cut : cuts) {
      Box room = new Box(body.x() + LEFT, y, scale.width(), 0);
      double bottom = StripBand.draw(canvas, strip, pieces, items, scale, cut, room);
      bands.add(new Laid(strip, new StripFrame(scale, cut, room.x(), y), y, bottom));
      y = bottom;
    }
    return foot(strip, scale, y) + BETWEEN;
  }

  /** From where to where, how the water goes. */
  private double head(StripRoute strip, double top) {
    double x = sheet.body().x();
    String way = strip.route().from() + " → " + strip.route().to();
    sheet.add(Pen.text(x, top + 9, way, 9, true, Ink.DARK));
    double after = x + Typeface.width(way, 9, true) + 8;
    String text = Pen.cut(told(strip), 8, false, sheet.body().right() - after);
    sheet.add(Pen.text(after, top + 9, text, 8, false, Ink.SOFT));
    labeller.keepClear(new Box(x, top, sheet.body().width(), HEAD - 4));
    return top + HEAD;
  }

  private String told(StripRoute strip) {
    List<String> parts = new ArrayList<>();
    parts.add(words.say("quantity.length", new Argument.Length(strip.length())));
    strip.route().runs().stream()
        .map(run -> run.reach().use())
        .distinct()
        .map(words::name)
        .forEach(parts::add);
    boolean pumped =
        strip.route().runs().stream().anyMatch(run -> run.reach().use() == Reach.Use.PUMPED);
    parts.add(
        words.word(
            !strip.flowKnown()
                ? "draw.strip.flow_unknown"
                : pumped ? "draw.strip.flow_pumped" : "draw.strip.flow_right"));
    if (strip.known() < strip.length() || strip.route().runs().getLast().length() == null) {
      parts.add(words.say("draw.strip.open", new Argument.Label(strip.route().to())));
    }
    return String.join(" · ", parts);
  }

  private double foot(StripRoute strip, StripScale scale, double y) {
    String text =
        words.say("draw.distance", new Argument.Label(strip.route().from()))
            + " · "
            + scale.along().say(words)
            + ", "
            + (scale.times() == 1
                ? words.word("draw.strip.true")
                : words.say("draw.strip.across", new Argument.Number(scale.times())));
    double x = sheet.body().x() + LEFT;
    sheet.add(Pen.text(x, y + 5, Pen.cut(text, 7.5, false, scale.width()), 7.5, false, Ink.SOFT));
    labeller.keepClear(Box.ofText(x, y + 5, text, 7.5, false));
    return y + FOOT;
  }

  private void side() {
    sheet.sideHeading(words.word("draw.legend"));
    sheet.side(legend.signs());
    sheet.note(words.word("draw.strip.look"));
    boolean unknown =
        strips.stream()
            .flatMap(strip -> StripPiece.of(strip, canvas.look()).stream())
            .anyMatch(piece -> piece.recorded() == null);
    if (unknown) {
      sheet.note(words.say("draw.strip.bore_nominal", new Argument.Bore(StripPiece.NOMINAL)));
    }
    boolean rolled =
        strips.stream()
            .flatMap(strip -> strip.findings().stream())
            .anyMatch(f -> f.finding().clock() != null && canvas.look().onWall(f).isEmpty());
    if (rolled) {
      sheet.note(words.word("draw.strip.rolled"));
    }
    List<Argument> left = left();
    if (!left.isEmpty()) {
      sheet.note(words.say("draw.branches", new Argument.Several(left)));
    }
    new SideNotes(subject).grades(sheet);
    sheet.key(words, canvas.marks());
  }

  private List<Argument> left() {
    return subject.line().runs().stream()
        .filter(run -> strips.stream().noneMatch(strip -> strip.holds(run.at(0))))
        .map(run -> (Argument) new Argument.Label(run.reach().label()))
        .toList();
  }
}
