package daylight.archive;

import daylight.line.book.Bend;
import daylight.line.book.Boundary;
import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Kit;
import daylight.line.book.Landmark;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Reported;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Test;
import daylight.line.book.Tie;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.book.Work;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Books that nobody wrote, with every sort of entry, awkward words and values of which no decimal
 * in their own words is left: what they say makes no sense, but it must survive.
 */
public final class GeneratedBook {
  private static final List<String> AWKWARD =
      List.of(
          "no",
          "~",
          "null",
          "3:00",
          "012",
          "0x1F",
          "1e3",
          "MH #2",
          "a: b",
          "- x",
          "'q'",
          "\"q\"",
          "[x]",
          "{x}",
          "*a",
          "&a",
          "!t",
          "%",
          "@",
          "`",
          "|",
          ">",
          "?",
          "a\nb",
          " lead",
          "trail ",
          "tab\there",
          "é–ü",
          "🚰",
          "\\",
          "yes",
          "=",
          "<<",
          "#",
          "x #y",
          "\u0085",
          "\u2028x",
          "­");

  private final Dice dice;
  private int labels;

  public GeneratedBook(long seed) {
    this.dice = new Dice(seed);
  }

  public FieldBook book() {
    Unit unit = dice.oneOf(Unit.values());
    Units units = dice.maybe() ? Units.UNSTATED : new Units(unit, null, unit, Unit.FOOT);
    return new FieldBook(id(), units, site(), some(this::visit));
  }

  private Id id() {
    return new Id(new UUID(dice.next(), dice.next()), words() + " " + labels++);
  }

  private String words() {
    return dice.oneOf(AWKWARD) + (dice.maybe() ? "" : " " + dice.below(100));
  }

  private <T> @Nullable T perhaps(Supplier<T> maker) {
    return dice.maybe() ? maker.get() : null;
  }

  private <T> List<T> some(Supplier<T> maker) {
    List<T> list = new ArrayList<>();
    for (int i = dice.below(4); i > 0; i--) {
      list.add(maker.get());
    }
    return list;
  }

  private double number() {
    return (dice.next() >>> 11) * 0x1p-53 * 50;
  }

  private Reading reading() {
    double value = number();
    Reading reading = new Reading(value, null, Amount.plain(value) + " m");
    return dice.below(4) == 0 ? reading.withSd(number() + 1e-3) : reading;
  }

  /** A value whose unit is not written here, so that its exact text must be found. */
  private Reading of(double least, double most, String unit) {
    double value = least + number() / 50 * (most - least);
    return new Reading(value, null, Amount.plain(value) + unit);
  }

  /** Typed in a unit other than SI, in which not every value can be named: as somebody typed it. */
  private static Reading typed(Parsed<Reading> parsed) {
    return parsed.asOptional().orElseThrow();
  }

  private Reading share() {
    return typed(Quantities.share(Amount.plain(number() * 2) + " %"));
  }

  private Reading bearing() {
    return typed(Quantities.bearing(Amount.plain(number() * 7)));
  }

  private Instant moment() {
    return Instant.ofEpochSecond(1_700_000_000L + dice.below(100_000_000), dice.below(1000));
  }

  private LocalDate day() {
    return LocalDate.ofEpochDay(20_000 + dice.below(2000));
  }

  private Site site() {
    return new Site(
        id(),
        words(),
        perhaps(this::words),
        ZoneId.of(dice.oneOf(List.of("UTC", "America/Toronto", "Europe/Zurich"))),
        dice.maybe(),
        some(
            () -> new Landmark(id(), perhaps(this::words), any(Landmark.Kind.class), dice.maybe())),
        some(
            () ->
                new Boundary(
                    id(),
                    any(Boundary.Kind.class),
                    some(this::words),
                    perhaps(this::words),
                    perhaps(this::words))),
        List.of(new Node(id(), any(Node.Kind.class), perhaps(this::words))),
        some(this::reach),
        dice.maybe() ? Surroundings.UNRECORDED : surroundings());
  }

  private <E extends Enum<E>> E any(Class<E> type) {
    return dice.oneOf(type.getEnumConstants());
  }

  private Reach reach() {
    Reach.Water water =
        dice.oneOf(
            List.of(
                new Reach.Water.Forward(),
                new Reach.Water.Backward(),
                new Reach.Water.Unknown(words())));
    return new Reach(
        id(),
        words(),
        words(),
        words(),
        water,
        any(Reach.Use.class),
        any(Material.class),
        perhaps(this::reading),
        perhaps(this::reading));
  }

  private Surroundings surroundings() {
    return new Surroundings(
        perhaps(
            () ->
                new Surroundings.Climate(
                    perhaps(() -> of(0, 2000, " C-days")),
                    perhaps(() -> of(-20, 30, " °C")),
                    perhaps(() -> of(0, 1e7, " s")),
                    perhaps(() -> of(0, 1e-5, " m/s")),
                    perhaps(() -> of(0, 2, " m")),
                    perhaps(this::words))),
        perhaps(() -> new Surroundings.Soil(words(), perhaps(this::share), perhaps(this::words))),
        some(() -> new Surroundings.Roof(id(), words(), of(1, 300, " m2"))),
        some(
            () ->
                new Surroundings.Fixture(
                    id(), words(), words(), perhaps(() -> of(0, 0.01, " m3/s")))),
        some(
            () ->
                new Surroundings.Pump(
                    id(),
                    words(),
                    some(() -> new Surroundings.CurvePoint(of(0, 0.01, " m3/s"), reading())),
                    perhaps(() -> of(0, 2, " m2")),
                    perhaps(this::reading),
                    perhaps(this::reading),
                    perhaps(this::reading),
                    some(this::words))));
  }

  private Visit visit() {
    Kit kit =
        new Kit(
            perhaps(this::words),
            perhaps(this::reading),
            perhaps(this::reading),
            perhaps(this::words),
            perhaps(() -> of(-100, 100, " s")),
            perhaps(
                () ->
                    new Kit.Burned(
                        perhaps(() -> new Kit.Region(12, 430, 300, 40)),
                        perhaps(() -> Unit.FOOT))));
    return new Visit(
        id(),
        perhaps(this::day),
        some(this::words),
        perhaps(this::reported),
        kit,
        List.of(pass(), pass()),
        some(this::locate),
        some(this::exposure),
        some(this::tie),
        some(this::level),
        some(this::test),
        some(this::work),
        papers());
  }

  private Reported reported() {
    return dice.maybe()
        ? Reported.inWords(words())
        : new Reported(
            perhaps(this::words),
            some(() -> any(Reported.Kind.class)),
            words(),
            perhaps(() -> any(Reported.When.class)));
  }

  private Pass pass() {
    return new Pass(
        id(),
        words(),
        some(() -> new Pass.Leg(words(), dice.maybe())),
        dice.maybe() ? new Pass.Zero.Reads(reading()) : new Pass.Zero.Unknown(words()),
        any(Pass.Head.class),
        perhaps(() -> new Pass.End(reading(), any(Pass.Why.class), perhaps(this::words))),
        some(() -> new Pass.Sight(reading(), reading(), any(Pass.Clarity.class))),
        some(this::finding),
        some(() -> new Bend(id(), reading(), of(0, 3, ""), any(Bend.Sense.class))),
        some(() -> new Pass.CounterCheck(id(), reading(), reading())),
        some(() -> new Pass.Reset(id(), reading(), reading())),
        some(() -> new Pass.Anchor(id(), words(), number(), reading())),
        some(() -> new Pass.Correction(id(), words(), number(), number(), perhaps(this::reading))),
        perhaps(this::words),
        perhaps(this::moment),
        perhaps(this::words));
  }

  private Finding finding() {
    Where where =
        switch (dice.below(3)) {
          case 0 -> new Where.AtCable(reading());
          case 1 -> new Where.FromTo(reading(), reading());
          default -> new Where.AtMoment(words(), number());
        };
    boolean known = dice.maybe();
    double minute = StrictMath.PI / 6;
    Finding.Clock clock =
        new Finding.Clock(
            (dice.below(12) + dice.below(60) / 60.0) * minute, dice.below(12) * minute);
    return new Finding(
        id(),
        known ? "standing-water" : "nobody-knows",
        where,
        any(Finding.Moving.class),
        perhaps(() -> clock),
        new TreeMap<>(known ? Map.of("depth", reading(), "share", share()) : Map.of()),
        new TreeMap<>(known ? Map.of("still", words()) : Map.of(words(), words())),
        perhaps(this::words),
        some(this::words),
        some(
            () ->
                new Finding.Outline(
                    perhaps(this::words), number(), number(), 1 + number(), 1 + number())),
        perhaps(this::words));
  }

  private Locate locate() {
    return new Locate(
        id(),
        perhaps(this::words),
        perhaps(this::reading),
        any(Finding.Moving.class),
        perhaps(this::reading),
        perhaps(this::reading),
        words(),
        perhaps(this::reading),
        any(Locate.Signal.class),
        some(() -> new Locate.Lift(reading(), reading())),
        any(Locate.OffOn.class),
        perhaps(this::moment),
        perhaps(this::words),
        perhaps(this::nulls));
  }

  private Locate.Nulls nulls() {
    return new Locate.Nulls(
        reading(),
        perhaps(this::reading),
        perhaps(this::reading),
        perhaps(this::reading),
        perhaps(this::reading));
  }

  private Exposure exposure() {
    return new Exposure(
        id(),
        any(Exposure.By.class),
        perhaps(this::words),
        perhaps(this::reading),
        perhaps(this::reading),
        perhaps(this::reading),
        words());
  }

  private Tie tie() {
    return switch (dice.below(8)) {
      case 0 -> new Tie.Tape(id(), words(), words(), reading());
      case 1 -> new Tie.AlongOut(id(), words(), words(), words(), reading(), reading());
      case 2 -> new Tie.Bearing(id(), words(), words(), bearing());
      case 3 -> new Tie.Angle(id(), words(), words(), words(), of(0, 6.28, ""));
      case 4 -> new Tie.Direction(id(), words(), words(), words(), of(0, 6.28, ""));
      case 5 ->
          new Tie.Gnss(
              id(),
              words(),
              number(),
              -number(),
              perhaps(this::spread),
              perhaps(() -> new Tie.Shared(words(), number() + 1e-3)));
      case 6 -> new Tie.Sketched(id(), words(), reading(), reading());
      default -> new Tie.Side(id(), words(), words(), words(), dice.maybe());
    };
  }

  private Tie.Spread spread() {
    return dice.maybe()
        ? Tie.Spread.round(number() + 1e-3)
        : new Tie.Spread(number() + 1e-3, number() + 1e-3, dice.maybe() ? 0.25 : -0.5);
  }

  private Level.Mark mark() {
    return new Level.Mark(words(), any(Level.Part.class));
  }

  private Level level() {
    return switch (dice.below(3)) {
      case 0 -> new Level.Rod(id(), words(), mark(), reading());
      case 1 -> new Level.Height(id(), mark(), reading());
      default -> new Level.Rise(id(), mark(), mark(), reading());
    };
  }

  private Test test() {
    return new Test(
        id(),
        any(Test.Kind.class),
        words(),
        perhaps(() -> of(0, 0.01, " m3/s")),
        perhaps(() -> of(0, 2, " m3")),
        perhaps(() -> of(0, 900, " s")),
        perhaps(this::reading),
        new Test.Held(
            some(this::words),
            perhaps(this::reading),
            perhaps(this::reading),
            perhaps(() -> of(0, 2, " m3"))),
        some(
            () ->
                new Test.Seen(
                    words(),
                    dice.maybe(),
                    perhaps(() -> of(0, 900, " s")),
                    perhaps(() -> of(0, 2, " m3")))),
        perhaps(this::words));
  }

  private Work work() {
    return dice.maybe()
        ? new Work.Cleaning(id(), some(this::words), words())
        : new Work.Repair(
            id(),
            perhaps(this::day),
            words(),
            perhaps(this::reading),
            perhaps(this::reading),
            words(),
            dice.maybe());
  }

  private Papers papers() {
    return new Papers(
        some(
            () ->
                new Papers.Media(
                    id(),
                    any(Papers.Media.Kind.class),
                    "media/" + labels,
                    perhaps(() -> "0123456789abcdef".repeat(4)),
                    perhaps(this::words),
                    some(() -> new Papers.Pin(words(), number(), number())))),
        some(
            () ->
                new Papers.Consent(
                    id(), words(), words(), perhaps(this::moment), perhaps(this::words))),
        some(() -> new Papers.Ticket(id(), words(), perhaps(this::day), perhaps(this::day))),
        some(() -> new Papers.ServiceMark(id(), any(Papers.Service.class), some(this::words))),
        some(() -> new Papers.Declined(id(), words(), words(), perhaps(this::day))));
  }
}
