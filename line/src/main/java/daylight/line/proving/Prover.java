package daylight.line.proving;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.book.Test;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The door of this room: what the tests of a visit proved. */
public final class Prover {
  private final Priors priors;
  private final Waterways ways;

  private Prover(FieldBook book, Priors priors) {
    this.priors = priors;
    this.ways = new Waterways(book.site());
  }

  /**
   * What the tests of a visit proved, and by everything up to it where what comes in.
   *
   * @param limits by which hold tests are judged
   * @param priors how good a reading is that says nothing of it
   */
  public static Proving of(
      FieldBook book, Line line, Visit visit, HoldLimits limits, Priors priors) {
    Prover prover = new Prover(book, priors);
    HoldsOfBook holds = new HoldsOfBook(book, line, limits, priors);
    List<HeldTest> held = new ArrayList<>();
    List<Poured> poured = new ArrayList<>();
    List<Passage> passages = new ArrayList<>();
    for (Test test : visit.tests()) {
      switch (test.kind()) {
        case HOLD -> held.add(holds.read(test));
        case WATER_RUN -> poured.add(prover.poured(test));
        case DYE, SMOKE, PIT_RISE -> {}
      }
      passages.addAll(passages(prover.ways, test));
    }
    return new Proving(held, poured, passages, new ConnectionMap(book, prover.ways, visit).all());
  }

  static List<Passage> passages(Waterways ways, Test test) {
    boolean goes =
        switch (test.kind()) {
          case WATER_RUN, DYE, SMOKE -> true;
          case HOLD, PIT_RISE -> false;
        };
    return goes ? test.seen().stream().map(seen -> passage(ways, test, seen)).toList() : List.of();
  }

  private static Passage passage(Waterways ways, Test test, Test.Seen seen) {
    Optional<String> from = ways.node(test.at());
    Optional<String> to = ways.node(seen.where());
    boolean smoke = test.kind() == Test.Kind.SMOKE;
    boolean said =
        from.isPresent()
            && to.isPresent()
            && (smoke ? ways.hangTogether(from.get(), to.get()) : ways.leads(from.get(), to.get()));
    boolean surely = said && !smoke && ways.leadsSurely(from.orElseThrow(), to.orElseThrow());
    Passage.Meaning meaning =
        seen.arrived()
            ? came(ways, seen, said, smoke)
            // Water in a trap holds smoke back, so that smoke need not come anywhere.
            : surely ? Passage.Meaning.DID_NOT_COME : Passage.Meaning.NOTHING;
    return new Passage(test, seen, from.orElse(""), said, meaning);
  }

  private static Passage.Meaning came(Waterways ways, Test.Seen seen, boolean said, boolean smoke) {
    if (smoke && ways.isFixture(seen.where())) {
      return Passage.Meaning.INDOORS;
    }
    if (ways.isGround(seen.where())) {
      return Passage.Meaning.OUT_OF_THE_GROUND;
    }
    return said ? Passage.Meaning.AS_THE_BOOK_SAYS : Passage.Meaning.ELSEWHERE;
  }

  private Poured poured(Test test) {
    Measured in = in(test);
    Measured out = null;
    for (Test.Seen seen : test.seen()) {
      Reading volume = seen.volume();
      if (volume != null) {
        Measured more = new Measured(volume.value(), priors.sd(Priors.Kind.VOLUME, volume));
        out =
            out == null
                ? more
                : new Measured(out.value() + more.value(), StrictMath.hypot(out.sd(), more.sd()));
      }
    }
    return new Poured(test, in, out, in == null || out == null ? null : in.minus(out));
  }

  /** A volume that was measured, else the flow over its time. */
  private @Nullable Measured in(Test test) {
    Reading volume = test.volume();
    Reading flow = test.flow();
    Reading time = test.duration();
    if (volume != null) {
      return new Measured(volume.value(), priors.sd(Priors.Kind.VOLUME, volume));
    }
    if (flow == null || time == null) {
      return null;
    }
    double in = flow.value() * time.value();
    Double flowSd = flow.sd();
    double byFlow = flowSd == null ? priors.sd(Priors.Kind.VOLUME, in) : flowSd * time.value();
    double byTime = flow.value() * priors.sd(Priors.Kind.WATCH, time);
    return new Measured(in, StrictMath.hypot(byFlow, byTime));
  }
}
