package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Sha256;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries come in, recordings arrive and backups are made, and the program is killed meanwhile. */
class KilledWhileAllGoOnTest {
  private static final int LONGEST = 1500;
  private static final int LENGTH = 400_000;
  private static final int PIECE = 50_000;
  private static final Pages PAGES = new Pages("killed");

  @TempDir private Path folder = Path.of("");

  /** Does all three at once, and says of each step that it is done. */
  static final class Worker {
    private final Archive archive;
    private final Path backups;
    private final int first;
    private final AtomicInteger entered = new AtomicInteger();

    private Worker(Path folder, int first) {
      archive = Pages.opened(folder.resolve("home"));
      backups = folder.resolve("backups");
      this.first = first;
    }

    /**
     * Begins.
     *
     * @param words the folder, and the number of the first finding
     */
    public static void main(String[] words) {
      Worker worker = new Worker(Path.of(words[0]), Integer.parseInt(words[1]));
      worker.archive.enter(PAGES.book, PAGES.begun(), Pages.PHONE);
      new Thread(worker::enter).start();
      new Thread(worker::receive).start();
      new Thread(worker::save).start();
    }

    private static synchronized void say(String what) {
      System.out.println(what);
      System.out.flush();
    }

    private void enter() {
      for (int i = first; true; i++) {
        // Two together, and the first of them changed by itself afterwards.
        kept(PAGES.finding(2 * i, 0, "1"), PAGES.finding(2 * i + 1, 0, "1"));
        entered.set(i + 1);
        say("entered " + i);
        kept(PAGES.finding(2 * i, 1, "2"));
        say("changed " + i);
      }
    }

    private void kept(Entered... entries) {
      List<Entering> outcomes = archive.enter(PAGES.book, List.of(entries), Pages.PHONE);
      if (!outcomes.stream().allMatch(Entering.Kept.class::isInstance)) {
        throw new AssertionError(outcomes);
      }
    }

    private void receive() {
      try {
        for (int seed = first; true; seed++) {
          byte[] bytes = recording(seed);
          Sha256 content = digest(bytes);
          for (int from = 0; from < LENGTH; from += PIECE) {
            archive.media().receive(content, LENGTH, from, piece(bytes, from, from + PIECE));
            say("received " + seed + " " + (from + PIECE));
          }
          archive.nameMedia(PAGES.book, "film/" + seed + ".mp4", content, Pages.PHONE);
          say("named " + seed);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private void save() {
      for (int i = first; true; i++) {
        int before = entered.get();
        var wrong = archive.backup(backups.resolve(i + ".zip"));
        if (wrong.isPresent()) {
          throw new AssertionError(wrong.get().toString());
        }
        say("saved " + i + " " + before);
      }
    }
  }

  private static byte[] recording(int seed) {
    byte[] bytes = new byte[LENGTH];
    new Random(seed).nextBytes(bytes);
    return bytes;
  }

  private static ByteArrayInputStream piece(byte[] bytes, int from, int to) {
    return new ByteArrayInputStream(Arrays.copyOfRange(bytes, from, to));
  }

  private static Sha256 digest(byte[] bytes) throws IOException {
    return Sha256.copied(new ByteArrayInputStream(bytes), java.io.OutputStream.nullOutputStream());
  }

  @Test
  void allThatWasSaidIsThere() throws Exception {
    killed(2);
  }

  @Test
  @Tag("long")
  void whateverTheMoment() throws Exception {
    killed(50);
  }

  private void killed(int times) throws Exception {
    SplittableRandom random = new SplittableRandom(times);
    Path said = folder.resolve("said");
    List<String> all = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      List<String> lines =
          Child.killed(
              said,
              random.nextInt(LONGEST),
              Worker.class,
              folder.toString(),
              Integer.toString(10_000 * i));
      all.addAll(lines);
      Archive archive = Pages.opened(folder.resolve("home"));
      assertThat(archive.rebuild()).as("what is derived, kill %d", i).isFalse();
      entriesAreThere(archive, lines);
      mediaAreThere(archive, lines);
      backupsAreWhole(lines, i);
    }
    entriesAreThere(Pages.opened(folder.resolve("home")), all);
    // In a few short lives not all of it comes to be said.
    List<String> wanted =
        times < 10 ? List.of("entered") : List.of("entered", "changed", "received", "saved");
    assertThat(all.stream().map(line -> line.substring(0, line.indexOf(' ')))).containsAll(wanted);
  }

  private static List<int[]> told(List<String> lines, String what) {
    return lines.stream()
        .filter(line -> line.startsWith(what + " "))
        .map(
            line ->
                Arrays.stream(line.split(" ", -1)).skip(1).mapToInt(Integer::parseInt).toArray())
        .toList();
  }

  private static void entriesAreThere(Archive archive, List<String> lines) {
    Map<Object, Integer> numbers = new TreeMap<>();
    archive
        .entries(PAGES.book)
        .forEach(
            entry -> assertThat(numbers.put(entry.entry(), entry.number())).as("twice").isNull());
    for (int[] one : told(lines, "entered")) {
      for (int finding = 2 * one[0]; finding <= 2 * one[0] + 1; finding++) {
        assertThat(numbers.get(PAGES.findingId(finding))).as("finding %d", finding).isPositive();
      }
    }
    for (int[] one : told(lines, "changed")) {
      // Once entered and once changed, and never twice.
      assertThat(numbers.get(PAGES.findingId(2 * one[0]))).isEqualTo(2);
      assertThat(archive.history(PAGES.book, PAGES.findingId(2 * one[0]))).hasSize(2);
    }
  }

  private static void mediaAreThere(Archive archive, List<String> lines) throws IOException {
    for (int[] one : told(lines, "received")) {
      byte[] bytes = recording(one[0]);
      Sha256 content = digest(bytes);
      long there = archive.media().arrived(content);
      assertThat(there).isGreaterThanOrEqualTo(one[1]);
      // What is there is right, for the rest makes it whole.
      assertThat(archive.media().receive(content, LENGTH, there, piece(bytes, (int) there, LENGTH)))
          .isEqualTo(new Arrival.Whole());
      assertThat(archive.media().file(content).orElseThrow()).hasBinaryContent(bytes);
    }
    for (int[] one : told(lines, "named")) {
      assertThat(archive.mediaOf(PAGES.book)).containsKey("film/" + one[0] + ".mp4");
    }
  }

  private void backupsAreWhole(List<String> lines, int kill) throws IOException {
    List<Path> there;
    try (var files = Files.list(Files.createDirectories(folder.resolve("backups")))) {
      there = files.filter(file -> file.toString().endsWith(".zip")).sorted().toList();
    }
    List<int[]> saved = told(lines, "saved");
    assertThat(there).hasSizeBetween(saved.size(), saved.size() + 1);
    for (Path file : there) {
      Path back = folder.resolve("back " + kill + " " + file.getFileName());
      assertThat(Archive.restore(file, back)).as(file.toString()).isEmpty();
      Archive restored = Pages.opened(back);
      assertThat(restored.rebuild()).isFalse();
      String number = file.getFileName().toString().replace(".zip", "");
      for (int[] one : saved) {
        if (number.equals(Integer.toString(one[0])) && one[1] > 0) {
          entriesAreThere(restored, List.of("entered " + (one[1] - 1)));
        }
      }
      Files.delete(file);
    }
  }
}
