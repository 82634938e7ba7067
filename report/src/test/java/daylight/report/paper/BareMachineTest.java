package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import daylight.report.page.Paper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BareMachineTest {
  private static final int PATIENCE_SECONDS = 120;

  /** The program that the other machine runs. */
  static final class Elsewhere {
    private Elsewhere() {}

    public static void main(String[] arguments) throws Exception {
      Files.write(Path.of(arguments[0]), written());
    }
  }

  @Test
  void aMachineWithoutAnyFontWritesTheSameBytes(@TempDir Path folder) throws Exception {
    Path nothing = Files.createDirectory(folder.resolve("nothing"));
    Path settings = folder.resolve("fonts.conf");
    Files.writeString(
        settings,
        "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>");
    Path out = folder.resolve("report.pdf");
    ProcessBuilder elsewhere =
        new ProcessBuilder(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Duser.home=" + nothing,
                "-Dsun.java2d.fontpath=" + nothing,
                "-Duser.language=tr",
                "-Duser.timezone=Asia/Tokyo",
                "-cp",
                System.getProperty("java.class.path"),
                Elsewhere.class.getName(),
                out.toString()));
    elsewhere.environment().put("FONTCONFIG_FILE", settings.toString());
    elsewhere.environment().put("FONTCONFIG_PATH", nothing.toString());
    Process process = elsewhere.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    assertThat(Files.readAllBytes(out)).isEqualTo(written());
  }

  private static byte[] written() {
    Handout handout = Filmed.on(Paper.LETTER, Example.deadly(), true);
    return PaperReport.write(Filmed.edition(handout), handout.paper());
  }
}
