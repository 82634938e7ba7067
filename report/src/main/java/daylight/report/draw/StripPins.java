package daylight.report.draw;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The pins of one band: each from a finding's distance at the wall out to where its label or the
 * leader of its picture begins, so far from its neighbours that a number fits above each.
 */
final class StripPins {
  private final Map<StripItem, Pin> pins = new HashMap<>();
  private final List<StripPiece> pieces;
  private final StripFrame frame;
  private final List<StripStills.Hung> pictures;

  /** From the wall out. */
  record Pin(Point foot, Point head, boolean below) {}

  /**
   * @param signs of nodes, which no pin begins at
   */
  StripPins(
      List<StripItem> items,
      List<StripPiece> pieces,
      StripFrame frame,
      List<StripStills.Hung> pictures,
      List<Box> signs) {
    this.pieces = pieces;
    this.frame = frame;
    this.pictures = pictures;
    List<StripItem> begun =
        items.stream()
            .filter(item -> !item.isPlainJoint() && begins(item))
            .sorted(Comparator.comparingDouble(item -> item.from()))
            .toList();
    side(begun.stream().filter(item -> !below(item)).toList(), signs);
    side(begun.stream().filter(this::below).toList(), List.of());
  }

  /** The pin of a finding that begins on this band. */
  Optional<Pin> of(StripItem item) {
    return Optional.ofNullable(pins.get(item));
  }

  private boolean begins(StripItem item) {
    return item.isStretch()
        ? item.from() >= frame.cut().from() && item.from() < frame.cut().to()
        : frame.holds(item.from());
  }

  private boolean isPictured(StripItem item) {
    return pictures.stream().anyMatch(hung -> hung.item().equals(item));
  }

  private boolean below(StripItem item) {
    return item.isLow() && !isPictured(item);
  }

  private void side(List<StripItem> items, List<Box> signs) {
    double left =
        signs.stream()
            .filter(sign -> sign.x() <= frame.left())
            .mapToDouble(sign -> sign.right() + 2)
            .max()
            .orElse(frame.left() - 6);
    double width = Marks.numberRoom(new Point(0, 0), false).width() + 0.2;
    List<Double> middles =
        Spread.middles(
            items.stream().map(item -> frame.x(item.from())).toList(),
            items.stream().map(item -> width).toList(),
            left,
            frame.right() + 8);
    for (int i = 0; i < items.size(); i++) {
      StripItem item = items.get(i);
      boolean below = below(item);
      double bore = StripPiece.at(pieces, item.from()).bore();
      double off = StripRows.WALL + StripRows.WHISKER;
      double y = below ? frame.y(0) + off : frame.y(bore) - off;
      double out = below ? y + StripRows.PIN : y - StripRows.PIN;
      Point foot = new Point(frame.x(item.from()), y);
      pins.put(item, new Pin(foot, new Point(middles.get(i), out), below));
    }
  }
}
