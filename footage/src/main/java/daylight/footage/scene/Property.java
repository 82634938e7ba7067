package daylight.footage.scene;

import daylight.line.book.Finding;
import daylight.line.measure.Reading;
import java.util.Optional;

/**
 * A finding turned into what is put into the pipe. Sizes that the book leaves out take a usual one;
 * common practice, no source.
 *
 * @param at where it begins, in metres in
 * @param to where it ends
 * @param radius of the pipe there, in metres
 */
record Property(Finding finding, double at, double to, double radius) {
  private static final double BOTTOM = StrictMath.PI;
  private static final double HOUR = StrictMath.PI / 6;
  private static final double USUAL_SHARE = 0.15;

  /** Half the length of a thing along the pipe for which the book gives one place. */
  private static final double HALF = 0.12;

  Optional<Thing> thing() {
    return Optional.ofNullable(
        switch (finding.kind()) {
          case "displaced-joint" -> new Thing.Step(at, size("offset", 0.015), clock(BOTTOM));
          case "open-joint" -> new Thing.Gap(at, size("gap", 0.015));
          case "roots" -> new Thing.Roots(at, to, from(0), upTo(0), size("share", USUAL_SHARE));
          case "junction", "intruding-connection", "defective-connection" ->
              new Thing.Opening(at, clock(3 * HOUR), size("bore", 1.6 * radius));
          case "crack" -> new Thing.Crack(begin(), end(), from(0), upTo(0), size("width", 0.002));
          case "standing-water" ->
              new Thing.Water(begin(), end(), depth(), !"no".equals(finding.words().get("still")));
          case "flowing-water" -> new Thing.Water(begin(), end(), depth(), false);
          case "deposit-loose", "soil-entering" ->
              new Thing.Silt(begin(), end(), size("share", USUAL_SHARE));
          case "obstruction" -> new Thing.Plug(at, clock(BOTTOM), size("share", 0.4));
          case "foreign-pipe" -> new Thing.Crossing(at, size("diameter", 0.025), false);
          case "foreign-cable" -> new Thing.Crossing(at, size("diameter", 0.012), true);
          case "break", "hole", "void-seen", "collapse" -> patch(Thing.Sort.HOLE);
          case "soil-seen" -> patch(Thing.Sort.SOIL);
          case "corrosion" -> patch(Thing.Sort.RUST);
          case "surface-wear", "porous-wall" -> patch(Thing.Sort.WORN);
          case "infiltration" -> patch(Thing.Sort.WET);
          case "grease" -> patch(Thing.Sort.GREASE);
          case "deposit-hard" -> patch(Thing.Sort.SCALE);
          case "repair", "defective-repair" -> patch(Thing.Sort.MENDED);
          default -> null;
        });
  }

  private Thing patch(Thing.Sort sort) {
    return new Thing.Patch(begin(), end(), from(-HOUR), upTo(HOUR), sort);
  }

  private double depth() {
    Reading share = finding.quantities().get("share");
    return size("depth", share == null ? 0.3 * radius : 2 * radius * share.value());
  }

  private double begin() {
    return to > at ? at : at - HALF;
  }

  private double end() {
    return to > at ? to : at + HALF;
  }

  private double size(String quantity, double usual) {
    Reading reading = finding.quantities().get(quantity);
    return reading == null || !(reading.value() > 0) ? usual : reading.value();
  }

  private double clock(double usual) {
    Finding.Clock clock = finding.clock();
    return clock == null ? usual : clock.from();
  }

  /** Where it begins on the wall; a single position is widened, none at all is the crown. */
  private double from(double widened) {
    Finding.Clock clock = finding.clock();
    return clock == null ? widened : single() ? clock.from() + widened : clock.from();
  }

  private double upTo(double widened) {
    Finding.Clock clock = finding.clock();
    return clock == null ? widened : single() ? clock.to() + widened : clock.to();
  }

  private boolean single() {
    Finding.Clock clock = finding.clock();
    return clock != null && clock.from() == clock.to();
  }
}
