package daylight.report.draw;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Reading;
import daylight.report.markup.Tag;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What fills the pipe: water and deposits, as high as they were noted, to the pipe's scale. */
final class StripContents {
  private static final Set<String> WATER = Set.of("standing-water", "flowing-water");
  private static final Set<String> DEPOSITS = Set.of("deposit-loose", "deposit-hard", "grease");

  /** How wide something is drawn that was noted at one place only, points. */
  private static final double NARROW = 7;

  private final StripCanvas canvas;
  private final StripFrame frame;

  StripContents(StripCanvas canvas, StripFrame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  /** Whether a finding is drawn as a filling; one whose height nobody noted is not. */
  static boolean fills(PlacedFinding placed, double bore) {
    return height(placed, bore) > 0;
  }

  static boolean isWater(PlacedFinding placed) {
    return WATER.contains(placed.finding().kind());
  }

  /** Whether it is of a kind that fills part of the bore. */
  static boolean isContent(PlacedFinding placed) {
    return isWater(placed) || DEPOSITS.contains(placed.finding().kind());
  }

  /** Its height in the pipe, metres: as noted, or as a share of the bore; 0 when neither was. */
  static double height(PlacedFinding placed, double bore) {
    Map<String, Reading> sizes = placed.finding().quantities();
    boolean deposit = DEPOSITS.contains(placed.finding().kind());
    if (!isContent(placed)) {
      return 0;
    }
    Reading noted = sizes.get(deposit ? "height" : "depth");
    double height = noted != null ? noted.value() : share(sizes.get("share")) * bore;
    return Math.clamp(height, 0, bore);
  }

  private static double share(@Nullable Reading share) {
    return share == null ? 0 : share.value();
  }

  void draw(PlacedFinding placed, double from, double to, double bore) {
    double height = height(placed, bore);
    boolean point = to <= from;
    if (height <= 0 || (point ? !frame.holds(from) : !frame.meets(from, to))) {
      return;
    }
    boolean hangs =
        !isWater(placed)
            && canvas.look().onWall(placed).filter(StripLook.OnWall::isHigh).isPresent();
    Box box = hangs ? frame.box(from, to, bore - height, bore) : frame.box(from, to, 0, height);
    if (point) {
      box = new Box(box.x() - NARROW / 2, box.y(), NARROW, box.height());
    }
    canvas.sheet().add(Pen.at(placed.from()).add(isWater(placed) ? water(placed, box) : dirt(box)));
  }

  private Tag water(PlacedFinding placed, Box box) {
    boolean still = placed.finding().kind().equals("standing-water");
    canvas.legend().use(still ? Legend.Entry.WATER : Legend.Entry.STRIP_FLOWING);
    Tag surface = Pen.line(new Stroke(box.x(), box.y(), box.right(), box.y()), Ink.WATER, 1.2);
    return canvas
        .washed(box, Ink.WATER, still ? "water" : "flowing")
        .add(still ? surface : surface.with("stroke-dasharray", "6 3"));
  }

  private Tag dirt(Box box) {
    canvas.legend().use(Legend.Entry.STRIP_DEPOSIT);
    return Tag.of("g")
        .add(Pen.box(box, Ink.PAPER, "none"))
        .add(
            Pen.box(box, "url(#" + canvas.sheet().unique("dirt") + ")", Ink.DARK)
                .with("stroke-width", 0.8));
  }
}
