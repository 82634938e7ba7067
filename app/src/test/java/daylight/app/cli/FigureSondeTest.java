package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.line.sonde.Dipole;
import daylight.line.sonde.Field;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calculations about the transmitter other than its nulls. */
class FigureSondeTest {
  @TempDir private Path folder = Path.of("");

  private static double value(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one.path("value").asDouble();
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("walk.csv"), text);
  }

  /** Strengths of a sonde on a grid, to six digits. */
  private static String walked(Dipole sonde, double feet) {
    StringBuilder text = new StringBuilder("# invented\nx,y (ft),whole,upright\n");
    for (int i = -3; i <= 3; i++) {
      for (int j = -2; j <= 2; j++) {
        Field field = sonde.at(0.7 * i, 0.3048 * feet * j, 0);
        text.append(
            String.format(
                Locale.ROOT,
                "%.1f m,%.1f,%.6f,%.6f%n",
                0.7 * i,
                feet * j,
                1000 * field.total(),
                1000 * StrictMath.abs(field.z())));
      }
    }
    return text.toString();
  }

  @Test
  void aLiftThatAgreesSaysWhatItCouldHaveFound() {
    Said said =
        Said.by("figure", "lift", "--shown", "4 ft", "--raised", "1 ft", "--then", "5' 1\"");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("agrees")
        .contains("19 times of 20")
        .contains("never corrected");
  }

  @Test
  void aLiftThatIsOffLeavesWithItsOwnCode() {
    Said said =
        Said.by(
            "figure",
            "lift",
            "--shown",
            "1.2 m",
            "--raised",
            "0.5 m",
            "--then",
            "2.3 m",
            "--raised",
            "0.8 m",
            "--then",
            "2.9 m",
            "--json");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(value(said.json(), "growth")).isCloseTo(2.1, within(0.1));
    assertThat(said.json().path("told").path(0).path("key").asText())
        .isEqualTo("figure.lift.too-much");
  }

  @Test
  void aLiftNeedsItsPairs() {
    Said said = Said.by("figure", "lift", "--raised", "1 ft", "--raised", "2", "--then", "6 ft");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err().lines())
        .hasSize(3)
        .anyMatch(line -> line.startsWith("daylight: --shown: it is needed"))
        .anyMatch(line -> line.startsWith("daylight: --then: each --raised needs its --then"))
        .anyMatch(line -> line.startsWith("daylight: --raised: “2” is not a length"));
  }

  /** Row 2 of the cube law's reference: R = 2.3704 half a metre apart is 1.5 m deep. */
  @Test
  void twoHeightsTellTheDepth() {
    JsonNode reply =
        Said.by(
                "figure",
                "heights",
                "--low",
                "2.3704",
                "--high",
                "1",
                "--apart",
                "0.5 m",
                "--give-or-take",
                "1 %",
                "--json")
            .json();
    assertThat(value(reply, "depth")).isCloseTo(1.5, within(1e-4));
    JsonNode decibels =
        Said.by("figure", "heights", "--decibels", "7.496", "--apart", "0.5 m", "--json").json();
    assertThat(value(decibels, "depth")).isCloseTo(1.5, within(1e-3));
    assertThat(value(decibels, "as-cable")).isCloseTo(0.365, within(1e-3));
  }

  @Test
  void twoHeightsThatAreTooAlikeHaveNoUpperEnd() {
    Said alike = Said.by("figure", "heights", "--low", "1.02", "--high", "1", "--apart", "1 ft");
    assertThat(alike.code()).isEqualTo(ExitCode.DONE);
    assertThat(alike.out()).contains("too alike");
    Said not = Said.by("figure", "heights", "--low", "1", "--high", "1", "--apart", "1 ft");
    assertThat(not.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(not.out()).contains("no transmitter is below it");
    Said wrong = Said.by("figure", "heights", "--low", "-1", "--decibels", "x");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err()).contains("--apart: it is needed").contains("--decibels: “x”");
  }

  @Test
  void aDepthBecomesInvertAndCover() {
    JsonNode reply =
        Said.by(
                "figure",
                "depth",
                "--shown",
                "5 ft",
                "--receiver-height",
                "1 ft",
                "--cover",
                "3 in",
                "--bore",
                "4 in",
                "--ride",
                "1.5 in",
                "--paving",
                "4 in",
                "--json")
            .json();
    assertThat(value(reply, "sonde")).isCloseTo(3.75 * 0.3048, within(1e-6));
    assertThat(value(reply, "invert")).isCloseTo(46.5 * 0.0254, within(1e-6));
    assertThat(value(reply, "crown")).isCloseTo(42.5 * 0.0254, within(1e-6));
    assertThat(value(reply, "soil")).isCloseTo(38.5 * 0.0254, within(1e-6));
    Said said = Said.by("figure", "depth", "--shown", "5 ft");
    assertThat(said.out()).contains("dig by hand").doesNotContain("inside top");
    Said wrong = Said.by("figure", "depth", "--shown", "5 ft", "--bore", "2 in", "--ride", "3 in");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err()).contains("--ride: it must lie within the bore of 2 in");
  }

  @Test
  void aWalkFindsTheTransmitter() throws IOException {
    Dipole sonde = new Dipole(0.2, -0.3, 1.3, 1.2, 0.1, 2);
    Said said = Said.by("figure", "walk", table(walked(sonde, 2.5)), "--json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(value(said.json(), "depth")).isCloseTo(1.3, within(0.01));
    assertThat(value(said.json(), "x")).isCloseTo(0.2, within(0.01));
    assertThat(value(said.json(), "y")).isCloseTo(-0.3, within(0.01));
    assertThat(value(said.json(), "bearing")).isCloseTo(1.2, within(0.01));
    assertThat(value(said.json(), "tilt")).isCloseTo(0.1, within(0.01));
    Said feet = Said.by("figure", "walk", table(walked(sonde, 2.5)), "--units", "feet-inches");
    assertThat(feet.out()).contains("4' 3\" (give or take");
  }

  @Test
  void aWalkTakesPartsAndLevelAntennasAndCellsInQuotes() throws IOException {
    Dipole sonde = new Dipole(0.2, -0.3, 1.3, 1.2, 0.1, 2);
    StringBuilder text = new StringBuilder("x;y;height;level;bearing;bx;by;bz\n");
    for (int i = 0; i < 14; i++) {
      double x = 0.3 * i - 2;
      double y = i % 3 - 1;
      Field field = sonde.at(x, y, 0.0254);
      text.append(
          String.format(
              Locale.ROOT,
              "%.3f m;%.3f m;\"1\"\"\";%.6f;N 40 E;%.6f;%.6f;%.6f%n",
              x,
              y,
              StrictMath.abs(field.level(StrictMath.toRadians(40))),
              -field.x(),
              -field.y(),
              -field.z()));
    }
    JsonNode reply = Said.by("figure", "walk", table(text.toString()), "--json").json();
    assertThat(value(reply, "depth")).isCloseTo(1.3, within(0.01));
    assertThat(value(reply, "bearing")).isCloseTo(1.2, within(0.01));
  }

  @Test
  void aWalkComplainsOfEveryCellWithLineAndColumn() throws IOException {
    Path file = table("x,y,whole\n1 m,2,5\n1 ft,2 ft,many\n,1 ft,3\n");
    Said said = Said.by("figure", "walk", file);
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err().lines())
        .hasSize(3)
        .anyMatch(line -> line.contains("walk.csv:2:5: “2” is not a length: its unit"))
        .anyMatch(line -> line.contains("walk.csv:3:11: “many” is not a number"))
        .anyMatch(line -> line.contains("walk.csv:4:1: “x” is missing"));
    Said head = Said.by("figure", "walk", table("x,z,y (ell),y\n"));
    assertThat(head.err())
        .contains("walk.csv:1:3: “z” is not known here")
        .contains("walk.csv:1:5: “ell” is not known here")
        .contains("walk.csv:1:13: “y” stands here twice")
        .contains("a column of strengths is needed");
  }

  @Test
  void aWalkThatTellsNothingSaysWhatIsLacking() throws IOException {
    Said few = Said.by("figure", "walk", table("x,y,whole\n1 m,2 m,5\n"));
    assertThat(few.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(few.out()).contains("Seven strengths or more are needed; there are 1");
    assertThat(Said.by("figure", "walk", folder.resolve("none.csv")).err())
        .contains("there is no such file");
    assertThat(Said.by("figure", "walk", folder).err()).contains("this is not a file");
    assertThat(Said.by("figure", "walk", table("\n")).err()).contains("nothing is in it");
    Path binary = Files.write(folder.resolve("b.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 10});
    assertThat(Said.by("figure", "walk", binary).err()).contains("UTF-8");
  }
}
