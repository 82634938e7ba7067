package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code figure leak}. */
class FigureLeakTest {
  @TempDir private Path folder = Path.of("");

  private static Said leak(Object... more) {
    Object[] all = new Object[more.length + 2];
    all[0] = "figure";
    all[1] = "leak";
    System.arraycopy(more, 0, all, 2, more.length);
    return Said.by(all);
  }

  private static JsonNode figure(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  @Test
  void tellsTheLossAndEachLimitByItself() {
    Said said =
        leak(
            "--drop",
            "5 mm",
            "--riser",
            "100 mm",
            "--over",
            "60 min",
            "--bore",
            "100 mm",
            "--length",
            "10 m",
            "--head",
            "1.2 m");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("Lost: 0.04 L in 1 h")
        .contains("Wetted wall: 3.1 m²")
        .contains("EN 1610, method W, pipelines: passes.")
        .contains("Source: en-1610-w, 13.3, method W, looked up.")
        .contains("Ten States Standards, 33.94, public sewers is from memory of its source")
        .contains("These limits are for new work")
        .contains("Plugs under water can fly out and kill");
  }

  /**
   * 0.15 L from a square metre of wall in 30 min (EN 1610, method W, at the address in SOURCES,
   * looked up) are 22.6 L a day from 10 m of 100 mm pipe.
   */
  @Test
  void repliesInJson() {
    JsonNode reply =
        leak(
                "--drop",
                "150 mm",
                "--riser",
                "100 mm",
                "--over",
                "30 min",
                "--bore",
                "100 mm",
                "--length",
                "10 m",
                "--head",
                "1.2 m",
                "--json")
            .json();
    assertThat(figure(reply, "fails").path("value").asDouble()).isCloseTo(0.02262, within(1e-5));
    assertThat(figure(reply, "lost").path("value").asDouble()).isCloseTo(0.001178, within(1e-6));
  }

  @Test
  void tooCloseSaysHowLongToHoldIt() {
    Said said =
        leak(
            "--drop",
            "58 mm",
            "--give-or-take",
            "3 mm",
            "--riser",
            "100 mm",
            "--over",
            "30 min",
            "--bore",
            "100 mm",
            "--length",
            "10 m",
            "--head",
            "1.2 m");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.out()).contains("EN 1610, method W, pipelines: too close to say.");
  }

  @Test
  void whatIsWrongIsToldAtOnce() {
    Said said = leak("--drop", "-5 mm", "--over", "soon", "--bore", "0 mm", "--head", "-1 m");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err())
        .contains("--drop: a hold test loses water or holds it")
        .contains("--riser: ")
        .contains("--over: ")
        .contains("--bore: ")
        .contains("--length: ")
        .contains("--head: ");
    assertThat(leak("--over", "5 min").err()).contains("--drop: give --drop with --riser");
    assertThat(leak().code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void takesLimitsOfOnesOwn() throws IOException {
    Path ours =
        Files.writeString(
            folder.resolve("ours.yaml"),
            """
            daylight-hold-limits: 1
            limits:
              - {id: ours, title: Ours, loss: 1 L, per-surface: 1 m2, in: 1 h, clause: x, source: ours, mark: derived}
            """);
    Said said =
        leak(
            "--topped-up",
            "1 L",
            "--over",
            "60 min",
            "--bore",
            "100 mm",
            "--length",
            "10 m",
            "--hold-limits",
            ours);
    assertThat(said.out()).contains("Ours: passes.").doesNotContain("EN 1610");
    Path wrong =
        Files.writeString(
            folder.resolve("wrong.yaml"),
            """
            daylight-hold-limits: 1
            limits:
              - {id: a, title: A, loss: 0 L, per-surface: 1 m2, in: 1 h, clause: x, source: x, mark: derived}
              - {id: b, title: B, loss: 1 L, per-surface: 1 m2, no-drop: yes, clause: x, source: x, mark: derived}
              - {id: c, title: C, no-drop: yes, head-from: 3 m, head-to: 2 m, clause: x, source: x, mark: seen}
            """);
    Said refused = leak("--topped-up", "1 L", "--over", "60 min", "--hold-limits", wrong);
    assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
    assertThat(refused.err().lines().filter(line -> line.contains("--hold-limits"))).hasSize(4);
  }
}
