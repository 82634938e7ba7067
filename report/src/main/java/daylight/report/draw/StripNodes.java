package daylight.report.draw;

import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ends of reaches on the strip: each with its sign, and on which side a pipe joins there. */
final class StripNodes {
  private static final double RISER = 9;

  private final StripCanvas canvas;
  private final StripRoute strip;
  private final List<StripPiece> pieces;
  private final StripFrame frame;
  private final List<Box> signs = new ArrayList<>();

  StripNodes(StripCanvas canvas, StripRoute strip, List<StripPiece> pieces, StripFrame frame) {
    this.canvas = canvas;
    this.strip = strip;
    this.pieces = pieces;
    this.frame = frame;
  }

  /** Draws their signs; where these are. */
  List<Box> draw() {
    ends().forEach(this::node);
    return signs;
  }

  /** Those whose labels hang below the pipe. */
  List<StripRoute.End> low() {
    return ends().stream().filter(end -> !isAbove(end)).toList();
  }

  private List<StripRoute.End> ends() {
    return strip.ends().stream().filter(end -> frame.holds(end.station())).toList();
  }

  /** An access point or an inlet opens upward. */
  private boolean isAbove(StripRoute.End end) {
    Node.Kind kind = strip.kind(end.node());
    return kind == Node.Kind.ACCESS || kind == Node.Kind.INLET;
  }

  /** Asks for their labels. */
  void label(StripPins pins) {
    for (StripRoute.End end : ends()) {
      String text = Captions.node(strip.subject(), end.node()) + side(end);
      Tag into = Pen.at(strip.route().place(end.station()));
      Optional<StripPins.Pin> pin = pins.of(end);
      if (pin.isPresent()) {
        Point head = pin.get().head();
        Box own = canvas.marks().numberRoom(head, true);
        canvas.marks().write(into, head, null, text, true, Marks.CARE, own);
      } else {
        canvas.marks().write(into, sign(end), Symbols.RADIUS, text, true);
      }
    }
  }

  private double crown(StripRoute.End end) {
    return frame.y(StripPiece.at(pieces, end.station() - 1e-6).bore());
  }

  private Point sign(StripRoute.End end) {
    double middle = (crown(end) + frame.y(0)) / 2;
    double y = isAbove(end) ? crown(end) - StripRows.WALL - RISER : middle;
    return new Point(frame.x(end.station()), y);
  }

  private void node(StripRoute.End end) {
    Node.Kind kind = strip.kind(end.node());
    Point sign = sign(end);
    Place place = strip.route().place(end.station());
    Tag group = Tag.of("g");
    if (isAbove(end)) {
      group.add(Pen.path(riser(sign.x(), crown(end) - StripRows.WALL), Ink.DRAIN, 1.2));
    } else {
      Stroke through = new Stroke(sign.x(), crown(end), sign.x(), frame.y(0));
      group.add(Pen.line(through, Ink.SOFT, 0.8).with("stroke-dasharray", "2 2"));
    }
    Box room = Box.around(sign.x(), sign.y(), Symbols.RADIUS);
    canvas.solid(place, room, group.add(Symbols.node(kind, sign.x(), sign.y())));
    canvas.legend().use(kind);
    signs.add(room);
  }

  private static String riser(double x, double crown) {
    return "M%s %sV%sM%s %sV%s"
        .formatted(
            Tag.number(x - 3),
            Tag.number(crown),
            Tag.number(crown - RISER),
            Tag.number(x + 3),
            Tag.number(crown),
            Tag.number(crown - RISER));
  }

  /** From which side a pipe joins the one drawn, by the finding that is this node. */
  private String side(StripRoute.End end) {
    if (end.station() <= 0 || end.station() >= strip.length()) {
      return "";
    }
    Optional<PlacedFinding> seen =
        strip.findings().stream()
            .filter(f -> end.node().equals(f.finding().node()))
            .filter(f -> canvas.look().cameThrough(f.pass(), end.run().reach().label()))
            .filter(f -> canvas.look().onWall(f).isPresent())
            .findFirst();
    int side = seen.flatMap(canvas.look()::onWall).map(StripLook.OnWall::side).orElse(0);
    return side == 0
        ? ""
        : ", " + canvas.words().word(side > 0 ? "draw.strip.from_right" : "draw.strip.from_left");
  }
}
