package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Tie;
import daylight.line.book.Where;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A book of whatever oddity gives a line, and the line says of every reach what is missing. */
public class OddBooksTest {
  private static final List<Level.Part> PARTS = List.of(Level.Part.values());
  private static final List<Bend.Sense> SENSES = List.of(Bend.Sense.values());

  private static final List<BiFunction<FieldBook, SplitMix64, FieldBook>> ODDITIES =
      List.of(
          OddBooksTest::withoutSomeTies,
          OddBooksTest::withoutSomeLocates,
          OddBooksTest::withoutDepths,
          OddBooksTest::withoutCables,
          OddBooksTest::beyondTheEnd,
          OddBooksTest::allAtOnePlace,
          OddBooksTest::allSpotsAlike,
          OddBooksTest::emptyWalk,
          OddBooksTest::unknownReach,
          OddBooksTest::withoutPasses,
          OddBooksTest::withoutEnds,
          OddBooksTest::shortCable,
          OddBooksTest::anotherPass,
          OddBooksTest::someLevels,
          OddBooksTest::manyBends,
          OddBooksTest::unknownHead,
          OddBooksTest::momentsWithoutTrack);

  @Test
  void sixtyOddBooksEachGiveALine() {
    mutate(1, 60);
  }

  @Test
  @Tag("long")
  void fiveHundredOddBooksEachGiveALine() {
    mutate(61, 560);
  }

  private static void mutate(int from, int to) {
    for (int seed = from; seed <= to; seed++) {
      FieldBook book = odd(seed);
      int number = seed;
      assertThatCode(() -> complete(book, Flat.line(book)))
          .as("seed %d", number)
          .doesNotThrowAnyException();
    }
  }

  private static void complete(FieldBook book, Line line) {
    assertThat(line.runs()).hasSameSizeAs(book.site().reaches());
    for (Run run : line.runs()) {
      switch (run.path()) {
        case Run.Path.Found(List<Station> stations) ->
            assertThat(stations).hasSizeGreaterThan(1).allMatch(s -> finite(s));
        case Run.Path.NotFound(var missing) -> assertThat(missing.arguments()).isNotEmpty();
      }
    }
  }

  private static boolean finite(Station s) {
    return Double.isFinite(s.spot().x() + s.spot().y() + s.across() + s.bearing());
  }

  /** One to three oddities on a small property, sometimes with more reaches than were walked. */
  public static FieldBook odd(int seed) {
    SplitMix64 random = new SplitMix64(seed * 7919L);
    Draft draft =
        Flat.ground()
            .node("J", Node.Kind.JUNCTION)
            .node("N3", Node.Kind.ACCESS)
            .reach("R1", "N1", "J")
            .reach("R2", "J", "N2");
    if (random.chance(0.5)) {
      draft.reach("R3", "N3", "J");
    }
    if (random.chance(0.3)) {
      draft.node("N4", Node.Kind.ACCESS).reach("R4", "N4", "N1");
    }
    if (random.chance(0.3)) {
      draft.node("N8", Node.Kind.ACCESS).node("N9", Node.Kind.END);
      String line = random.chance(0.5) ? "main" : "other";
      draft.reach(Draft.pipe("R9", "N8", "N9", line, Material.UNKNOWN, null));
    }
    draft.pass(
        new Push("P1", "N1", "R1", "R2")
            .node(3, "J", Finding.Moving.PUSHING)
            .end(6, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 5, Pass.Clarity.CLEAR));
    for (double at : new double[] {1, 2.5, 4, 5.5}) {
      Flat.locate(draft, "L" + (int) (10 * at), at);
    }
    FieldBook book = draft.book();
    int oddities = 1 + random.below(3);
    for (int i = 0; i < oddities; i++) {
      book = ODDITIES.get(random.below(ODDITIES.size())).apply(book, random);
    }
    return book;
  }

  private static FieldBook withoutSomeTies(FieldBook book, SplitMix64 random) {
    return Reworked.visits(
        book, v -> Reworked.with(v, v.passes(), v.locates(), some(v.ties(), random)));
  }

  private static FieldBook withoutSomeLocates(FieldBook book, SplitMix64 random) {
    return Reworked.visits(
        book, v -> Reworked.with(v, v.passes(), some(v.locates(), random), v.ties()));
  }

  private static <T> List<T> some(List<T> all, SplitMix64 random) {
    return all.stream().filter(one -> random.chance(0.6)).toList();
  }

  private static FieldBook locates(FieldBook book, BiFunction<Locate, Integer, Locate> by) {
    return Reworked.visits(
        book,
        v -> {
          List<Locate> changed = new ArrayList<>();
          for (Locate locate : v.locates()) {
            changed.add(by.apply(locate, changed.size()));
          }
          return Reworked.with(v, v.passes(), changed, v.ties());
        });
  }

  private static Locate read(
      Locate l, @Nullable String pass, @Nullable Reading cable, @Nullable Reading depth) {
    return new Locate(
        l.id(),
        pass,
        cable,
        l.moving(),
        depth,
        l.receiverHeight(),
        l.surface(),
        l.cover(),
        l.signal(),
        l.lifts(),
        l.offOn(),
        l.time(),
        l.remark());
  }

  private static FieldBook withoutDepths(FieldBook book, SplitMix64 random) {
    return locates(book, (l, i) -> random.chance(0.7) ? read(l, l.pass(), l.cable(), null) : l);
  }

  private static FieldBook withoutCables(FieldBook book, SplitMix64 random) {
    return locates(book, (l, i) -> random.chance(0.5) ? read(l, null, null, l.depth()) : l);
  }

  private static FieldBook beyondTheEnd(FieldBook book, SplitMix64 random) {
    double beyond = random.between(0, 60);
    return locates(book, (l, i) -> i == 0 ? read(l, l.pass(), Draft.metres(beyond), l.depth()) : l);
  }

  private static FieldBook allAtOnePlace(FieldBook book, SplitMix64 random) {
    double at = random.between(0, 6);
    return locates(book, (l, i) -> read(l, l.pass(), Draft.metres(at), l.depth()));
  }

  private static FieldBook allSpotsAlike(FieldBook book, SplitMix64 random) {
    double out = random.between(0, 8);
    return Reworked.ties(
        book,
        tie ->
            tie instanceof Tie.AlongOut t
                ? new Tie.AlongOut(t.id(), t.point(), "A", "B", Draft.metres(3), Draft.metres(out))
                : tie);
  }

  private static Pass walking(Pass p, List<Pass.Leg> walk, Pass.@Nullable End end) {
    return new Pass(
        p.id(),
        p.entry(),
        walk,
        p.zero(),
        p.head(),
        end,
        p.sight(),
        p.findings(),
        p.bends(),
        p.counterChecks(),
        p.resets(),
        p.anchors(),
        p.corrections(),
        p.after(),
        p.start(),
        p.remark());
  }

  private static FieldBook emptyWalk(FieldBook book, SplitMix64 random) {
    return Reworked.passes(book, p -> walking(p, List.of(), p.end()));
  }

  private static FieldBook unknownReach(FieldBook book, SplitMix64 random) {
    String strange = random.chance(0.5) ? "R77" : "R9";
    return Reworked.passes(
        book,
        p -> walking(p, List.of(new Pass.Leg("R1", true), new Pass.Leg(strange, false)), p.end()));
  }

  private static FieldBook withoutPasses(FieldBook book, SplitMix64 random) {
    return Reworked.visits(
        book, v -> Reworked.with(v, some(v.passes(), random), v.locates(), v.ties()));
  }

  private static FieldBook withoutEnds(FieldBook book, SplitMix64 random) {
    return Reworked.passes(book, p -> walking(p, p.walk(), null));
  }

  private static FieldBook shortCable(FieldBook book, SplitMix64 random) {
    double share = random.between(0, 0.5);
    return locates(
        book,
        (l, i) ->
            l.cable() == null
                ? l
                : read(l, l.pass(), Draft.metres(share * l.cable().value()), l.depth()));
  }

  private static FieldBook anotherPass(FieldBook book, SplitMix64 random) {
    String entry = List.of("N1", "N2", "N3", "J").get(random.below(4));
    String reach = List.of("R1", "R2", "R3").get(random.below(3));
    Push push = new Push("P" + (2 + random.below(50)), entry, reach);
    if (random.chance(0.5)) {
      push.end(random.between(0, 9), Pass.Why.FRICTION, random.chance(0.5) ? "J" : null);
    }
    return Reworked.visits(
        book,
        v -> {
          List<Pass> passes = new ArrayList<>(v.passes());
          passes.add(push.pass());
          return Reworked.with(v, passes, v.locates(), v.ties());
        });
  }

  private static FieldBook someLevels(FieldBook book, SplitMix64 random) {
    List<String> points = List.of("A", "N1", "N2", "J", "L10", "L25", "L40");
    List<Level> levels = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Level.Part part = PARTS.get(random.below(PARTS.size()));
      Level.Mark mark = new Level.Mark(points.get(random.below(points.size())), part);
      Reading read = Draft.metres(random.between(97, 101));
      levels.add(
          random.chance(0.5)
              ? new Level.Height(Draft.id("level", "H" + i), mark, read)
              : new Level.Rod(Draft.id("level", "H" + i), "S1", mark, read));
    }
    return Reworked.levels(book, levels);
  }

  private static FieldBook manyBends(FieldBook book, SplitMix64 random) {
    return Reworked.passes(
        book,
        p -> {
          List<Bend> bends = new ArrayList<>();
          for (int i = 0; i < 7; i++) {
            double angle = random.between(0.2, 1.6);
            bends.add(
                new Bend(
                    Draft.id("bend", "B" + i),
                    Draft.metres(random.between(0, 7)),
                    new Reading(angle, null, angle + " rad"),
                    SENSES.get(random.below(SENSES.size()))));
          }
          return Reworked.bends(p, bends);
        });
  }

  private static FieldBook unknownHead(FieldBook book, SplitMix64 random) {
    return Reworked.passes(
        manyBends(book, random),
        p ->
            new Pass(
                p.id(),
                p.entry(),
                p.walk(),
                new Pass.Zero.Unknown("nobody looked"),
                Pass.Head.UNKNOWN,
                p.end(),
                p.sight(),
                p.findings(),
                p.bends(),
                p.counterChecks(),
                p.resets(),
                p.anchors(),
                p.corrections(),
                p.after(),
                p.start(),
                p.remark()));
  }

  private static FieldBook momentsWithoutTrack(FieldBook book, SplitMix64 random) {
    Push push = new Push("P99", "N1", "R1");
    push.finding(
        "roots",
        new Where.AtMoment("F9", random.between(0, 99)),
        Finding.Moving.PULLING,
        Map.of(),
        Map.of(),
        random.chance(0.5) ? "J" : null);
    return Reworked.visits(
        book,
        v -> {
          List<Pass> passes = new ArrayList<>(v.passes());
          if (passes.stream().noneMatch(p -> p.label().equals("P99"))) {
            passes.add(push.pass());
          }
          return Reworked.with(v, passes, v.locates(), v.ties());
        });
  }
}
