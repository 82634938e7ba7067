package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code figure dig}. */
class FigureDigTest {
  private static List<String> names(JsonNode reply) {
    return StreamSupport.stream(reply.path("figures").spliterator(), false)
        .map(one -> one.path("name").asText())
        .toList();
  }

  private static Said dig(Path book, String... more) {
    return Said.by(
        Stream.concat(Stream.of("figure", "dig", book.toString()), Stream.of(more)).toArray());
  }

  @Test
  void theFirstLineIsTheTicketAndTheLastTheLocalCode(@TempDir Path folder) {
    Path book = Books.copied("S28", folder);
    Said said = dig(book, "--at", "R1:20 ft", "--on", "2026-05-14");

    assertThat(said.err()).isEmpty();
    List<String> lines = said.out().lines().toList();
    assertThat(lines.getFirst()).contains("INVENTED-28").contains("May 14, 2026");
    assertThat(said.out())
        .contains("by level tape from A")
        .contains("by level tape from B")
        .contains("on the left as you look from A to B")
        .contains("down; the wall of the pipe comes sooner")
        .contains("19 times of 20")
        .contains("quality level C")
        .contains("Sewage carries disease")
        .contains("Dig by hand near every mark");
    assertThat(lines.getLast()).contains("Local codes");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void withoutAGoodTicketItSaysDoNotDigAndLeavesSo(@TempDir Path folder) {
    Path book = Books.copied("S28", folder);
    Said late = dig(book, "--at", "L2", "--on", "2026-05-15");
    Said none = dig(Books.copied("S01", folder), "--at", "L1");

    assertThat(late.out().lines().findFirst().orElseThrow())
        .contains("ran out")
        .contains("do not dig");
    assertThat(late.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(none.out().lines().findFirst()).contains("No ticket on record: do not dig.");
    assertThat(none.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
  }

  @Test
  void aStopOrderGoesBeforeAllElse(@TempDir Path folder) {
    Said said = dig(Books.copied("S21", folder), "--at", "F1");

    assertThat(said.out().lines().findFirst().orElseThrow())
        .startsWith("Stop:")
        .contains("call the utility");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
  }

  /** One set of words: what the report says of a dig is what the command says. */
  @Test
  void theReportSaysOfADigWhatTheCommandSays(@TempDir Path folder) throws IOException {
    Path book = Books.copied("S01", folder);
    Files.writeString(
        book,
        Files.readString(book)
            + "  findings: [{label: F9, kind: crack, cable: 20, width: 2 mm}]\n");
    Said.by("answer", book, "-o", folder.resolve("out"));
    JsonNode answers =
        new ObjectMapper().readTree(Files.readAllBytes(folder.resolve("out/answers.json")));
    List<String> rows =
        StreamSupport.stream(answers.at("/digs/0/rows").spliterator(), false)
            .map(row -> row.path("sentence").asText())
            .toList();

    assertThat(rows).isNotEmpty().first().asString().contains("do not dig");
    assertThat(dig(book, "--at", "F9").out().lines().toList()).isEqualTo(rows);
  }

  /** A mistaken priors file is a complaint of that option; a good one changes the figures. */
  @Test
  void onesOwnPriorsCount(@TempDir Path folder) throws IOException {
    Path book = Books.copied("S28", folder);
    Path own = folder.resolve("own.yaml");
    Files.writeString(
        own,
        "daylight-priors: 1\npriors:\n  - {kind: locate-spot, a: 1 m, b: 5 %, source: us, mark: common-practice}\n");
    JsonNode usual = dig(book, "--at", "L2", "--on", "2026-05-01", "--json").json();
    JsonNode wide =
        dig(book, "--at", "L2", "--on", "2026-05-01", "--priors", own.toString(), "--json").json();
    Said none =
        Said.by(
            "figure",
            "lift",
            "--shown",
            "1 m",
            "--raised",
            "0.5 m",
            "--then",
            "1.5 m",
            "--priors",
            folder.resolve("missing.yaml").toString());

    assertThat(box(wide)).isGreaterThan(box(usual));
    assertThat(none.code()).isEqualTo(ExitCode.USAGE);
    assertThat(none.err()).contains("--priors").contains("there is no such file");
  }

  @Test
  void moreRoomMakesAWiderBox(@TempDir Path folder) {
    Path book = Books.copied("S28", folder);
    JsonNode usual = dig(book, "--at", "L2", "--on", "2026-05-01", "--json").json();
    JsonNode roomy =
        dig(book, "--at", "L2", "--on", "2026-05-01", "--tolerance", "0.5 m", "--json").json();

    assertThat(names(usual)).startsWith("ticket-good", "place", "tape-first", "tape-second");
    assertThat(box(roomy) - box(usual)).isBetween(0.399, 0.401);
  }

  private static double box(JsonNode reply) {
    return StreamSupport.stream(reply.path("figures").spliterator(), false)
        .filter(one -> one.path("name").asText().equals("box"))
        .findFirst()
        .orElseThrow()
        .path("value")
        .asDouble();
  }

  @Test
  void whatItCannotUseIsNamed(@TempDir Path folder) {
    Path book = Books.copied("S28", folder);
    Said nowhere = dig(book, "--at", "Z9");
    Said day = dig(book, "--at", "L1", "--on", "soon", "--tolerance", "wide");
    Said beyond = dig(book, "--at", "R1:99 ft", "--on", "2026-05-01");
    Said broken = dig(book, "--at", "R1:far");

    assertThat(nowhere.code()).isEqualTo(ExitCode.USAGE);
    assertThat(nowhere.err()).contains("--at").contains("Z9");
    assertThat(day.code()).isEqualTo(ExitCode.USAGE);
    assertThat(day.err()).contains("--on").contains("--tolerance");
    assertThat(beyond.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(beyond.out()).contains("was asked for");
    assertThat(broken.code()).isEqualTo(ExitCode.USAGE);
    assertThat(broken.err()).contains("--at");
  }
}
