package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The signs that one drawing used, and what they mean. */
final class Legend {
  private final Words words;
  private final Set<Entry> entries = EnumSet.noneOf(Entry.class);
  private final Set<Node.Kind> nodes = EnumSet.noneOf(Node.Kind.class);
  private final Set<Landmark.Kind> landmarks = EnumSet.noneOf(Landmark.Kind.class);
  private final Set<Papers.Service> services = EnumSet.noneOf(Papers.Service.class);
  private final Set<Papers.Service> ways = EnumSet.noneOf(Papers.Service.class);
  private final Set<String> symbols = new TreeSet<>();
  private final Set<String> others = new LinkedHashSet<>();

  /** What is neither a node, a landmark nor a finding. */
  enum Entry {
    LINE,
    LINE_UNKNOWN,
    LINE_WHOLE,
    SHEET,
    SEEN_CLEAR,
    SEEN_POOR,
    SEEN_BLIND,
    SEEN_NOT_NOTED,
    SEEN_NOT,
    BAND,
    STRETCH,
    STRETCH_WATER,
    ELLIPSE,
    LOCATE,
    LOCATE_OTHER,
    FINDING_OTHER,
    EXPOSURE,
    GROUND,
    GROUND_ASSUMED,
    CROWN,
    INVERT,
    BOTTOM_BAND,
    WATER,
    POOL,
    READING,
    BREAK,
    STRIP_WALL,
    STRIP_GUESSED,
    STRIP_BREAK,
    STRIP_FLOW,
    STRIP_FLOWING,
    STRIP_DEPOSIT,
    STRIP_JOINT,
    STRIP_STRETCH,
    STRIP_DOUBT,
    STRIP_CLEAR,
    STRIP_POOR,
    STRIP_BLIND,
    STRIP_NOT_NOTED,
    STRIP_NOT_SEEN,
    STRIP_PUSH,
    STRIP_STOPPED
  }

  Legend(Words words) {
    this.words = words;
  }

  void use(Entry entry) {
    entries.add(entry);
  }

  /** Uses a sign of another visit than the one that was judged. */
  void use(Entry entry, String visit) {
    entries.add(entry);
    others.add(visit);
  }

  void use(Node.Kind kind) {
    nodes.add(kind);
  }

  void use(Landmark.Kind kind) {
    landmarks.add(kind == Landmark.Kind.TREE ? kind : Landmark.Kind.OTHER);
  }

  /** Uses the mark of a service where it was seen at one place. */
  void use(Papers.Service service) {
    services.add(service);
  }

  /** Uses the mark of a service that runs from place to place. */
  void useWay(Papers.Service service) {
    services.add(service);
    ways.add(service);
  }

  void use(String symbol) {
    symbols.add(symbol);
  }

  List<Sheet.Sign> signs() {
    List<Sheet.Sign> signs = new ArrayList<>();
    if (symbols.contains("stop")) {
      signs.add(finding("stop"));
    }
    for (Papers.Service service : services) {
      String key = "draw.legend.service." + service.name().toLowerCase(java.util.Locale.ROOT);
      signs.add(new Sheet.Sign(ServiceInk.sign(service, ways.contains(service)), words.word(key)));
    }
    for (Entry entry : entries) {
      String key = "draw.legend." + entry.name().toLowerCase(java.util.Locale.ROOT);
      signs.add(new Sheet.Sign(sign(entry), meaning(entry, key)));
    }
    nodes.forEach(kind -> signs.add(new Sheet.Sign(Symbols.node(kind, 0, 0), words.name(kind))));
    for (Landmark.Kind kind : landmarks) {
      String meaning =
          kind == Landmark.Kind.TREE ? words.name(kind) : words.word("draw.legend.landmark");
      signs.add(new Sheet.Sign(Symbols.landmark(kind, 0, 0), meaning));
    }
    symbols.stream()
        .filter(symbol -> !symbol.equals("stop"))
        .forEach(symbol -> signs.add(finding(symbol)));
    return signs;
  }

  private String meaning(Entry entry, String key) {
    return entry == Entry.LOCATE_OTHER || entry == Entry.FINDING_OTHER
        ? words.say(
            key, new Argument.Several(others.stream().<Argument>map(Argument.Label::new).toList()))
        : words.word(key);
  }

  private Sheet.Sign finding(String symbol) {
    return new Sheet.Sign(Symbols.finding(symbol, 0, 0), words.word("symbol." + symbol));
  }

  private static Tag sign(Entry entry) {
    return switch (entry) {
      case LINE ->
          Tag.of("g")
              .add(Pen.path("M-9 0H9", Ink.DRAIN, SeenStroke.STROKE))
              .add(Pen.path("M-2.5 -4.5L2.5 0L-2.5 4.5", Ink.DARK, 1.4));
      case LINE_UNKNOWN ->
          Pen.path("M-9 0H9", Ink.DRAIN, SeenStroke.STROKE).with("stroke-dasharray", "7 6");
      case LINE_WHOLE -> Pen.path("M-9 0H9", Ink.DRAIN, SeenStroke.STROKE);
      case SHEET -> Pen.path("M-9 -4H9V4H-9Z", Ink.SOFT, 0.9).with("stroke-dasharray", "6 3");
      case SEEN_CLEAR -> SeenStroke.sign(Sight.Seen.CLEAR);
      case SEEN_POOR -> SeenStroke.sign(Sight.Seen.POOR);
      case SEEN_BLIND -> SeenStroke.sign(Sight.Seen.BLIND);
      case SEEN_NOT_NOTED -> SeenStroke.sign(Sight.Seen.NOT_NOTED);
      case SEEN_NOT -> SeenStroke.sign(Sight.Seen.NOT_SEEN);
      case STRETCH -> PlanCourse.stretchStroke("M-9 0H9", false);
      case STRETCH_WATER -> PlanCourse.stretchStroke("M-9 0H9", true);
      case LOCATE_OTHER -> Symbols.otherLocate(0, 0);
      case FINDING_OTHER -> Symbols.otherFinding(0, 0);
      case BREAK -> ProfileBreaks.sign();
      case BAND, BOTTOM_BAND ->
          Tag.of("g")
              .add(Pen.filled("M-9 -4H9V4H-9Z", Ink.DRAIN).with("fill-opacity", 0.15))
              .add(Pen.path("M-7 4L1 -4M-2 4L6 -4", Ink.DRAIN, 0.7));
      case ELLIPSE ->
          Tag.of("ellipse")
              .with("rx", 7)
              .with("ry", 4)
              .with("fill", "none")
              .with("stroke", Ink.SOFT)
              .with("stroke-width", 0.9)
              .with("stroke-dasharray", "2 1.5");
      case LOCATE -> Symbols.locate(0, 0);
      case EXPOSURE -> Symbols.exposure(0, 0);
      case GROUND -> Pen.path("M-9 0H9", Ink.DARK, 1.6);
      case GROUND_ASSUMED -> Pen.path("M-9 0H9", Ink.DARK, 1.6).with("stroke-dasharray", "5 4");
      case CROWN -> Pen.path("M-9 0H9", Ink.DRAIN, 1);
      case INVERT -> Pen.path("M-9 0H9", Ink.DRAIN, 2.4);
      case WATER ->
          Tag.of("g")
              .add(Pen.filled("M-9 -3H9V4H-9Z", Ink.WATER).with("fill-opacity", 0.3))
              .add(Pen.path("M-9 -3H9M-6 4V-3M-1 4V-3M4 4V-3", Ink.WATER, 0.9));
      case POOL -> Pen.path("M-9 -2H9", Ink.WATER, 1.2).with("stroke-dasharray", "3 2");
      case READING ->
          Tag.of("g")
              .add(Pen.path("M0 -6V6M-2.5 -6H2.5M-2.5 6H2.5", Ink.DARK, 1))
              .add(Pen.circle(0, 0, 2, Ink.PAPER, Ink.DARK, 1.1));
      case STRIP_WALL,
          STRIP_GUESSED,
          STRIP_BREAK,
          STRIP_FLOW,
          STRIP_FLOWING,
          STRIP_DEPOSIT,
          STRIP_JOINT,
          STRIP_STRETCH,
          STRIP_DOUBT,
          STRIP_CLEAR,
          STRIP_POOR,
          STRIP_BLIND,
          STRIP_NOT_NOTED,
          STRIP_NOT_SEEN,
          STRIP_PUSH,
          STRIP_STOPPED ->
          StripSigns.of(entry);
    };
  }
}
