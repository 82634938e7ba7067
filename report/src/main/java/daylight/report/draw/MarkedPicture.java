package daylight.report.draw;

import daylight.line.book.Finding;
import daylight.report.markup.Tag;
import daylight.report.shots.Picture;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture with what to see in it marked: an arc at its edge where on the clock it was noted, and
 * rings that somebody drew round it. The picture lies below as it is; nothing here finds anything
 * in it. White strokes on dark ones read on a light wall, in a dark pipe and without colour.
 *
 * <p>The arc lies about the middle of the picture: a head in the middle of the pipe that looks
 * along it sees the clock there. Sizes are our own choice.
 */
public final class MarkedPicture {
  /** The name of the class that its drawing carries. */
  public static final String CLASS = "marked";

  /** Of the arc, of the smaller side of the picture. */
  private static final double RADIUS = 0.44;

  private static final double TICK = 0.035;
  private static final double DARK_STROKE = 0.020;
  private static final double WHITE_STROKE = 0.010;

  /** To either side of a single position on the clock, radians. */
  private static final double BESIDE = Math.toRadians(9);

  private static final double STEP = Math.toRadians(3);

  private final Picture picture;
  private final double small;
  private final double scale;
  private final List<String> paths = new ArrayList<>();

  /**
   * A picture without marks so far.
   *
   * @param width of the picture that rings were drawn in, pixels; this may be a smaller copy
   */
  public MarkedPicture(Picture picture, int width) {
    this.picture = picture;
    this.small = Math.min(picture.width(), picture.height());
    this.scale = (double) picture.width() / width;
  }

  /** Marks where on the clock it was noted, as the head looks. */
  public void noted(Finding.Clock clock) {
    double turn = clock.to() - clock.from();
    double sweep = turn < 0 ? turn + 2 * Math.PI : turn;
    double from = sweep == 0 ? clock.from() - BESIDE : clock.from();
    double over = sweep == 0 ? 2 * BESIDE : sweep;
    int steps = (int) Math.ceil(over / STEP);
    List<Point> arc = new ArrayList<>();
    arc.add(at(from, RADIUS - TICK));
    for (int i = 0; i <= steps; i++) {
      arc.add(at(from + over * i / steps, RADIUS));
    }
    arc.add(at(from + over, RADIUS - TICK));
    paths.add(Pen.through(arc, false));
  }

  /** Marks what somebody drew a ring round; false where its middle is not in the picture. */
  public boolean ringed(Finding.Outline outline) {
    Point middle = new Point(scale * outline.across(), scale * outline.down());
    if (middle.x() > picture.width() || middle.y() > picture.height()) {
      return false;
    }
    double wide = scale * outline.wide() / 2;
    double high = scale * outline.high() / 2;
    List<Point> ring = new ArrayList<>();
    for (double turn = 0; turn < 2 * Math.PI; turn += STEP) {
      ring.add(
          new Point(
              middle.x() + wide * StrictMath.sin(turn), middle.y() - high * StrictMath.cos(turn)));
    }
    paths.add(Pen.through(ring, true));
    return true;
  }

  private Point at(double clock, double radius) {
    return new Point(
        picture.width() / 2.0 + radius * small * StrictMath.sin(clock),
        picture.height() / 2.0 - radius * small * StrictMath.cos(clock));
  }

  /**
   * The picture and its marks.
   *
   * @param title what it shows
   * @param desc what is marked
   */
  public Tag drawn(String title, String desc) {
    Tag svg =
        Tag.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + picture.width() + " " + picture.height())
            .with("class", CLASS)
            .with("role", "img")
            .with("aria-label", title + " " + desc)
            .add(Tag.of("title", title), Tag.of("desc", desc), image());
    paths.forEach(path -> svg.add(Pen.path(path, Ink.DARK, DARK_STROKE * small)));
    paths.forEach(path -> svg.add(Pen.path(path, Ink.PAPER, WHITE_STROKE * small)));
    return svg;
  }

  private Tag image() {
    return Tag.of("image")
        .with("xmlns:xlink", "http://www.w3.org/1999/xlink")
        .with("xlink:href", picture)
        .with("x", 0)
        .with("y", 0)
        .with("width", picture.width())
        .with("height", picture.height());
  }
}
