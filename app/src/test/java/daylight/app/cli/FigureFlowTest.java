package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code figure gravity}, {@code pump}, {@code pit} and {@code rain}. */
class FigureFlowTest {
  private static final double GPM = 3.785411784e-3 / 60;

  @TempDir private Path folder = Path.of("");

  private static Said figure(String words, Object... more) {
    String[] first = ("figure " + words).split(" ", -1);
    Object[] all = new Object[first.length + more.length];
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return Said.by(all);
  }

  private static double value(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one.path("value").asDouble();
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  /** pe-calc.com (looked up): 24 in, 0.012, 0.3 %: 13.4 cfs, and 6.8 cfs stand half deep. */
  @Test
  void gravityTellsAPublishedExample() {
    Said said =
        figure("gravity --bore 24in --n 0.012 --slope", "0.3 %", "--flow", "6.8 cfs", "--json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    JsonNode reply = said.json();
    assertThat(value(reply, "capacity") / 0.028316846592).isCloseTo(13.42, within(0.02));
    assertThat(value(reply, "depth") / 0.6096).isCloseTo(0.5039, within(2e-4));
    assertThat(value(reply, "runs") / 0.3048).isCloseTo(4.287, within(2e-3));
  }

  @Test
  void gravitySaysWhereItsFiguresComeFrom() {
    Said said =
        figure(
            "gravity --size 4in --series sdr-35 --material pvc --slope",
            "1/4 in/ft",
            "--slope-give-or-take",
            "0.2 %",
            "--flow",
            "20 gpm");
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("Full it carries ")
        .contains("That keeps grit moving")
        .contains("Most of the doubt is ")
        .contains("From astm-d3034-table, looked up.")
        .contains("From epanet-manual-3.2, looked up.")
        .contains("Computed by Manning")
        .contains("Local codes and licensed practice decide");
  }

  @Test
  void gravityWithoutAnAnswerHasOneAllTheSame() {
    Said level = figure("gravity --bore 4in --material clay --slope", "0 %");
    assertThat(level.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(level.out()).contains("It does not fall (0.0 %)");
    assertThat(figure("gravity --bore 4in --material clay --slope", "-1 %").out())
        .contains("It runs backward: its fall is −1.0 %");
    Said over = figure("gravity --bore 4in --material clay --slope", "1 %", "--flow", "300 gpm");
    assertThat(over.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(over.out()).contains("More comes than it carries").contains("very unlikely (< 1 %)");
    Said drowned =
        figure(
            "gravity --bore 4in --material clay --slope",
            "1 %",
            "--flow",
            "20 gpm",
            "--outlet",
            "5 in");
    assertThat(drowned.out()).contains("The outlet is under water");
    Said trickle =
        figure("gravity --bore 100mm --wall 0.01mm --slope", "0.05 %", "--flow", "0.02 L/s");
    assertThat(trickle.out()).contains("It moves in layers");
  }

  @Test
  void whatIsWrongWithAPipeIsToldAtOnce() {
    Said said =
        figure(
            "gravity --size 5in --series schedule-40 --material glas --n 3 --flow -5gpm",
            "--filled",
            "100 %");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.out()).isEmpty();
    assertThat(said.err())
        .contains("--size: schedule-40 has no size 5in; it has 1 1/4 in, 1 1/2 in, 2 in")
        .contains("--material: give --material, --n or --wall")
        .contains("--material: “glas” ")
        .contains("--n: “3” is not a number from 0.005 to 0.1")
        .contains("--slope: ")
        .contains("--flow: ")
        .contains("--filled: “100 %” leaves nothing free");
    assertThat(figure("gravity --c 130 --series pvc-pipe --slope", "1 %").err())
        .contains("--c: this calculation goes by Manning")
        .contains("--series: “pvc-pipe” ")
        .contains("--size: it is needed");
    assertThat(figure("gravity --bore 1in --wall 20mm --slope", "1 %").err())
        .contains("--wall: “20mm” is more than a twentieth of the bore");
  }

  /** The case of standards 4 (derived): 35.84 gpm, 15.32 ft, 5.65 ft/s with ΣK 6 and C 150. */
  @Test
  void pumpTellsTheSumpCase() {
    // 22 ft at no flow and none at √(22/0.0052) = 65.044 gpm.
    JsonNode reply =
        figure(
                "pump --bore 1.61in --c 150 --lift 8ft --length 60ft --k 6 --max-head 22ft"
                    + " --max-flow 65.0444gpm --json")
            .json();
    assertThat(value(reply, "flow") / GPM).isCloseTo(35.84, within(0.04));
    assertThat(value(reply, "head") / 0.3048).isCloseTo(15.32, within(0.02));
    assertThat(value(reply, "speed") / 0.3048).isCloseTo(5.65, within(0.01));
  }

  @Test
  void pumpTellsWhatRunsBackAndWhatItTakes() {
    Said said =
        figure(
            "pump --size 1.5in --series schedule-40 --material pvc --lift 8ft --length 60ft"
                + " --curve 0gpm=22ft,20gpm=20ft,40gpm=13.7ft,60gpm=3.3ft"
                + " --fittings elbow-90*3,gate-valve,exit --check-valve --efficiency",
            "35 %");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("It pumps ")
        .contains(" Wh to move 264 gal")
        .contains("A check valve by the pump holds 6.3 gal in the pipe")
        .contains("lock it off before anyone reaches into its pit");
    String open =
        figure(
                "pump --bore 41mm --wall 0.005mm --lift 2.4m --length 18m --max-head 6.7m"
                    + " --max-flow 4L/s")
            .out();
    assertThat(open).contains("run back into the pit").contains("The water alone takes ");
  }

  @Test
  void pumpThatWillNotPumpIsAResult() {
    Said said =
        figure("pump --bore 41mm --c 140 --lift 8m --length 18m --max-head 6.7m --max-flow 4L/s");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.out()).contains("It will not pump: its greatest head is 6.70 m");
    Said ends = figure("pump --bore 51mm --c 140 --lift 1m --length 5m --curve 0L/s=8m,1L/s=7m");
    assertThat(ends.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(ends.out()).contains("Its curve ends too soon");
  }

  @Test
  void whatIsWrongWithAPumpIsToldAtOnce() {
    Said said =
        figure(
            "pump --bore 0in --c 500 --curve 0gpm=10ft,10gpm=12ft,5gpm=8ft --fittings elbo-90*3"
                + " --k -1 --lift high");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err())
        .contains("--bore: ")
        .contains("--c: “500” is not a number from 20 to 200")
        .contains("--curve: “10gpm=12ft”: its head is more than that of the point before")
        .contains("--curve: “5gpm=8ft”: its flow is not more")
        .contains("--fittings: “elbo-90” ")
        .contains("--k: ")
        .contains("--lift: ")
        .contains("--length: it is needed");
    assertThat(figure("pump --curve 5 --max-head 3m").err())
        .contains("--curve: give --curve, or --max-head with --max-flow")
        .contains("--max-flow: it is needed");
    assertThat(figure("pump --curve 5,6gpm").err()).contains("--curve: “5” is no point of a curve");
  }

  /** 0.64 m² × 0.20 m in 5 min are 0.427 L/s; with 1.5 L/s out and 0.35 m: 209 s and 525 s. */
  @Test
  void pitTellsWhatComesAndHowThePumpComesAndGoes() {
    Said said =
        figure(
            "pit --area 0.64m2 --rise 0.2m --over 5min --pump 1.5L/s --start 0.6m --stop 0.25m"
                + " --json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    JsonNode reply = said.json();
    assertThat(value(reply, "inflow")).isCloseTo(0.64 * 0.2 / 300, within(1e-9));
    assertThat(value(reply, "rest")).isCloseTo(0.224 / (0.128 / 300), within(1e-6));
    assertThat(value(reply, "run")).isCloseTo(0.224 / (0.0015 - 0.128 / 300), within(1e-6));
  }

  @Test
  void pitThatIsNotEmptiedIsAResult() {
    Said fills = figure("pit --across 18in --inflow 40gpm --pump 30gpm --start 12in --stop 4in");
    assertThat(fills.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(fills.out()).contains("It cannot keep up: 10 gpm more comes in than it takes out");
    Said own =
        figure(
            "pit --across 18in --inflow 4gpm --pump 30gpm --start 8in --stop 4in --runs-back"
                + " 10gal");
    assertThat(own.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(own.out()).contains("It pumps its own water");
    Said wrong = figure("pit --area -1m2 --rise 2in --start 4in --stop 8in");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err())
        .contains("--area: ")
        .contains("--over: it is needed")
        .contains("--pump: it is needed")
        .contains("--stop: “8in” is not below where the pump starts, “4in”");
  }

  /** 0.9 × 50 mm/h × 100 m² = 1.25 L/s. */
  @Test
  void rainTellsWhatItBrings() {
    Said said = figure("rain --roof 100m2 --rain 50mm/h --fixture 0.75L/s --surface roof --json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(value(said.json(), "off")).isCloseTo(0.00125, within(1e-9));
    assertThat(value(said.json(), "all")).isCloseTo(0.002, within(1e-9));
    Said wrong = figure("rain --roof -100m2 --rain 50mm --surface rof");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err()).contains("--roof: ").contains("--rain: ").contains("--surface: “rof” ");
    assertThat(figure("rain").err()).contains("--roof: give --roof with --rain, or --fixture");
    assertThat(figure("rain --roof 100m2").err()).contains("--rain: it is needed");
  }

  @Test
  void takesFiguresOfOnesOwn() throws IOException {
    Path ours =
        Files.writeString(
            folder.resolve("ours.yaml"),
            """
            daylight-flow: 1
            walls: [{material: pvc, state: used, law: manning, typical: 0.02, from: 0.01, to: 0.03, source: our-book, mark: derived}]
            fittings: []
            bores: []
            surfaces: []
            """);
    Said said = figure("gravity --bore 6in --material pvc --slope", "5 %", "--flow-data", ours);
    assertThat(said.out()).contains("From our-book, derived");
    Path wrong = Files.writeString(folder.resolve("wrong.yaml"), "daylight-flow: 1\n");
    Said refused = figure("gravity --bore 6in --material pvc --slope", "5 %", "--flow-data", wrong);
    assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
    assertThat(refused.err().lines().filter(line -> line.contains("--flow-data"))).hasSize(4);
  }
}
