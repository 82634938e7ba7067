package daylight.line.answer;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.urgency.Consequence;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgency;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** How soon each of several findings is to be seen to, and by which row of the rule. */
final class Soon {
  private final Case one;
  private final Telling tell;

  private Soon(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
  }

  /** Tells it word by word, the soonest first. */
  static void tell(Case one, Telling tell, List<PlacedFinding> work) {
    new Soon(one, tell).all(work);
  }

  /** What would make some findings more urgent. */
  private record Doubt(Urgency then, Consequence when) implements Comparable<Doubt> {
    @Override
    public int compareTo(Doubt other) {
      int sooner = then.compareTo(other.then);
      return sooner != 0 ? sooner : when.compareTo(other.when);
    }
  }

  private void all(List<PlacedFinding> work) {
    SortedMap<Urgency, List<PlacedFinding>> soon = new TreeMap<>();
    SortedMap<Doubt, List<PlacedFinding>> doubts = new TreeMap<>();
    List<PlacedFinding> open = new ArrayList<>();
    for (PlacedFinding placed : work) {
      HowSoon how = one.rules().howSoon(placed, one.book(), one.line());
      if (how instanceof HowSoon.CannotSay) {
        open.add(placed);
      }
      if (how instanceof HowSoon.Listed) {
        add(soon, Urgency.AT_ONCE, placed);
        lay(placed, listed());
      }
      if (how instanceof HowSoon.Ruled ruled) {
        add(soon, ruled.urgency(), placed);
        lay(placed, row(ruled));
        Urgency worst = ruled.atWorst();
        if (worst != null && worst != ruled.urgency()) {
          add(doubts, new Doubt(worst, ruled.unknown().getFirst()), placed);
        }
      }
    }
    soon.forEach((word, placed) -> tell.reason(SoonKey.SOON, term(word), items(placed)));
    if (!open.isEmpty()) {
      tell.reason(SoonKey.NO_CLASS, items(open));
    }
    doubts.forEach(this::doubt);
  }

  private static <K> void add(SortedMap<K, List<PlacedFinding>> into, K key, PlacedFinding placed) {
    into.computeIfAbsent(key, none -> new ArrayList<>()).add(placed);
  }

  private void doubt(Doubt doubt, List<PlacedFinding> placed) {
    tell.reason(
        SoonKey.PERHAPS, term(doubt.then()), new Argument.Term(doubt.when().key()), items(placed));
    tell.missing(
        Statement.of(
            doubt.when() == Consequence.BUILDING_OR_ROAD
                ? SoonKey.MISSING_WALLS
                : SoonKey.MISSING_FIXTURES));
  }

  private Argument items(List<PlacedFinding> placed) {
    return new Argument.Several(
        placed.stream()
            .<Argument>map(
                each ->
                    new Argument.Said(
                        Statement.of(
                            SoonKey.ITEM,
                            tell.finding(each),
                            tell.station(each.from()),
                            tell.from(each.from()))))
            .toList());
  }

  private void lay(PlacedFinding placed, Statement why) {
    tell.figure(FigureKey.URGENCY, new Argument.Said(why), placed.from());
  }

  private static Argument term(Urgency urgency) {
    return new Argument.Term(urgency.key());
  }

  /** By which row of the table a finding has its urgency. */
  static Statement row(HowSoon.Ruled ruled) {
    return Statement.of(
        SoonKey.RULED,
        term(ruled.urgency()),
        new Argument.Number(ruled.grade().number()),
        new Argument.Term(ruled.grade().key()),
        new Argument.Term(ruled.consequence().key()));
  }

  static Statement listed() {
    return Statement.of(SoonKey.LISTED, term(Urgency.AT_ONCE));
  }
}
