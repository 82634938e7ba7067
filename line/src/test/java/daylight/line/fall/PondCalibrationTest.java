package daylight.line.fall;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Place;
import daylight.line.course.Run;
import daylight.line.course.TrueLine;
import daylight.line.measure.Filled;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether water stands as often as the probabilities say: one random place on each of many lines of
 * known truth. Bins of equal count hold the share promised but for chance (99.5 % bands of the sum
 * of unequal chances); the z of Spiegelhalter (1986, from memory) tests all at once; the Brier
 * score is set against that of saying the share of all places each time.
 */
class PondCalibrationTest {
  private static final int SAMPLE = 240;
  private static final Map<Long, TrueLine> LINES = new HashMap<>();

  /** The least stretch whose fall is asked for, metres. */
  private static final double SHORTEST = 1.5;

  private static final int BINS = 10;
  private static final double BAND = 0.995;

  /** An eighth of an inch in a foot: International Plumbing Code, Table 704.1 (looked up). */
  private static final double EIGHTH = 1 / 96.0;

  private static final FallRules NO_RULES = new FallRules("none", "none", List.of(), null);

  /** What was said of a place, whether it was so, and how deep the water is there, metres. */
  private record Said(double probability, boolean wet, double deep) {}

  @Test
  void aSampleIsWetAboutAsOftenAsIsSaid() throws IOException {
    List<Said> said = said(PondCalibrationTest::ofAnyClass, SAMPLE);

    assertThat(Math.abs(spiegelhalter(said))).isLessThan(3.29);
  }

  @Tag("long")
  @Test
  void placesAreWetAsOftenAsIsSaid() throws IOException {
    List<Said> said = said(PondCalibrationTest::ofAnyClass, 3000);
    write("ponding.md", said);
    calibrated(said);
  }

  @Test
  void aSampleIsTooFlatAboutAsOftenAsIsSaid() {
    List<Said> said = tooFlat(SAMPLE);

    assertThat(Math.abs(spiegelhalter(said))).isLessThan(3.29);
    assertThat(skill(said)).isGreaterThan(0.1);
  }

  @Tag("long")
  @Test
  void stretchesAreTooFlatAsOftenAsIsSaid() throws IOException {
    List<Said> said = tooFlat(3000);
    write("too-flat.md", said);
    calibrated(said);
  }

  /**
   * Depths read by a receiver alone are too coarse for a pond of a centimetre or two: where one
   * stands, it is mostly left open whether it does.
   */
  @Test
  void byDepthsAloneAShallowPondIsMostlyLeftOpen() {
    List<Said> shallow =
        said(TrueLine::readOnly, 600).stream().filter(s -> s.wet() && s.deep() < 0.025).toList();
    long open =
        shallow.stream().filter(s -> s.probability() > 0.05 && s.probability() < 0.95).count();

    assertThat(shallow).hasSizeGreaterThan(20);
    assertThat((double) open / shallow.size()).isGreaterThan(0.5);
  }

  /** Lines of the samples are estimated once for all of them. */
  private static TrueLine ofAnyClass(long seed) {
    return seed <= SAMPLE ? LINES.computeIfAbsent(seed, s -> made(s)) : made(seed);
  }

  private static TrueLine made(long seed) {
    return TrueLine.of((int) (seed % TrueLine.classes()), seed);
  }

  private static void calibrated(List<Said> said) {
    assertThat(Math.abs(spiegelhalter(said))).isLessThan(2.58);
    for (List<Said> bin : bins(said)) {
      double[] chances = chances(bin);
      int seen = (int) bin.stream().filter(Said::wet).count();
      double below = Arrays.stream(chances, 0, seen + 1).sum();
      double above = Arrays.stream(chances, seen, chances.length).sum();
      assertThat(Math.min(below, above))
          .as("%d of %d, by what was said of them", seen, bin.size())
          .isGreaterThan((1 - BAND) / 2);
    }
  }

  /**
   * How likely each count of hits is, if every probability is what it says: the distribution of a
   * sum of unequal chances, exactly, by adding one after the other.
   */
  private static double[] chances(List<Said> bin) {
    double[] chances = new double[bin.size() + 1];
    chances[0] = 1;
    for (int i = 0; i < bin.size(); i++) {
      double p = told(bin.get(i));
      for (int k = i + 1; k >= 0; k--) {
        chances[k] = chances[k] * (1 - p) + (k > 0 ? chances[k - 1] * p : 0);
      }
    }
    return chances;
  }

  /** Nothing is told more finely than "less than 1 %": here not than a tenth of that. */
  private static double told(Said said) {
    return Math.clamp(said.probability(), 1e-3, 1 - 1e-3);
  }

  @Tag("long")
  @Test
  void waterThatWasSeenAndLevelsTellMuch() throws IOException {
    List<Said> said = said(TrueLine::wet, 1000);
    write("ponding-wet.md", said);

    assertThat(skill(said)).isGreaterThan(0.3);
  }

  /**
   * The volume of a pond that is told, over the stretch that is told. An interval that ends at
   * nothing or at the full pipe holds more than it says, for much may lie right on its end: only
   * those within count.
   */
  @Tag("long")
  @Test
  void volumesLieInTheirIntervalsAsOftenAsIsSaid() throws IOException {
    int[] held = volumes(TrueLine::pooled, 1600);
    Path folder = Files.createDirectories(Path.of("target", "calibration"));
    Files.writeString(folder.resolve("ponding-volume.md"), held[0] + " of " + held[1] + "\n");

    assertThat(held[1]).isGreaterThan(300);
    assertThat((double) held[0] / held[1]).isBetween(0.93, 0.97);
  }

  private static int[] volumes(LongFunction<TrueLine> lines, int count) {
    int held = 0;
    int of = 0;
    for (long seed = 1; seed <= count; seed++) {
      TrueLine one = lines.apply(seed);
      for (Ponding.Pool pool : Ponder.of(one.line(), new Draws(seed, 1000)).pools()) {
        Ponding.Range said = pool.volume();
        double full = volume(one, pool, true);
        if (said != null && said.low() > 0 && said.high() < full) {
          double truth = volume(one, pool, false);
          of++;
          held += said.low() <= truth && truth <= said.high() ? 1 : 0;
        }
      }
    }
    return new int[] {held, of};
  }

  /** What stands in a stretch, or what it holds when it is full. */
  private static double volume(TrueLine one, Ponding.Pool pool, boolean full) {
    double volume = 0;
    for (Catchment catchment : Catchment.of(one.line())) {
      double[] up = catchment.places().stream().mapToDouble(one::up).toArray();
      double[] deep = new double[up.length];
      catchment.fill(up, deep, new int[up.length]);
      for (int i = 0; i < up.length; i++) {
        Place place = catchment.places().get(i);
        Double bore = catchment.bore(i);
        boolean within =
            place.reach().equals(pool.from().reach())
                && place.distance() >= pool.from().distance() - 1e-9
                && place.distance() <= pool.to().distance() + 1e-9;
        if (within && bore != null) {
          volume += catchment.length(i) * Filled.upTo(bore, full ? bore : deep[i]).area();
        }
      }
    }
    return volume;
  }

  private static List<Said> said(LongFunction<TrueLine> lines, int count) {
    List<Said> said = new ArrayList<>();
    for (long seed = 1; seed <= count; seed++) {
      TrueLine one = lines.apply(seed);
      Place drawn = one.drawn(-seed);
      Ponding ponding = Ponder.of(one.line(), new Draws(seed, 500));
      for (Catchment catchment : Catchment.of(one.line())) {
        double[] up = catchment.places().stream().mapToDouble(one::up).toArray();
        double[] deep = new double[up.length];
        catchment.fill(up, deep, new int[up.length]);
        int nearest = nearest(catchment, drawn);
        if (nearest >= 0) {
          Place there = catchment.places().get(nearest);
          double probability = ponding.at(there).orElseThrow().deeper();
          said.add(new Said(probability, deep[nearest] > Ponding.FILM, deep[nearest]));
        }
      }
    }
    return said;
  }

  /** One stretch of each line, drawn by chance, against an eighth of an inch in a foot. */
  private static List<Said> tooFlat(int count) {
    List<Said> said = new ArrayList<>();
    for (long seed = 1; seed <= count; seed++) {
      TrueLine one = ofAnyClass(seed);
      SplittableRandom random = new SplittableRandom(-seed);
      Run run = one.line().runs().getFirst();
      if (run.stations().isEmpty()) {
        continue;
      }
      double all = run.stations().getLast().place().distance();
      double from = random.nextDouble(all - SHORTEST);
      double to = from + SHORTEST + random.nextDouble(all - SHORTEST - from);
      Optional<FallStretch> stretch =
          Faller.between(one.line(), run.at(from), run.at(to), NO_RULES);
      if (stretch.isPresent()) {
        double slope = (one.up(run.at(from)) - one.up(run.at(to))) / (to - from);
        double below = stretch.get().slope().probabilityBelow(EIGHTH);
        said.add(new Said(below, slope < EIGHTH, 0));
      }
    }
    return said;
  }

  private static int nearest(Catchment catchment, Place drawn) {
    int best = -1;
    for (int i = 0; i < catchment.size(); i++) {
      Place place = catchment.places().get(i);
      if (place.reach().equals(drawn.reach())
          && (best < 0
              || Math.abs(place.distance() - drawn.distance())
                  < Math.abs(catchment.places().get(best).distance() - drawn.distance()))) {
        best = i;
      }
    }
    return best;
  }

  /** (Σ(o − p)(1 − 2p)) / √Σ(1 − 2p)² p(1 − p). */
  private static double spiegelhalter(List<Said> said) {
    double sum = 0;
    double variance = 0;
    for (Said one : said) {
      double p = told(one);
      sum += ((one.wet() ? 1 : 0) - p) * (1 - 2 * p);
      variance += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
    }
    return sum / Math.sqrt(variance);
  }

  private static double brier(List<Said> said) {
    return said.stream()
        .mapToDouble(s -> Math.pow((s.wet() ? 1 : 0) - s.probability(), 2))
        .average()
        .orElseThrow();
  }

  private static double skill(List<Said> said) {
    double share = (double) said.stream().filter(Said::wet).count() / said.size();
    return 1 - brier(said) / (share * (1 - share));
  }

  private static List<List<Said>> bins(List<Said> said) {
    List<Said> rising =
        said.stream().sorted(Comparator.comparingDouble(Said::probability)).toList();
    List<List<Said>> bins = new ArrayList<>();
    for (int i = 0; i < BINS; i++) {
      bins.add(rising.subList(i * rising.size() / BINS, (i + 1) * rising.size() / BINS));
    }
    return bins;
  }

  private static void write(String name, List<Said> said) throws IOException {
    StringBuilder table = new StringBuilder("| n | said, mean | was so |\n|---|---|---|\n");
    for (List<Said> bin : bins(said)) {
      table.append(
          String.format(
              Locale.ROOT,
              "| %d | %.3f | %.3f |%n",
              bin.size(),
              bin.stream().mapToDouble(Said::probability).average().orElse(0),
              (double) bin.stream().filter(Said::wet).count() / bin.size()));
    }
    table.append(
        String.format(
            Locale.ROOT,
            "%nz %.2f, Brier %.4f, skill %.3f%n",
            spiegelhalter(said),
            brier(said),
            skill(said)));
    Path folder = Files.createDirectories(Path.of("target", "calibration"));
    Files.writeString(folder.resolve(name), table);
  }
}
