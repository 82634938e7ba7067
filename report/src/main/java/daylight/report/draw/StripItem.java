package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A finding or a bend, ready to be drawn on a strip.
 *
 * @param placed the finding; null for a bend
 * @param from station, metres
 * @param to station of its end; the same for something at one place
 * @param sd standard uncertainty of its station, metres
 * @param symbol id of its sign
 * @param wall where on the wall; empty when that is not known or means nothing
 * @param text in a word or two, without its distance
 * @param rank how much it matters, 0 the most
 */
record StripItem(
    @Nullable PlacedFinding placed,
    Place place,
    double from,
    double to,
    double sd,
    String symbol,
    Optional<StripLook.OnWall> wall,
    String text,
    int rank) {
  /** The signs of what is on one side of the pipe or the other. */
  private static final Set<String> SIDED = Set.of("stop", "roots", "crack", "joint", "join");

  boolean isStretch() {
    return to > from;
  }

  /** Whether it begins on a band; where two bands meet a stretch begins on the second. */
  boolean begins(StripFrame frame) {
    return isStretch() ? from >= frame.cut().from() && from < frame.cut().to() : frame.holds(from);
  }

  boolean isStop() {
    return symbol.equals("stop");
  }

  /** A joint that is just there, as every few feet there is one. */
  boolean isPlainJoint() {
    return placed != null && placed.finding().kind().equals("joint");
  }

  /** Whether it is found in the lower half of the pipe; what fills a pipe lies, unless it hangs. */
  boolean isLow() {
    boolean content = placed != null && StripContents.isContent(placed);
    return wall.map(on -> content ? !on.isHigh() : on.height() < 0.45).orElse(content);
  }

  /** What it is, as a noun phrase. */
  String kind(Words words) {
    return words.kind(placed == null ? "bend" : placed.finding().kind());
  }

  /** The picture of it; null where there is none. */
  @Nullable Still still(Subject subject) {
    return placed == null || isPlainJoint()
        ? null
        : subject.shots().of(placed.finding().label()).orElse(null);
  }

  /** What a strip shows besides its nodes, what matters most first. */
  static List<StripItem> of(StripRoute strip, StripLook look) {
    List<StripItem> items = new ArrayList<>();
    for (PlacedFinding placed : strip.findings()) {
      if (placed.finding().node() == null) {
        items.add(of(strip, look, placed));
      }
    }
    for (PlacedPass pass : strip.passes()) {
      pass.bends().stream()
          .filter(bend -> strip.holds(bend.place()))
          .forEach(bend -> items.add(of(strip, look, pass, bend)));
    }
    items.sort(
        Comparator.comparingInt((StripItem item) -> item.rank())
            .thenComparingDouble(item -> item.from()));
    return items;
  }

  private static StripItem of(StripRoute strip, StripLook look, PlacedFinding placed) {
    Subject subject = strip.subject();
    Optional<StripLook.OnWall> wall = look.onWall(placed);
    String symbol = Symbols.known(subject.symbol(placed.finding().kind()));
    String size = size(subject.words(), placed);
    String text = subject.words().shortKind(placed.finding().kind());
    return new StripItem(
        placed,
        placed.from(),
        strip.station(placed.from()),
        strip.end(placed),
        placed.sd(),
        symbol,
        wall,
        (size.isEmpty() ? text : text + " " + size)
            + (SIDED.contains(symbol) ? side(subject.words(), wall) : ""),
        Captions.rank(subject, placed));
  }

  private static StripItem of(
      StripRoute strip, StripLook look, PlacedPass pass, PlacedPass.PlacedBend bend) {
    Words words = strip.subject().words();
    String text =
        words.say(
            "draw.strip.bend",
            new Argument.Quantity(Dimension.ANGLE, bend.bend().angle().value()),
            new Argument.Text(words.name(look.sense(pass.pass(), bend.place(), bend.bend()))));
    double at = strip.station(bend.place());
    return new StripItem(
        null, bend.place(), at, at, bend.sd(), "bend", Optional.empty(), text, Captions.FEATURE);
  }

  /** The size that says most: how much of the bore, or how deep. */
  private static String size(Words words, PlacedFinding placed) {
    Reading depth = placed.finding().quantities().get("depth");
    Reading share = placed.finding().quantities().get("share");
    if (depth != null && depth.value() >= 0) {
      return words.say("quantity.depth", new Argument.Small(depth.value()));
    }
    boolean said = share != null && share.value() >= 0 && share.value() <= 1;
    return said && share != null
        ? words.figure(new Argument.Quantity(Dimension.SHARE, share.value()))
        : "";
  }

  private static String side(Words words, Optional<StripLook.OnWall> wall) {
    int side = wall.map(StripLook.OnWall::side).orElse(0);
    return side == 0 ? "" : " " + words.word(side > 0 ? "draw.strip.right" : "draw.strip.left");
  }

  /** Its text with where it is. */
  String label(Words words) {
    String where =
        isStretch()
            ? words.say(
                "place.from_to",
                new Argument.Text(words.length(from)),
                new Argument.Text(words.length(to)))
            : words.length(from);
    return text + ", " + where;
  }
}
