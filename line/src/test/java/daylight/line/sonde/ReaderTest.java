package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.course.TestPriors;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one locate says, and what it may have fallen for. */
class ReaderTest {
  private static final Priors PRIORS = TestPriors.shipped();
  private static final double ROOT_2 = StrictMath.sqrt(2);

  private @Nullable Reading depth = metres(1.2);
  private @Nullable Reading cover;
  private String surface = "yard";
  private List<Locate.Lift> lifts = List.of();
  private Locate.OffOn offOn = Locate.OffOn.YES;
  private Locate.@Nullable Nulls nulls;

  private static Reading metres(double value) {
    return new Reading(value, null, value + " m");
  }

  private static Reading written(String text) {
    return switch (Quantities.length(text, null)) {
      case Parsed.Value<Reading>(Reading reading) -> reading;
      case Parsed.Refused<Reading> refused -> throw new AssertionError(refused);
    };
  }

  /** The nulls of a sonde at that depth below the receiver's foot, seen from a spot. */
  private static Locate.Nulls nulls(double belowFoot, double tilt, double spot) {
    double depth = belowFoot + 0.05;
    return new Locate.Nulls(
        metres(spot - NullModel.behind(depth, tilt, 0)),
        metres(NullModel.ahead(depth, tilt, 0) - spot),
        metres(NullModel.over(depth, tilt, 0) - spot),
        null,
        null);
  }

  private Locate locate() {
    return new Locate(
        new Id(new UUID(1, 2), "L1"),
        null,
        metres(3),
        Finding.Moving.PUSHING,
        depth,
        null,
        surface,
        cover,
        Locate.Signal.GOOD,
        lifts,
        offOn,
        null,
        null,
        nulls);
  }

  private LocateReading read() {
    return Sonde.read(locate(), PRIORS);
  }

  private List<Trap> traps() {
    return read().suspicions().stream().map(Suspicion::trap).toList();
  }

  private static LocateReading.DepthBy by(LocateReading reading, LocateReading.Way way) {
    return reading.depths().stream()
        .filter(one -> one.way() == way)
        .findFirst()
        .orElseThrow(() -> new AssertionError(way + " in " + reading));
  }

  @Test
  void isNothingButTheDepthWhereNothingElseWasRead() {
    cover = metres(0.1);
    LocateReading reading = read();
    assertThat(reading.depths()).hasSize(1);
    assertThat(by(reading, LocateReading.Way.SHOWN).depth().value()).isCloseTo(1.1, within(1e-9));
    // Noise 30 mm and 3 %, distortion 4 % and scale 3 %, of the depth shown.
    double sd = StrictMath.sqrt(0.03 * 0.03 + 1.2 * 1.2 * (0.03 * 0.03 * 2 + 0.04 * 0.04));
    assertThat(by(reading, LocateReading.Way.SHOWN).depth().sd()).isCloseTo(sd, within(1e-9));
    assertThat(reading.tilt()).isNull();
    assertThat(reading.lift()).isNull();
    assertThat(reading.doubts()).isEmpty();
  }

  @Test
  void nullsThatAgreeGiveASecondDepthAndNoDoubt() {
    nulls = nulls(1.2, 0.03, 0);
    LocateReading reading = read();
    assertThat(by(reading, LocateReading.Way.NULLS).depth().value()).isCloseTo(1.2, within(0.02));
    assertThat(by(reading, LocateReading.Way.NULLS).depth().sd()).isBetween(0.03, 0.08);
    assertThat(reading.tilt()).isNotNull();
    assertThat(reading.onward()).isNotNull();
    assertThat(reading.doubts()).isEmpty();
  }

  @Test
  void aSidePeakIsSeenByNullsOnOneSide() {
    double below = 1.2;
    nulls = nulls(below, 0, -1.22474 * (below + 0.05));
    LocateReading reading = read();
    assertThat(traps()).contains(Trap.SIDE_PEAK);
    assertThat(Objects.requireNonNull(reading.onward()).value())
        .isCloseTo(1.22474 * 1.25, within(1e-4));
    assertThat(reading.suspicions().getFirst().evidence().getLast())
        .isEqualTo(new Argument.Term("sonde.onward"));
  }

  @Test
  void anUprightSondeIsSeenByItsUprightNulls() {
    Reading aside = metres(1.25 * ROOT_2);
    nulls = new Locate.Nulls(null, null, null, aside, aside);
    assertThat(traps()).containsExactly(Trap.UPRIGHT);
    assertThat(by(read(), LocateReading.Way.UPRIGHT_NULLS).depth().value())
        .isCloseTo(1.2, within(1e-9));
  }

  /** What was meant, and what was written instead. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          5' 6"   | 5.06 ft
          5' 6"   | 5.6 ft
          5.6 ft  | 5' 6"
          5.06 ft | 5' 06"
          3' 10"  | 3.10 ft
          6' 10"  | 6.1 ft
          6' 11"  | 6.11 feet
          2.11 ft | 2 ft 11 in
          """)
  void whatFeetAndInchesMayHaveBeenIsAmongTheOthers(String meant, String instead) {
    double truth = written(meant).value();
    assertThat(FeetAndInches.others(instead, written(instead).value()))
        .anySatisfy(other -> assertThat(other).isCloseTo(truth, within(1e-9)));
  }

  @Test
  void feetAndInchesThatDifferEnoughAreToldWithTheOtherReading() {
    nulls = nulls(written("2' 10\"").value(), 0, 0);
    depth = written("2.2 ft");
    assertThat(traps()).isEqualTo(List.of(Trap.DEPTHS_DISAGREE));
    depth = written("2.10 ft");
    assertThat(traps()).isEqualTo(List.of(Trap.FEET_AND_INCHES));
    assertThat(read().suspicions().getFirst().evidence().get(1))
        .isEqualTo(new Argument.Text("2.10 ft"));
  }

  @Test
  void metresAreNeverTakenForFeet() {
    assertThat(FeetAndInches.others("1.10 m", 1.10)).isEmpty();
    assertThat(FeetAndInches.others("1.10", 1.10)).isEmpty();
    assertThat(FeetAndInches.others("5.6", 5.6 * 0.3048)).hasSize(1);
  }

  @Test
  void depthsThatDisagreeAreToldAndOverASlabSteelIsSuspected() {
    nulls = nulls(2.2, 0, 0);
    assertThat(traps()).containsExactly(Trap.DEPTHS_DISAGREE);
    surface = "slab";
    assertThat(traps()).containsExactly(Trap.DEPTHS_DISAGREE, Trap.SLAB_OR_MESH);
  }

  @Test
  void nullsThatLieUnevenlyAreTold() {
    nulls = new Locate.Nulls(metres(0.4), metres(1.4), null, null, null);
    assertThat(traps()).contains(Trap.UNEVEN);
    nulls = new Locate.Nulls(metres(0.9), metres(0.9), metres(1.3), null, null);
    assertThat(traps()).contains(Trap.UNEVEN);
  }

  @Test
  void crossedNullsSayNothing() {
    nulls = new Locate.Nulls(metres(-1), metres(0.5), null, null, null);
    assertThat(read().depths()).hasSize(1);
    assertThat(traps()).isEmpty();
  }

  @Test
  void aLiftIsOneVoteAndATrapWhereItIsOff() {
    lifts = List.of(new Locate.Lift(metres(0.5), metres(1.71)));
    LocateReading reading = read();
    Measured vote = Objects.requireNonNull(reading.vote());
    assertThat(vote.value()).isCloseTo(0.02, within(1e-9));
    assertThat(vote.sd()).isGreaterThan(0.04);
    assertThat(reading.doubts()).isEmpty();
    assertThat(by(reading, LocateReading.Way.SHOWN).depth().value()).isCloseTo(1.2, within(1e-12));
    lifts = List.of(new Locate.Lift(metres(0.5), metres(2.2)));
    assertThat(traps()).containsExactly(Trap.LIFT_OFF);
  }

  @Test
  void aSignalThatStayedIsAnotherSource() {
    offOn = Locate.OffOn.STAYED;
    assertThat(traps()).containsExactly(Trap.OTHER_SOURCE);
    assertThat(read().doubts().getFirst().key().key()).isEqualTo("sonde.other_source");
  }

  @Test
  void anIronPipeIsTold() {
    List<Suspicion> told = Sonde.read(locate(), PRIORS, Material.CAST_IRON).suspicions();
    assertThat(told).hasSize(1);
    assertThat(told.getFirst().evidence().getLast()).isEqualTo(new Argument.Number(3));
    assertThat(Sonde.read(locate(), PRIORS, Material.PVC).suspicions()).isEmpty();
  }

  @Test
  void aDepthThatWasNotReadIsNone() {
    depth = null;
    lifts = List.of(new Locate.Lift(metres(0.5), metres(1.7)));
    assertThat(read().depths()).isEmpty();
    assertThat(read().lift()).isNull();
  }
}
