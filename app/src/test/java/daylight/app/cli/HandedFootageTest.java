package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import daylight.app.CountedFilm;
import daylight.app.Ffprobe;
import daylight.app.HandedFootage;
import daylight.app.Job;
import daylight.app.OneDrain;
import daylight.app.Progress;
import daylight.archive.ResultFolder;
import daylight.footage.Make;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What is handed over of recordings; what is in a copy is told by ffprobe. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandedFootageTest {
  private Path folder = Path.of("");
  private Path book = Path.of("");
  private Path out = Path.of("");
  private JsonNode reply = new JsonMapper().createObjectNode();

  /**
   * An H.264 push with voices, a place, a day and a device in its tags, an old AVI, and no film.
   */
  @BeforeAll
  void films(@TempDir Path made) throws IOException {
    folder = made;
    CountedFilm.withVoices(folder.resolve("push.mp4"));
    CountedFilm.write(folder.resolve("old.avi"), Make.MPEG4_AVI);
    Files.writeString(folder.resolve("words.mp4"), "only words");
    book =
        OneDrain.empty()
            .found("{label: F1, kind: crack, cable: 5, clock: 12}")
            .with(
                "{label: M1, kind: footage, file: push.mp4, pass: P1}",
                "{label: M2, kind: footage, file: words.mp4, pass: P1}",
                "{label: M3, kind: footage, file: old.avi, pass: P1}")
            .write(folder.resolve("book.yaml"));
    out = folder.resolve("out");
    Said said = Said.by("answer", book, "-o", out, "--footage", "--json");
    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    reply = said.json();
  }

  private static String tags(Path file) throws IOException {
    return Ffprobe.says(file, "-show_format", "-show_streams", "-show_chapters", "-of", "json");
  }

  private static double seconds(Path file) throws IOException {
    return Double.parseDouble(
        Ffprobe.says(file, "-show_entries", "format=duration", "-of", "csv=p=0").strip());
  }

  @Test
  void aRecordingThatCannotBeOpenedIsToldAndTheRestGoesOn() {
    JsonNode told = reply.path("footage");
    assertThat(told).hasSize(3);
    assertThat(told.path(0).path("outcome").asText()).isEqualTo("copied");
    assertThat(told.path(0).path("anew").asBoolean()).isFalse();
    assertThat(told.path(1).path("outcome").asText()).isEqualTo("left-out");
    assertThat(told.path(1).path("sentence").asText()).contains("words.mp4", "not handed over");
    // AVI does not tell the time of each frame, so MP4 cannot hold it as it is.
    assertThat(told.path(2).path("outcome").asText()).isEqualTo("copied");
    assertThat(told.path(2).path("anew").asBoolean()).isTrue();
    assertThat(told.path(2).path("sentence").asText()).contains("written anew");
  }

  @Test
  void aCopyBeginsAtTheEntryIsSilentAndTellsNothingOfPlaceDayOrDevice() throws IOException {
    for (int i : new int[] {0, 2}) {
      JsonNode told = reply.path("footage").path(i);
      Path copy = out.resolve(told.path("files").path(0).asText());
      double from = told.path("from").asDouble();
      int first = (int) Math.round(from * CountedFilm.RATE);
      // Not before the last frame at nothing, and at most three seconds of the pipe after it.
      assertThat(CountedFilm.shown(first + 3 * CountedFilm.RATE)).isNotEqualTo("0.0 ft");
      assertThat(Stream.iterate(first + 1, n -> n < CountedFilm.FRAMES, n -> n + 1))
          .noneMatch(n -> CountedFilm.shown(n).equals("0.0 ft") && n < first + 20);
      assertThat(seconds(copy))
          .isCloseTo(CountedFilm.FRAMES / (double) CountedFilm.RATE - from, within(0.11));
      assertThat(tags(copy))
          .doesNotContain("\"audio\"")
          .doesNotContainIgnoringCase("\"location\"", "+59.0", "creation_time", "Invented Camera");
      assertThat(new String(Files.readAllBytes(copy), StandardCharsets.ISO_8859_1))
          .doesNotContain("+59.0000", "Invented Camera");
      JsonNode chapters = new JsonMapper().readTree(tags(copy)).path("chapters");
      assertThat(chapters.toString()).contains("F1", "start_time");
      List<String> texts = Vtt.texts(Path.of(copy.toString().replace(".mp4", ".chapters.vtt")));
      for (int n = 0; n < texts.size(); n++) {
        assertThat(chapters.path(n).path("tags").path("title").asText()).isEqualTo(texts.get(n));
      }
      List<String> captions = Vtt.texts(Path.of(copy.toString().replace(".mp4", ".captions.vtt")));
      double shown = Double.parseDouble(CountedFilm.shown(first).replace(" ft", ""));
      assertThat(feet(captions.getFirst())).isCloseTo(shown, within(0.51));
      assertThat(Files.readString(Path.of(copy.toString().replace(".mp4", ".sheet.html"))))
          .contains("F1", "data:image/jpeg");
    }
  }

  /** Feet and inches as a caption writes them. */
  private static double feet(String caption) {
    Matcher matcher = Pattern.compile("(?:(\\d+)' )?(\\d+)\"").matcher(caption);
    assertThat(matcher.matches()).as(caption).isTrue();
    String feet = matcher.group(1);
    return (feet == null ? 0 : Integer.parseInt(feet)) + Integer.parseInt(matcher.group(2)) / 12.0;
  }

  @Test
  void theFirstFrameOfACopyIsThatOfItsBeginningAndNoneOfThePictureWasWrittenAnew()
      throws IOException {
    JsonNode told = reply.path("footage").path(0);
    Path copy = out.resolve(told.path("files").path(0).asText());
    int first = (int) Math.round(told.path("from").asDouble() * CountedFilm.RATE);
    List<String> all = hashes(folder.resolve("push.mp4"));
    assertThat(hashes(copy)).isEqualTo(all.subList(first, all.size()));
  }

  /** A digest of every frame as FFmpeg decodes it. */
  private static List<String> hashes(Path file) throws IOException {
    Path made = file.resolveSibling(file.getFileName() + ".md5");
    Ffprobe.ffmpeg(
        "-i",
        file.toString(),
        "-map",
        "0:v",
        "-fps_mode",
        "passthrough",
        "-f",
        "framemd5",
        made.toString());
    try {
      return Files.readAllLines(made).stream()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.substring(line.lastIndexOf(',') + 1).strip())
          .toList();
    } finally {
      Files.delete(made);
    }
  }

  @Test
  void everyFileIsOfTheResultsAndCopiesAsTheyWereAreTheSameBytes() throws IOException {
    Path again = folder.resolve("again");
    Path first = out.resolve(reply.path("footage").path(0).path("files").path(0).asText());
    Said said = Said.by("answer", book, "-o", again, "--footage", "--json");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readAllBytes(again.resolve(out.relativize(first))))
        .isEqualTo(Files.readAllBytes(first));
    try (Stream<Path> files = Files.walk(again)) {
      List<String> there =
          files
              .filter(Files::isRegularFile)
              .map(file -> again.relativize(file).toString().replace('\\', '/'))
              .filter(name -> !name.equals("results.list"))
              .sorted()
              .toList();
      assertThat(Files.readAllLines(again.resolve("results.list"))).isEqualTo(there);
    }
    // Results without copies take the place of results with them.
    assertThat(Said.by("answer", book, "-o", again).code()).isEqualTo(ExitCode.DONE);
    assertThat(again.resolve("footage")).doesNotExist();
  }

  @Test
  void soundGoesAlongOnlyWhenChosen() throws IOException {
    Path loud = folder.resolve("loud");
    assertThat(Said.by("answer", book, "-o", loud, "--sound").code()).isEqualTo(ExitCode.USAGE);
    Said said = Said.by("answer", book, "-o", loud, "--footage", "--sound", "--json");
    Path copy = loud.resolve(said.json().path("footage").path(0).path("files").path(0).asText());
    assertThat(tags(copy)).contains("\"audio\"").doesNotContain("Invented Camera");
  }

  @Test
  void whoStopsItHalfWayLeavesNothing() throws IOException {
    Job.Outcome.Answered answered = (Job.Outcome.Answered) Job.answer(book, Job.Settings.USUAL);
    for (int after : new int[] {0, 1, 2, 4}) {
      int[] asked = {0};
      Progress stopping =
          (step, what) ->
              new Watch() {
                @Override
                public void done(double share) {}

                @Override
                public boolean stopped() {
                  return asked[0]++ >= after * 100;
                }
              };
      Path nothing = folder.resolve("nothing");
      HandedFootage handed = new HandedFootage(answered, false, stopping);
      assertThat(ResultFolder.write(nothing, new TreeMap<>(answered.files()), handed::fill))
          .isEqualTo(new ResultFolder.Outcome.NotWanted());
      assertThat(nothing).doesNotExist();
      try (Stream<Path> beside = Files.list(folder)) {
        assertThat(beside).noneMatch(file -> file.getFileName().toString().startsWith("."));
      }
    }
  }

  @Test
  void stillsAreNamedSoThatTheySortAlongTheDrain() throws IOException {
    Path many =
        OneDrain.empty()
            .found(
                "{label: \"Z/1\", kind: crack, cable: 2, clock: 12}",
                "{label: A2, kind: roots, cable: 8}",
                "{label: \"con\", kind: crack, cable: 5.5, clock: 3}")
            .filmed("push.mp4")
            .write(folder.resolve("many.yaml"));
    for (String units : List.of("feet", "metres")) {
      Path there = folder.resolve("many-" + units);
      assertThat(Said.by("answer", many, "-o", there, "--units", units).code()).isZero();
      try (Stream<Path> files = Files.list(there.resolve("stills"))) {
        List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
        String unit = units.equals("feet") ? "ft" : "m";
        double[] at =
            units.equals("feet") ? new double[] {2, 5.5, 8} : new double[] {.61, 1.68, 2.44};
        String form = units.equals("feet") ? "%05.1f" : "%06.2f";
        String[] ends = {"-Z-1-crack.jpg", "-con-crack.jpg", "-A2-roots.jpg"};
        assertThat(names).hasSize(3);
        for (int i = 0; i < 3; i++) {
          // The lens looks on a little from where the counter is, by no more than that.
          assertThat(names.get(i)).endsWith(unit + ends[i]);
          assertThat(Double.parseDouble(names.get(i).substring(0, names.get(i).indexOf(unit))))
              .isCloseTo(at[i], within(0.2));
          assertThat(names.get(i))
              .hasSize(
                  String.format(Locale.ROOT, form, at[i]).length()
                      + unit.length()
                      + ends[i].length());
        }
        String page = Files.readString(there.resolve("answers.json"));
        assertThat(page).isNotEmpty();
        assertThat(Arrays.stream(new String[] {"Z/1"})).allMatch(page::contains);
      }
    }
  }
}
