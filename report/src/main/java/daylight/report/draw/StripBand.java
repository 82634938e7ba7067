package daylight.report.draw;

import daylight.line.course.PlacedPass;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.stream.Collectors;

/** One row of a strip: what lies between two distances. */
final class StripBand {
  private static final double LABEL_LINE = 190;
  private static final int MOST_LINES = 7;

  private final StripCanvas canvas;
  private final StripRoute strip;
  private final List<StripPiece> pieces;
  private final List<StripItem> items;
  private final List<PlacedPass> passes;
  private final List<StripStills.Hung> pictures;
  private final StripFrame frame;
  private final StripRows rows;

  private StripBand(
      StripCanvas canvas,
      StripRoute strip,
      List<StripPiece> pieces,
      List<StripItem> items,
      StripScale scale,
      StripScale.Cut cut,
      Box room) {
    this.canvas = canvas;
    this.strip = strip;
    this.pieces = pieces;
    StripFrame flat = new StripFrame(scale, cut, room.x(), 0);
    this.items =
        items.stream()
            .filter(i -> i.isStretch() ? flat.meets(i.from(), i.to()) : flat.holds(i.from()))
            .toList();
    this.passes = strip.passes().stream().filter(pass -> isOn(pass, flat)).toList();
    double pipe =
        pieces.stream()
            .filter(p -> flat.meets(p.from(), p.to()))
            .mapToDouble(StripPiece::bore)
            .max()
            .orElse(StripPiece.NOMINAL);
    this.pictures = StripStills.chosen(canvas.subject(), this.items, flat);
    this.rows =
        StripRows.from(
            room.y(),
            !pictures.isEmpty(),
            lines(false),
            pipe * scale.across(),
            lines(true),
            passes.size(),
            canvas.subject().line().locates().stream()
                .anyMatch(f -> strip.holds(f.place()) && flat.holds(strip.station(f.place()))));
    this.frame = new StripFrame(scale, cut, room.x(), rows.invert());
  }

  /** Draws a band from the upper left corner of a box; where it ends. */
  static double draw(
      StripCanvas canvas,
      StripRoute strip,
      List<StripPiece> pieces,
      List<StripItem> items,
      StripScale scale,
      StripScale.Cut cut,
      Box room) {
    return new StripBand(canvas, strip, pieces, items, scale, cut, room).draw();
  }

  /** How high a band is. */
  static double height(
      StripCanvas canvas,
      StripRoute strip,
      List<StripPiece> pieces,
      List<StripItem> items,
      StripScale scale,
      StripScale.Cut cut) {
    Box room = new Box(0, 0, scale.width(), 0);
    return new StripBand(canvas, strip, pieces, items, scale, cut, room).rows.bottom();
  }

  private boolean isOn(PlacedPass pass, StripFrame flat) {
    return pass.legs().stream()
        .filter(leg -> strip.holds(leg.from()))
        .anyMatch(
            leg -> {
              double a = strip.station(leg.from());
              double b = strip.station(leg.to());
              return flat.meets(Math.min(a, b), Math.max(a, b));
            });
  }

  /** How many lines the labels above or below the pipe are given. */
  private int lines(boolean low) {
    long labels =
        items.stream()
            .filter(item -> !item.isPlainJoint() && item.isLow() == low)
            .filter(item -> pictures.stream().noneMatch(hung -> hung.item().equals(item)))
            .count();
    double width = Sheet.BODY;
    return Math.clamp((int) Math.ceil((labels + 1) * LABEL_LINE / width), 1, MOST_LINES);
  }

  private double draw() {
    canvas
        .sheet()
        .add(
            Tag.of("g")
                .with("data-band-from", frame.cut().from())
                .with("data-band-to", frame.cut().to())
                .with("data-band-left", frame.left())
                .with("data-band-right", frame.right()));
    new StripPipe(canvas, strip, pieces, frame, rows).draw();
    new StripTracks(canvas, strip, frame, rows).draw(passes);
    StripNodes nodes = new StripNodes(canvas, strip, pieces, frame);
    List<Box> signs = nodes.draw();
    double pinned = canvas.marks().numberRoom(new Point(0, 0), false).width() + 0.2;
    StripPins pins = new StripPins(items, pieces, frame, pictures, nodes.low(), signs, pinned);
    nodes.label(pins);
    StripFindings findings = new StripFindings(canvas, pieces, frame, pins, signs);
    findings.fillings(items);
    new StripStills(canvas, frame, rows, pins).draw(pictures);
    findings.draw(items, pictures.stream().map(StripStills.Hung::item).collect(Collectors.toSet()));
    return rows.bottom();
  }
}
