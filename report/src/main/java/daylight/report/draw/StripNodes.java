package daylight.report.draw;

import daylight.line.book.Node;
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

  /** Draws them; where their signs are. */
  List<Box> draw() {
    strip.ends().stream().filter(end -> frame.holds(end.station())).forEach(this::node);
    return signs;
  }

  private void node(StripRoute.End end) {
    Node.Kind kind = strip.kind(end.node());
    double x = frame.x(end.station());
    double bore = StripPiece.at(pieces, end.station() - 1e-6).bore();
    double crown = frame.y(bore) - StripRows.WALL;
    boolean above = kind == Node.Kind.ACCESS || kind == Node.Kind.INLET;
    Point sign = new Point(x, above ? crown - RISER : (frame.y(bore) + frame.y(0)) / 2);
    Tag group = Pen.at(strip.route().place(end.station()));
    if (above) {
      group.add(Pen.path(riser(x, crown), Ink.DRAIN, 1.2));
    } else {
      Stroke through = new Stroke(x, frame.y(bore), x, frame.y(0));
      group.add(Pen.line(through, Ink.SOFT, 0.8).with("stroke-dasharray", "2 2"));
    }
    Box room = Box.around(sign.x(), sign.y(), Symbols.RADIUS);
    canvas.solid(
        strip.route().place(end.station()),
        room,
        group.add(Symbols.node(kind, sign.x(), sign.y())));
    canvas.legend().use(kind);
    signs.add(room);
    double below = frame.y(0) + StripRows.WALL + StripRows.WHISKER + 3;
    Point anchor = above ? sign : new Point(x, below);
    String text = Captions.node(strip.subject(), end.node()) + side(end);
    canvas.marks().write(Tag.of("g"), anchor, above ? 5.5 : 1.5, null, text, true);
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

  /** From which side a pipe joins, by the finding that is this node. */
  private String side(StripRoute.End end) {
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
