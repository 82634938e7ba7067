package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Labels of one drawing: each with its sign, beside its anchor where there is room, else as a
 * number whose meaning stands in the side column.
 */
final class Marks {
  private static final double SIZE = Sheet.SMALL;
  private static final double HEIGHT = SIZE * (Typeface.ASCENT + Typeface.DESCENT);
  private static final double SIGN_ROOM = 13;

  private final Labeller labeller;
  private final Tag layer = Tag.of("g");
  private final List<String> numbers = new ArrayList<>();
  private final List<String> meanings = new ArrayList<>();

  Marks(Labeller labeller) {
    this.labeller = labeller;
  }

  /** The labels written so far. */
  Tag layer() {
    return layer;
  }

  List<String> numbers() {
    return numbers;
  }

  List<String> meanings() {
    return meanings;
  }

  /**
   * Writes a label.
   *
   * @param into where the label's own tags go
   * @param sign the sign before it, drawn about the origin; null for none
   */
  void write(Tag into, Point at, double clearance, @Nullable Tag sign, String text, boolean bold) {
    double indent = sign == null ? 0 : SIGN_ROOM;
    double width = indent + Typeface.width(text, SIZE, bold);
    double height = sign == null ? HEIGHT : Math.max(HEIGHT, 2 * Symbols.RADIUS);
    layer.add(into);
    labeller
        .place(at.x(), at.y(), clearance, width, height)
        .ifPresentOrElse(
            spot -> {
              lead(into, spot);
              Box box = spot.box();
              if (sign != null) {
                into.add(moved(sign, box.x() + Symbols.RADIUS, box.middleY()));
              }
              into.add(Pen.rimmed(box.x() + indent, baseline(box), text, SIZE, bold));
            },
            () -> number(into, at, clearance, text));
  }

  private void number(Tag into, Point at, double clearance, String text) {
    String number = Integer.toString(numbers.size() + 1);
    double width = Typeface.width(number, SIZE, true);
    labeller
        .place(at.x(), at.y(), clearance, width, HEIGHT)
        .ifPresent(
            spot -> {
              lead(into, spot);
              into.add(Pen.rimmed(spot.box().x(), baseline(spot.box()), number, SIZE, true));
            });
    numbers.add(number);
    meanings.add(text);
  }

  private static void lead(Tag into, Labeller.Spot spot) {
    if (spot.leader() != null) {
      into.add(Pen.line(spot.leader(), Ink.SOFT, 0.6));
    }
  }

  private static double baseline(Box box) {
    return box.middleY() + (Typeface.ASCENT - Typeface.DESCENT) * SIZE / 2;
  }

  private static Tag moved(Tag sign, double x, double y) {
    return Tag.of("g")
        .with("transform", "translate(" + Tag.number(x) + " " + Tag.number(y) + ")")
        .add(sign);
  }
}
