package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import daylight.app.OneDrain;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The follow-ups of books, read back by the npm package ical.js (RFC 5545), which is not ours. Days
 * were counted on a calendar by hand.
 */
class FollowUpsTest {
  private static final String NAME = "Dépôt; Légaré, « chez \\ Zoë » 🚰";
  private static final String ADDRESS = "7, rue Nulle-Part; Inventée";

  @TempDir private Path folder = Path.of("");

  /** A crack that lies through, roots, and what there is besides on paper. */
  private Path book(String day) throws IOException {
    Path book =
        OneDrain.empty()
            .on(
                "sight: [{from: 0, to: 9, clarity: clear}]",
                "works: [{kind: cleaning, reaches: [R1], how: \"jetted, roots cut\"}]",
                "consents: [{who: \"owner, Zoë\", what: camera; jetting, when: \""
                    + day
                    + "T09:00\"}]",
                "tickets: [{number: \"N-1;2,3\", issued: 2024-01-02, expires: 2031-03-31}]",
                "declined: [{what: a liner, who: owner}]")
            .found(
                "{label: F1, kind: roots, share: 80 %, cable: 4}",
                "{label: F2, kind: open-joint, cable: 5, remark: no size noted}",
                "{label: F3, kind: deposit-hard, share: 3 %, cable: 6}")
            .write(folder.resolve("book.yaml"));
    String text = Files.readString(book);
    return Files.writeString(
        book,
        text.replace(
                "name: A drain",
                "name: \"" + NAME.replace("\\", "\\\\") + "\"\n  address: \"" + ADDRESS + "\"")
            .replace("date: 2026-04-18", "date: " + day));
  }

  private Path answered(Path book, String language) {
    Path out = folder.resolve("out-" + language);
    Said said = Said.by("--language=" + language, "answer", book, "-o", out);
    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    return out;
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static JsonNode followUps(Path out) throws IOException {
    return new JsonMapper().readTree(out.resolve("answers.json").toFile()).path("followUps");
  }

  @Test
  void everyEventIsReadBackWithItsDayAndItsText() throws IOException {
    for (String language : List.of("en", "fr")) {
      Path out = answered(book("2024-01-31"), language);
      JsonNode calendar = Calendar.read(out.resolve("follow-ups.ics"));
      assertThat(calendar.path("version").asText()).isEqualTo("2.0");
      assertThat(calendar.path("name").asText()).endsWith(NAME);
      List<JsonNode> events = list(calendar.path("events"));
      List<JsonNode> dated =
          list(followUps(out)).stream().filter(one -> !one.path("day").isNull()).toList();
      assertThat(events).hasSameSizeAs(dated).hasSizeGreaterThanOrEqualTo(4);
      Set<String> ids = new HashSet<>();
      for (int i = 0; i < events.size(); i++) {
        JsonNode event = events.get(i);
        assertThat(event.path("uid")).isEqualTo(dated.get(i).path("id"));
        assertThat(event.path("start")).isEqualTo(dated.get(i).path("day"));
        assertThat(event.path("summary").asText())
            .startsWith(NAME)
            .contains(dated.get(i).path("sentence").asText())
            .endsWith(language.equals("en") ? "(invented)" : "(inventé)");
        assertThat(event.path("allDay").asBoolean()).isTrue();
        assertThat(event.path("days").asInt()).isEqualTo(1);
        assertThat(event.path("stamp").asText()).isEqualTo("2024-01-31T00:00:00Z");
        assertThat(event.path("location").asText()).isEqualTo(ADDRESS);
        assertThat(event.path("description").asText())
            .contains(language.equals("en") ? "Invented example" : "Exemple inventé")
            .contains("\n");
        ids.add(event.path("uid").asText());
      }
      assertThat(ids).hasSameSizeAs(events);
      assertFolded(out.resolve("follow-ups.ics"));
    }
  }

  /** RFC 5545, 3.1: lines end by CR LF, are of 75 octets at most, and no character is cut. */
  private static void assertFolded(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    List<byte[]> lines = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        assertThat(bytes[i - 1]).isEqualTo((byte) '\r');
        lines.add(java.util.Arrays.copyOfRange(bytes, from, i - 1));
        from = i + 1;
      }
    }
    assertThat(from).isEqualTo(bytes.length);
    int longest = 0;
    for (byte[] line : lines) {
      longest = Math.max(longest, line.length);
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line));
    }
    assertThat(longest).isBetween(73, 75);
  }

  @Test
  void daysFollowFromTheVisitOverMonthEndsAndLeapDays() throws IOException {
    // A year from a leap day, six weeks, three months from the last of November.
    assertThat(days(book("2024-02-29"))).contains("ticket 2031-03-31", "look 2025-02-28");
    assertThat(days(book("2023-11-30"))).contains("look 2024-11-30", "consent 2023-11-30");
  }

  private List<String> days(Path book) throws IOException {
    return list(followUps(answered(book, "en"))).stream()
        .map(one -> one.path("what").asText() + " " + one.path("day").asText())
        .toList();
  }

  @Test
  void whatHasNoClassGetsNoDayAndIsToldWithTheLine() throws IOException {
    Path out = answered(book("2024-01-31"), "en");
    JsonNode open =
        list(followUps(out)).stream()
            .filter(one -> one.path("finding").asText().equals("F2"))
            .findFirst()
            .orElseThrow();
    assertThat(open.path("day").isNull()).isTrue();
    assertThat(open.path("open").asText()).isEqualTo("no_class");
    assertThat(list(Calendar.read(out.resolve("follow-ups.ics")).path("events")))
        .noneMatch(event -> event.path("uid").equals(open.path("id")))
        .anyMatch(
            event ->
                event.path("description").asText().contains("Not in the calendar, for no day"));
  }

  @Test
  void theSameBookGivesTheSameBytesAndALaterVisitMovesTheSameEvent() throws IOException {
    byte[] first = Files.readAllBytes(answered(book("2024-01-31"), "en").resolve("follow-ups.ics"));
    assertThat(Files.readAllBytes(answered(book("2024-01-31"), "en").resolve("follow-ups.ics")))
        .isEqualTo(first);
    JsonNode before = look(answered(book("2024-01-31"), "en"));
    JsonNode after = look(answered(book("2025-01-31"), "en"));
    assertThat(after.path("id")).isEqualTo(before.path("id"));
    assertThat(after.path("day")).isNotEqualTo(before.path("day"));
  }

  private static JsonNode look(Path out) throws IOException {
    return list(followUps(out)).stream()
        .filter(one -> one.path("what").asText().equals("look"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aStopOrderIsToldInEveryEventOfItsLine() throws IOException {
    Path out = folder.resolve("stopped");
    assertThat(Said.by("answer", Books.copied("S21", folder), "-o", out).code()).isZero();
    List<JsonNode> events = list(Calendar.read(out.resolve("follow-ups.ics")).path("events"));
    List<String> stopped =
        list(followUps(out)).stream()
            .filter(one -> one.path("stopped").asBoolean())
            .filter(one -> !one.path("day").isNull())
            .map(one -> one.path("id").asText())
            .toList();
    assertThat(stopped).hasSizeGreaterThanOrEqualTo(2);
    for (JsonNode event : events) {
      if (stopped.contains(event.path("uid").asText())) {
        assertThat(event.path("summary").asText()).contains("STOP");
        assertThat(event.path("description").asText()).startsWith("STOP. Do not cut");
      }
    }
    assertThat(events.getFirst().path("summary").asText()).contains("STOP");
  }

  @Test
  void withoutADayOfTheVisitThereIsNoCalendarAndTheAnswersSayWhy() throws IOException {
    Path book =
        OneDrain.empty()
            .found("{label: F1, kind: roots, share: 80 %, cable: 4}")
            .write(folder.resolve("undated.yaml"));
    Files.writeString(book, Files.readString(book).replace("  date: 2026-04-18\n", ""));
    Path out = answered(book, "en");
    assertThat(out.resolve("follow-ups.ics")).doesNotExist();
    assertThat(list(followUps(out)))
        .isNotEmpty()
        .allMatch(one -> one.path("open").asText().equals("no_day"));
  }
}
