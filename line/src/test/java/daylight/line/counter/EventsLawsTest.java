package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Finding.Moving;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.course.SplitMix64;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Over generated pushes: what was planted is found, and nothing else. */
class EventsLawsTest {
  private static final int RATE = 25;
  private static final int PUSHES = 60;

  /** One generated push and what was planted in it. */
  private static final class Planted {
    private final SplitMix64 random;
    private final double step;
    private final List<Sample> samples = new ArrayList<>();
    private final List<Double> rests = new ArrayList<>();
    private final List<Double> turns = new ArrayList<>();
    private final List<Double> sets = new ArrayList<>();
    private final List<Double> gaps = new ArrayList<>();
    private double seconds;
    private double metres;
    private int way = 1;

    Planted(long seed, double step) {
      this.random = new SplitMix64(seed);
      this.step = step;
      metres = random.between(0, 3);
      run();
      for (int i = 0; i < 8; i++) {
        switch (random.below(4)) {
          case 0 -> rest();
          case 1 -> turn();
          case 2 -> set();
          default -> gap();
        }
        run();
      }
    }

    private void run() {
      double speed = random.between(0.15, 0.6);
      move(way * speed, random.between(4, 9));
    }

    private void rest() {
      double lasts = random.between(6, 9);
      rests.add(seconds + lasts / 2);
      move(0, lasts);
    }

    private void turn() {
      turns.add(seconds);
      way = -way;
    }

    private void set() {
      double far = random.between(5, 30);
      double to = metres - far > 0 && random.chance(0.7) ? metres - far : metres + far;
      sets.add(seconds);
      metres = to;
    }

    private void gap() {
      gaps.add(seconds);
      int first = samples.size();
      move(way * 0.2, random.between(1, 3));
      for (int i = first; i < samples.size(); i++) {
        samples.set(i, new Sample(samples.get(i).seconds(), 0, State.UNKNOWN));
      }
    }

    /** A frame shows the reading rounded down; now and then it is a step late or early. */
    private void move(double speed, double lasts) {
      int frames = (int) (lasts * RATE);
      for (int i = 0; i < frames; i++) {
        metres += speed / RATE;
        seconds += 1.0 / RATE;
        double shown = StrictMath.floor(metres / step) * step;
        double off = random.chance(0.05) ? random.chance(0.5) ? step : -step : 0;
        samples.add(new Sample(seconds, shown + off, State.READ));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.0254, 0.03048, 0.1})
  void everythingPlantedIsFoundAndNothingElse(double step) {
    for (int seed = 0; seed < PUSHES; seed++) {
      Planted planted = new Planted(seed, step);
      Events events = Events.of(new Track("M1", planted.samples), step);
      String name = "step " + step + " seed " + seed;

      assertThat(events.resets()).as(name).hasSameSizeAs(planted.sets);
      assertThat(events.gaps()).as(name).hasSameSizeAs(planted.gaps);
      assertThat(events.reversals()).as(name).hasSameSizeAs(planted.turns);
      // Where a coarse counter turns it stays longer than elsewhere, which may be a rest.
      List<Events.Rested> rests =
          events.rests().stream()
              .filter(rest -> planted.turns.stream().noneMatch(turn -> near(rest, turn)))
              .toList();
      assertThat(rests).as(name).hasSameSizeAs(planted.rests);
      for (int i = 0; i < planted.sets.size(); i++) {
        assertThat(events.resets().get(i).from()).isCloseTo(planted.sets.get(i), within(0.1));
      }
      for (int i = 0; i < planted.turns.size(); i++) {
        assertThat(events.reversals().get(i).seconds())
            .as(name)
            .isCloseTo(planted.turns.get(i), within(3.0));
      }
      for (int i = 0; i < planted.rests.size(); i++) {
        Events.Rested rest = rests.get(i);
        assertThat((rest.from() + rest.to()) / 2)
            .as(name)
            .isCloseTo(planted.rests.get(i), within(1.5));
      }
    }
  }

  private static boolean near(Events.Rested rest, double seconds) {
    return rest.from() - 1 <= seconds && seconds <= rest.to() + 1;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.03048, 0.1, 0.3048})
  void stretchesFollowOneAnotherAndRunsGoTheirWay(double step) {
    for (int seed = 100; seed < 100 + PUSHES; seed++) {
      List<Events.Stretch> all =
          Events.of(new Track("M1", new Planted(seed, step).samples), step).stretches();
      for (int i = 0; i < all.size(); i++) {
        assertThat(all.get(i).to()).isGreaterThanOrEqualTo(all.get(i).from());
        if (i > 0) {
          assertThat(all.get(i).from()).isGreaterThanOrEqualTo(all.get(i - 1).to() - 1e-9);
        }
        if (all.get(i) instanceof Events.Ran ran) {
          assertThat(ran.after() > ran.before()).isEqualTo(ran.moving() == Moving.PUSHING);
        }
      }
    }
  }
}
