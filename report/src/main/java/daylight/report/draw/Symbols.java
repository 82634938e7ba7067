package daylight.report.draw;

import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.report.markup.Tag;

/** The signs of our drawings, each drawn about a point, about ten points across. */
final class Symbols {
  /** How far a sign reaches from its middle. */
  static final double RADIUS = 5.5;

  private Symbols() {}

  /** A place found from the ground: cross hairs about an open ring. */
  static Tag locate(double x, double y) {
    return about(x, y)
        .add(Pen.circle(0, 0, 2.8, Ink.PAPER, Ink.DARK, 1.3))
        .add(Pen.path("M-5.5 0H-2.8M2.8 0H5.5M0 -5.5V-2.8M0 2.8V5.5", Ink.DARK, 1.3));
  }

  /** The same on another visit than the one that was judged: about an open square. */
  static Tag otherLocate(double x, double y) {
    return about(x, y)
        .add(Pen.box(new Box(-2.6, -2.6, 5.2, 5.2), Ink.PAPER, Ink.SOFT).with("stroke-width", 1.2))
        .add(Pen.path("M-5.5 0H-2.6M2.6 0H5.5M0 -5.5V-2.6M0 2.6V5.5", Ink.SOFT, 1.2));
  }

  /** Something seen in the pipe on another visit: a small open triangle. */
  static Tag otherFinding(double x, double y) {
    return about(x, y)
        .add(Pen.filled("M-2.6 2.2H2.6L0 -2.6Z", Ink.PAPER))
        .add(Pen.path("M-2.6 2.2H2.6L0 -2.6Z", Ink.SOFT, 1));
  }

  /** A pipe laid bare: a filled diamond. */
  static Tag exposure(double x, double y) {
    return about(x, y).add(Pen.filled("M0 -5L5 0L0 5L-5 0Z", Ink.DARK));
  }

  static Tag node(Node.Kind kind, double x, double y) {
    Tag sign = about(x, y);
    return switch (kind) {
      case ACCESS ->
          sign.add(Pen.box(new Box(-5, -5, 10, 10), Ink.PAPER, Ink.DARK).with("stroke-width", 1.6))
              .add(Pen.circle(0, 0, 1.8, Ink.DARK, "none", 0));
      case JUNCTION -> sign.add(Pen.circle(0, 0, 4, Ink.DRAIN, Ink.PAPER, 1.2));
      case OUTLET ->
          sign.add(Pen.filled("M-5 -5H5L0 5Z", Ink.PAPER))
              .add(Pen.path("M-5 -5H5L0 5ZM-5 -1.5H5", Ink.DARK, 1.4));
      case INLET ->
          sign.add(Pen.filled("M-4.5 4.5H4.5L0 -4.5Z", Ink.PAPER))
              .add(Pen.path("M-4.5 4.5H4.5L0 -4.5Z", Ink.DARK, 1.4));
      case PIT ->
          sign.add(Pen.circle(0, 0, 5, Ink.PAPER, Ink.DARK, 1.6))
              .add(Pen.path("M-4 0.5q2 -2 4 0t4 0", Ink.WATER, 1.3));
      case END -> sign.add(Pen.path("M-4 -4L4 4M-4 4L4 -4", Ink.DARK, 1.8));
    };
  }

  static Tag landmark(Landmark.Kind kind, double x, double y) {
    Tag sign = about(x, y);
    return kind == Landmark.Kind.TREE
        ? sign.add(Pen.circle(0, 0, 4.2, Ink.PAPER, Ink.SOFT, 1.2))
            .add(Pen.circle(0, 0, 1.2, Ink.SOFT, "none", 0))
        : sign.add(Pen.box(new Box(-2.6, -2.6, 5.2, 5.2), Ink.SOFT, Ink.PAPER));
  }

  /** The sign of a finding by the catalogue's symbol; one that is not known gets a plain dot. */
  static Tag finding(String symbol, double x, double y) {
    Tag sign = about(x, y);
    return switch (symbol) {
      case "stop" ->
          sign.add(Pen.filled("M-2.3 -5.5H2.3L5.5 -2.3V2.3L2.3 5.5H-2.3L-5.5 2.3V-2.3Z", Ink.STOP))
              .add(Pen.path("M-3 0H3", Ink.PAPER, 2));
      case "roots" ->
          ring(sign)
              .add(Pen.path("M0 4V0L-3 -3M0 0L3 -3M0 2L2.6 0.4M0 0.6L-0.2 -3.6", Ink.DARK, 1));
      case "dirt" -> ring(sign).add(Pen.filled("M-3.4 2.6Q0 -3.4 3.4 2.6Z", Ink.DARK));
      case "water" ->
          ring(sign)
              .add(
                  Pen.path(
                      "M-3.6 -0.8q1.8 -1.8 3.6 0t3.6 0M-3 2q1.5 -1.5 3 0t3 0", Ink.WATER, 1.1));
      case "crack" -> ring(sign).add(Pen.path("M-1 -3.6L1.2 -1L-1.2 1L1 3.6", Ink.DARK, 1.2));
      case "joint" -> ring(sign).add(Pen.path("M-0.8 -3.6V1.4M0.8 -1.4V3.6", Ink.DARK, 1.3));
      case "shape" ->
          ring(sign)
              .add(
                  Tag.of("ellipse")
                      .with("rx", 3.6)
                      .with("ry", 2)
                      .with("fill", "none")
                      .with("stroke", Ink.DARK)
                      .with("stroke-width", 1.1));
      case "join" -> ring(sign).add(Pen.path("M-3.6 1.6H3.6M0 1.6L-2.6 -2.6", Ink.DARK, 1.2));
      case "bend" -> ring(sign).add(Pen.path("M-3 3V0Q-3 -2 -1 -2H3", Ink.DARK, 1.3));
      case "change" -> ring(sign).add(Pen.filled("M0 -4.2A4.2 4.2 0 0 1 0 4.2Z", Ink.DARK));
      default -> ring(sign).add(Pen.circle(0, 0, 1.7, Ink.DARK, "none", 0));
    };
  }

  /** The sign that stands for a symbol of the catalogue; several kinds share one. */
  static String known(String symbol) {
    return switch (symbol) {
      case "foreign-pipe", "foreign-cable", "gas-smell" -> "stop";
      case "roots" -> "roots";
      case "deposit-loose", "deposit-hard", "grease", "obstruction", "soil-entering", "vermin" ->
          "dirt";
      case "standing-water", "flowing-water", "inflow", "infiltration", "exfiltration" -> "water";
      case "crack", "break", "collapse", "hole", "void-seen", "soil-seen" -> "crack";
      case "joint", "displaced-joint", "open-joint", "angled-joint", "intruding-seal" -> "joint";
      case "deformation", "surface-wear", "corrosion", "porous-wall", "lining-defect" -> "shape";
      case "junction", "intruding-connection", "defective-connection" -> "join";
      case "material-change", "bore-change", "lining", "repair", "defective-repair" -> "change";
      case "bend" -> "bend";
      default -> "other";
    };
  }

  private static Tag ring(Tag sign) {
    return sign.add(Pen.circle(0, 0, 5, Ink.PAPER, Ink.DARK, 1));
  }

  private static Tag about(double x, double y) {
    return Tag.of("g").with("transform", "translate(" + Tag.number(x) + " " + Tag.number(y) + ")");
  }
}
