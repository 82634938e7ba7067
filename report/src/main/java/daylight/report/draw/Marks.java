package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Labels of one drawing: each with its sign, beside its anchor where there is room, else as a
 * number whose meaning stands in the side column. What found no room, or only a bad one, is tried
 * earlier in the next round; the cheapest round is drawn.
 */
final class Marks {
  private static final int ROUNDS = 12;

  /**
   * What all rounds may cost together, by the square of the labels: of hundreds most are numbers
   * whatever the order.
   */
  private static final int WORK = 120_000;

  private static final double NO_ROOM = 1000;
  private static final double BAD_ROOM = 26;
  private static final double SIZE = Sheet.SMALL;
  private static final double HEIGHT = SIZE * (Typeface.ASCENT + Typeface.DESCENT);
  private static final double SIGN_ROOM = 13;

  private final Labeller labeller;
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<String> numbers = new ArrayList<>();
  private final List<String> meanings = new ArrayList<>();

  private record Wanted(
      Tag into,
      Point at,
      double clearance,
      @Nullable Tag sign,
      String text,
      boolean bold,
      @Nullable Box own) {
    double indent() {
      return sign == null ? 0 : SIGN_ROOM;
    }

    Optional<Labeller.Spot> place(Labeller labeller) {
      double width = indent() + Typeface.width(text, SIZE, bold);
      double height = sign == null ? HEIGHT : Math.max(HEIGHT, 2 * Symbols.RADIUS);
      return labeller.place(at.x(), at.y(), clearance, width, height, own);
    }
  }

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

  Marks(Labeller labeller) {
    this.labeller = labeller;
  }

  List<String> numbers() {
    return numbers;
  }

  List<String> meanings() {
    return meanings;
  }

  /**
   * Asks for a label; the most important are asked for first.
   *
   * @param into where the label's own tags go
   * @param sign the sign before it, drawn about the origin; null for none
   */
  void write(Tag into, Point at, double clearance, @Nullable Tag sign, String text, boolean bold) {
    wanted.add(new Wanted(into, at, clearance, sign, text, bold, null));
  }

  /**
   * The same for one of many in a row, where only a number may fit.
   *
   * @param own room for that number, in which nothing else is written
   */
  void write(Tag into, Point at, @Nullable Tag sign, String text, boolean bold, Box own) {
    labeller.keepClear(own);
    wanted.add(new Wanted(into, at, 1, sign, text, bold, own));
  }

  /** The room for a number of up to two digits right above a point, or right below it. */
  static Box numberRoom(Point at, boolean below) {
    double width = Typeface.width("00", SIZE, true) + 2 * Labeller.GAP;
    double height = HEIGHT + 2;
    return new Box(at.x() - width / 2, below ? at.y() + 2 : at.y() - 2 - height, width, height);
  }

  /** Finds room for everything that was asked for, and draws it. */
  Tag settled() {
    Round best = round(wanted);
    Round last = best;
    int labels = Math.max(1, wanted.size());
    int rounds = Math.min(ROUNDS, WORK / (labels * labels));
    for (int i = 1; i < rounds && !last.above(BAD_ROOM).isEmpty(); i++) {
      Set<Wanted> order = new LinkedHashSet<>(last.above(NO_ROOM - 1));
      order.addAll(last.above(BAD_ROOM));
      order.addAll(last.order());
      last = round(List.copyOf(order));
      best = last.cost() < best.cost() ? last : best;
    }
    draw(best);
    Tag layer = Tag.of("g");
    wanted.forEach(one -> layer.add(one.into()));
    return layer;
  }

  private Round round(List<Wanted> order) {
    Labeller fresh = labeller.copy();
    List<Optional<Labeller.Spot>> spots = new ArrayList<>();
    order.forEach(one -> spots.add(one.place(fresh)));
    return new Round(fresh, List.copyOf(order), spots);
  }

  private void draw(Round round) {
    for (int i = 0; i < round.order().size(); i++) {
      Wanted one = round.order().get(i);
      round.spots().get(i).ifPresent(spot -> text(one, spot));
    }
    Set<Wanted> left = new HashSet<>(round.above(NO_ROOM - 1));
    wanted.stream().filter(left::contains).forEach(one -> number(round.labeller(), one));
  }

  private static void text(Wanted one, Labeller.Spot spot) {
    lead(one.into(), spot);
    Box box = spot.box();
    if (one.sign() != null) {
      one.into().add(moved(one.sign(), box.x() + Symbols.RADIUS, box.middleY()));
    }
    one.into().add(Pen.rimmed(box.x() + one.indent(), baseline(box), one.text(), SIZE, one.bold()));
  }

  private void number(Labeller labels, Wanted one) {
    String number = Integer.toString(numbers.size() + 1);
    double width = Typeface.width(number, SIZE, true);
    labels
        .place(one.at().x(), one.at().y(), one.clearance(), width, HEIGHT, one.own())
        .ifPresent(
            spot -> {
              lead(one.into(), spot);
              one.into().add(Pen.rimmed(spot.box().x(), baseline(spot.box()), number, SIZE, true));
            });
    numbers.add(number);
    meanings.add(one.text());
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
