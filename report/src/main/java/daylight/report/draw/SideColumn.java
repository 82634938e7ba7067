package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands beside a drawing, piece by piece from top to bottom: headings, signs with their
 * meaning, notes. What a column does not hold goes on in the next; a heading is never the last of
 * one.
 */
final class SideColumn {
  /** How wide a column is, points. */
  static final double WIDTH = 168;

  private static final double SIZE = Sheet.SMALL;
  private static final double LINE = 10;

  /** Between two signs, which are as high as a line and a little. */
  private static final double GAP = 2;

  private final List<Piece> pieces = new ArrayList<>();
  private boolean sparing;

  /**
   * Something that is never broken.
   *
   * @param before room above it, where it is not the first of its column
   * @param height of it, points
   * @param heading whether something has to follow it
   * @param spare whether it may be left out where there is no room
   * @param tag drawn from its upper left corner
   */
  record Piece(
      double before, double height, boolean heading, boolean spare, String text, Tag tag) {}

  /** What is added meanwhile is told elsewhere too, and may be left out all together. */
  void spare(Runnable adding) {
    sparing = true;
    adding.run();
    sparing = false;
  }

  void heading(String text) {
    Tag tag = Pen.text(0, 10, text, 9, true, Ink.DARK);
    pieces.add(new Piece(8, 16, true, sparing, text, tag));
  }

  /** A sign drawn about a point, and what it means. */
  void sign(Tag sign, String meaning, double indent) {
    List<String> lines = Pen.wrap(meaning, SIZE, false, WIDTH - indent - 2);
    Tag group = Tag.of("g").add(Tag.of("g").with("transform", "translate(8 7)").add(sign));
    for (int i = 0; i < lines.size(); i++) {
      group.add(Pen.text(indent, 10 + LINE * i, lines.get(i), SIZE, false, Ink.DARK));
    }
    pieces.add(new Piece(0, GAP + LINE * lines.size(), false, sparing, meaning, group));
  }

  void note(String text) {
    List<String> lines = Pen.wrap(text, SIZE, true, WIDTH);
    Tag group = Tag.of("g");
    for (int i = 0; i < lines.size(); i++) {
      group.add(Pen.text(0, 10 + LINE * i, lines.get(i), SIZE, true, Ink.DARK));
    }
    pieces.add(new Piece(6, LINE * lines.size(), false, sparing, text, group));
  }

  /** The same closer together, for a column that would hold it then. */
  SideColumn tight() {
    SideColumn tight = new SideColumn();
    for (Piece piece : pieces) {
      double height = piece.heading() ? 14 : piece.height() - (piece.before() == 0 ? GAP : 0);
      double before = Math.max(0, piece.before() - 3);
      tight.pieces.add(
          new Piece(before, height, piece.heading(), piece.spare(), piece.text(), piece.tag()));
    }
    return tight;
  }

  /** The same without what may be left out. */
  SideColumn needed() {
    SideColumn needed = new SideColumn();
    pieces.stream().filter(piece -> !piece.spare()).forEach(needed.pieces::add);
    return needed;
  }

  List<Piece> pieces() {
    return pieces;
  }

  /** How high all of these stand in one column. */
  static double height(List<Piece> pieces) {
    double height = 0;
    for (int i = 0; i < pieces.size(); i++) {
      height += (i == 0 ? 0 : pieces.get(i).before()) + pieces.get(i).height();
    }
    return height;
  }

  /** How many of these fit into a column from the first on; at least one where there is any. */
  static int fitting(List<Piece> pieces, double room) {
    double height = 0;
    int count = 0;
    for (int i = 0; i < pieces.size(); i++) {
      height += (i == 0 ? 0 : pieces.get(i).before()) + pieces.get(i).height();
      if (height > room + 1e-6) {
        break;
      }
      count = i + 1;
    }
    while (count > 0 && count < pieces.size() && pieces.get(count - 1).heading()) {
      count--;
    }
    return pieces.isEmpty() ? 0 : Math.max(1, count);
  }

  /** The columns these need, none higher than the room; more than wanted where that is too low. */
  static List<List<Piece>> columns(List<Piece> pieces, double room) {
    List<List<Piece>> columns = new ArrayList<>();
    List<Piece> rest = pieces;
    while (!rest.isEmpty()) {
      int count = fitting(rest, room);
      columns.add(rest.subList(0, count));
      rest = rest.subList(count, rest.size());
    }
    return columns;
  }

  /** The lowest room in which these fit into so many columns, no heading by itself. */
  static double balanced(List<Piece> pieces, int columns) {
    double room = height(pieces) / columns;
    for (int i = 0; i < pieces.size(); i++) {
      boolean two = pieces.get(i).heading() && i + 1 < pieces.size();
      room = Math.max(room, height(pieces.subList(i, i + (two ? 2 : 1))));
    }
    while (columns(pieces, room).size() > columns) {
      room += LINE / 2;
    }
    return room;
  }

  /** Draws a column from its upper left corner. */
  static Tag drawn(List<Piece> column, double x, double top) {
    Tag group = Tag.of("g");
    double y = top;
    for (int i = 0; i < column.size(); i++) {
      Piece piece = column.get(i);
      y += i == 0 ? 0 : piece.before();
      group.add(
          Tag.of("g")
              .with("transform", "translate(" + Tag.number(x) + " " + Tag.number(y) + ")")
              .add(piece.tag()));
      y += piece.height();
    }
    return group;
  }
}
