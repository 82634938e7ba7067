package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a process of its own, in the poorest of locales. */
class ProcessTest {
  @TempDir private Path folder = Path.of("");

  private Said started(Object... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    for (Object word : words) {
      command.add(word.toString());
    }
    Path out = folder.resolve("said");
    Path err = folder.resolve("complained");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("LANG", "C");
    builder.environment().put("LC_ALL", "C");
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = builder.start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Said(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void leavesWithTheExitCodeOfTheCommand() throws IOException, InterruptedException {
    Path book = Books.copied("S11", folder);
    assertThat(started("answer", book).code()).isEqualTo(ExitCode.DONE);
    assertThat(started("leaving", book).code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(started("leaving", folder.resolve("none.yaml")).code())
        .isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(started("answer", book, "-o", folder).code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(started("answer", "--nothing").code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void speaksUtf8WhateverTheLocale() throws IOException, InterruptedException {
    Path book = folder.resolve("book.yaml");
    Files.writeString(
        book,
        Files.readString(Books.copied("S11", folder)).replace("name: Tie off", "name: Grüße"));
    assertThat(started("answer", book).out()).startsWith("Grüße\n").contains(" — ");
    assertThat(started("leaving", book).out()).contains("A–L2");
  }
}
