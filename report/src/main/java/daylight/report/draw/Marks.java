package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Labels of one drawing: each with its sign, beside its anchor where there is room, else as a
 * number whose meaning stands in the key. What found no room, or only a bad one, is tried earlier
 * in the next round; the cheapest round is drawn. Where not even a number finds room, the nearest
 * number stands for it too.
 */
final class Marks {
  private static final int ROUNDS = 12;

  /**
   * What all rounds may cost together, by the square of the labels: of hundreds most are numbers
   * whatever the order.
   */
  private static final int WORK = 120_000;

  /** From so many labels on none is led far away: a thicket of leaders tells nobody anything. */
  private static final int MANY = 60;

  private static final double NOT_FAR = 34;

  /** The rank of what may kill: its label goes as far as it has to. */
  static final int STOP = 0;

  /** The rank of what wants care. */
  static final int CARE = 1;

  /** The rank of what matters least. */
  static final int LITTLE = 4;

  private static final double NO_ROOM = 1000;
  private static final double BAD_ROOM = 26;
  private static final double SIZE = Sheet.SMALL;
  private static final double HEIGHT = SIZE * (Typeface.ASCENT + Typeface.DESCENT);
  private static final double SIGN_ROOM = 13;

  private final Labeller labeller;
  private final Legend legend;
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<Numbered> numbered = new ArrayList<>();
  private final List<String> unnumbered = new ArrayList<>();
  private double digit = Typeface.width("00", SIZE, true);

  /**
   * A label that was asked for.
   *
   * @param symbol id of the sign before it; null for none
   * @param rank how much it matters, {@link #STOP} the most
   */
  private record Wanted(
      Tag into,
      Point at,
      double clearance,
      @Nullable String symbol,
      String text,
      boolean bold,
      int rank,
      @Nullable Box own) {
    double indent() {
      return symbol == null ? 0 : SIGN_ROOM;
    }

    boolean mayKill() {
      return rank == STOP;
    }

    Optional<Labeller.Spot> place(Labeller labeller, double furthest) {
      double width = indent() + Typeface.width(text, SIZE, bold);
      double height = symbol == null ? HEIGHT : Math.max(HEIGHT, 2 * Symbols.RADIUS);
      double most = mayKill() ? Double.POSITIVE_INFINITY : furthest;
      Optional<Labeller.Spot> spot =
          labeller.place(at.x(), at.y(), clearance, width, height, own, most);
      return spot.isEmpty() && mayKill()
          ? labeller.placeOverMarks(at.x(), at.y(), clearance, width, height)
          : spot;
    }
  }

  /** A number on the drawing, and all that it stands for. */
  private record Numbered(Point at, List<String> meanings) {}

  private record Round(Labeller labeller, List<Wanted> order, List<Optional<Labeller.Spot>> spots) {
    /** The labels whose room costs more than a limit. */
    List<Wanted> above(double limit) {
      List<Wanted> dear = new ArrayList<>();
      for (int i = 0; i < order.size(); i++) {
        if (cost(i) > limit) {
          dear.add(order.get(i));
        }
      }
      return dear;
    }

    double cost() {
      double sum = 0;
      for (int i = 0; i < order.size(); i++) {
        sum += cost(i);
      }
      return sum;
    }

    private double cost(int i) {
      return spots.get(i).map(Labeller.Spot::cost).orElse(NO_ROOM);
    }
  }

  /**
   * @param legend that is told which signs stand before labels
   */
  Marks(Labeller labeller, Legend legend) {
    this.labeller = labeller;
    this.legend = legend;
  }

  /** What each number stands for, one thing or several, from number one on. */
  List<List<String>> meanings() {
    return numbered.stream().map(one -> List.copyOf(one.meanings())).toList();
  }

  /** What found no room at all on a drawing that has no number either. */
  List<String> unnumbered() {
    return unnumbered;
  }

  /**
   * Asks for a label.
   *
   * @param into where the label's own tags go
   * @param symbol id of the sign before it; null for none
   * @param rank how much it matters, {@link #STOP} the most; of those that matter as much the first
   *     comes first
   */
  void write(
      Tag into,
      Point at,
      double clearance,
      @Nullable String symbol,
      String text,
      boolean bold,
      int rank) {
    wanted.add(new Wanted(into, at, clearance, symbol, text, bold, rank, null));
  }

  /** The same for what has no sign before it and matters as much as whatever wants care. */
  void write(Tag into, Point at, double clearance, String text, boolean bold) {
    write(into, at, clearance, null, text, bold, CARE);
  }

  /**
   * The same for one of many in a row, where only a number may fit.
   *
   * @param own room for that number, in which nothing else is written
   */
  void write(
      Tag into, Point at, @Nullable String symbol, String text, boolean bold, int rank, Box own) {
    labeller.keepClear(own);
    wanted.add(new Wanted(into, at, 1, symbol, text, bold, rank, own));
  }

  /** Says how many labels there may be, so that room is kept for numbers of so many digits. */
  void expect(int labels) {
    digit = Typeface.width(labels > 99 ? "000" : "00", SIZE, true);
  }

  /** The room for a number right above a point, or right below it. */
  Box numberRoom(Point at, boolean below) {
    double width = digit + 2 * Labeller.GAP;
    double height = HEIGHT + 2;
    return new Box(at.x() - width / 2, below ? at.y() + 2 : at.y() - 2 - height, width, height);
  }

  /** Finds room for everything that was asked for, and draws it. */
  Tag settled() {
    double furthest = wanted.size() > MANY ? NOT_FAR : Double.POSITIVE_INFINITY;
    List<Wanted> first =
        wanted.stream().sorted(Comparator.comparingInt((Wanted one) -> one.rank())).toList();
    Round best = round(first, furthest);
    Round last = best;
    int labels = Math.max(1, wanted.size());
    int rounds = Math.min(ROUNDS, WORK / (labels * labels));
    for (int i = 1; i < rounds && !last.above(BAD_ROOM).isEmpty(); i++) {
      Set<Wanted> order = new LinkedHashSet<>(first.stream().filter(Wanted::mayKill).toList());
      order.addAll(last.above(NO_ROOM - 1));
      order.addAll(last.above(BAD_ROOM));
      order.addAll(last.order());
      last = round(List.copyOf(order), furthest);
      best = last.cost() < best.cost() ? last : best;
    }
    draw(best);
    Tag layer = Tag.of("g");
    wanted.forEach(one -> layer.add(one.into()));
    return layer;
  }

  private Round round(List<Wanted> order, double furthest) {
    Labeller fresh = labeller.copy();
    List<Optional<Labeller.Spot>> spots = new ArrayList<>();
    order.forEach(one -> spots.add(one.place(fresh, furthest)));
    return new Round(fresh, List.copyOf(order), spots);
  }

  private void draw(Round round) {
    for (int i = 0; i < round.order().size(); i++) {
      Wanted one = round.order().get(i);
      round.spots().get(i).ifPresent(spot -> text(one, spot));
    }
    Set<Wanted> left = new HashSet<>(round.above(NO_ROOM - 1));
    List<Wanted> without =
        wanted.stream()
            .filter(left::contains)
            .filter(one -> !number(round.labeller(), one))
            .toList();
    without.forEach(this::share);
  }

  private void text(Wanted one, Labeller.Spot spot) {
    lead(one.into(), spot);
    Box box = spot.box();
    if (one.symbol() != null) {
      legend.use(one.symbol());
      one.into().add(Symbols.finding(one.symbol(), box.x() + Symbols.RADIUS, box.middleY()));
    }
    one.into().add(Pen.rimmed(box.x() + one.indent(), baseline(box), one.text(), SIZE, one.bold()));
  }

  /** Writes the next number for a label where there is room; whether there was. */
  private boolean number(Labeller labels, Wanted one) {
    String number = Integer.toString(numbered.size() + 1);
    double width = Typeface.width(number, SIZE, true);
    Optional<Labeller.Spot> found =
        labels.place(
            one.at().x(),
            one.at().y(),
            one.clearance(),
            width,
            HEIGHT,
            one.own(),
            Double.POSITIVE_INFINITY);
    found.ifPresent(
        spot -> {
          lead(one.into(), spot);
          one.into().add(Pen.rimmed(spot.box().x(), baseline(spot.box()), number, SIZE, true));
          numbered.add(new Numbered(one.at(), new ArrayList<>(List.of(one.text()))));
        });
    return found.isPresent();
  }

  private void share(Wanted one) {
    numbered.stream()
        .min(
            Comparator.comparingDouble(
                other ->
                    StrictMath.hypot(other.at().x() - one.at().x(), other.at().y() - one.at().y())))
        .ifPresentOrElse(
            nearest -> nearest.meanings().add(one.text()), () -> unnumbered.add(one.text()));
  }

  private static void lead(Tag into, Labeller.Spot spot) {
    if (spot.leader() != null) {
      into.add(Pen.line(spot.leader(), Ink.SOFT, 0.6));
    }
  }

  private static double baseline(Box box) {
    return box.middleY() + (Typeface.ASCENT - Typeface.DESCENT) * SIZE / 2;
  }
}
