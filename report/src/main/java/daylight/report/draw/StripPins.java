package daylight.report.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The pins of one band: each from a finding's distance at the wall out to where its label or the
 * leader of its picture begins, so far from its neighbours that a number fits above each. Where
 * there are more than find room in the row, the closest share a head.
 */
final class StripPins {
  private final Map<StripItem, Pin> pins = new HashMap<>();
  private final Map<StripRoute.End, Pin> nodes = new HashMap<>();
  private final List<StripPiece> pieces;
  private final StripFrame frame;
  private final List<StripStills.Hung> pictures;
  private final double width;

  /** From the wall out. */
  record Pin(Point foot, Point head, boolean below) {
    /** What nothing else may cover: the whole of an upright pin, the end of a slanted one. */
    Box room() {
      boolean upright = Math.abs(head.x() - foot.x()) < 1;
      double top = Math.min(foot.y(), head.y());
      double height = Math.abs(head.y() - foot.y());
      return upright
          ? new Box(head.x() - 0.9, top, 1.8, height)
          : Box.around(head.x(), head.y(), 0.9);
    }
  }

  /** A finding, or a node whose label hangs in the same row. */
  private record Wanted(
      double station, @Nullable StripItem item, StripRoute.@Nullable End node, boolean below) {}

  /**
   * @param low nodes whose labels hang below the pipe
   * @param signs of the other nodes, which no pin begins at
   * @param width that a pin keeps for itself, points
   */
  StripPins(
      List<StripItem> items,
      List<StripPiece> pieces,
      StripFrame frame,
      List<StripStills.Hung> pictures,
      List<StripRoute.End> low,
      List<Box> signs,
      double width) {
    this.pieces = pieces;
    this.width = width;
    this.frame = frame;
    this.pictures = pictures;
    List<Wanted> wanted = new ArrayList<>();
    low.forEach(end -> wanted.add(new Wanted(end.station(), null, end, true)));
    items.stream()
        .filter(item -> !item.isPlainJoint() && item.begins(frame))
        .forEach(item -> wanted.add(new Wanted(item.from(), item, null, below(item))));
    wanted.sort(Comparator.comparingDouble(one -> one.station()));
    side(wanted.stream().filter(one -> !one.below()).toList(), signs);
    side(wanted.stream().filter(Wanted::below).toList(), List.of());
  }

  /** The pin of a finding that begins on this band. */
  Optional<Pin> of(StripItem item) {
    return Optional.ofNullable(pins.get(item));
  }

  /** The pin of a node whose label hangs below the pipe. */
  Optional<Pin> of(StripRoute.End node) {
    return Optional.ofNullable(nodes.get(node));
  }

  private boolean isPictured(StripItem item) {
    return pictures.stream().anyMatch(hung -> hung.item().equals(item));
  }

  private boolean below(StripItem item) {
    return item.isLow() && !isPictured(item);
  }

  private void side(List<Wanted> row, List<Box> signs) {
    double left =
        signs.stream()
            .filter(sign -> sign.x() <= frame.left())
            .mapToDouble(sign -> sign.right() + 2)
            .max()
            .orElse(frame.left() - 6);
    double right = frame.right() + 8;
    List<List<Wanted>> heads = heads(row, (int) Math.max(1, (right - left) / width));
    List<Double> middles =
        Spread.middles(
            heads.stream().map(this::middle).toList(),
            Collections.nCopies(heads.size(), width),
            left,
            right);
    for (int i = 0; i < heads.size(); i++) {
      for (Wanted one : heads.get(i)) {
        Pin pin = pin(one, middles.get(i));
        if (one.item() != null) {
          pins.put(one.item(), pin);
        }
        if (one.node() != null) {
          nodes.put(one.node(), pin);
        }
      }
    }
  }

  private double middle(List<Wanted> head) {
    return (frame.x(head.getFirst().station()) + frame.x(head.getLast().station())) / 2;
  }

  /** A head for each, or, where there are too many, one for those that lie closest. */
  private static List<List<Wanted>> heads(List<Wanted> row, int most) {
    List<List<Wanted>> heads = new ArrayList<>();
    row.forEach(one -> heads.add(List.of(one)));
    while (heads.size() > most) {
      int closest = 1;
      for (int i = 2; i < heads.size(); i++) {
        closest = span(heads, i) < span(heads, closest) ? i : closest;
      }
      List<Wanted> both = new ArrayList<>(heads.get(closest - 1));
      both.addAll(heads.remove(closest));
      heads.set(closest - 1, both);
    }
    return heads;
  }

  private static double span(List<List<Wanted>> heads, int i) {
    return heads.get(i).getLast().station() - heads.get(i - 1).getFirst().station();
  }

  private Pin pin(Wanted one, double middle) {
    double bore = StripPiece.at(pieces, one.station()).bore();
    double off = StripRows.WALL + StripRows.WHISKER;
    double y = one.below() ? frame.y(0) + off : frame.y(bore) - off;
    double out = one.below() ? y + StripRows.PIN : y - StripRows.PIN;
    return new Pin(new Point(frame.x(one.station()), y), new Point(middle, out), one.below());
  }
}
