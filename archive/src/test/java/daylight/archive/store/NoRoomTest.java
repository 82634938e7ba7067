package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Sha256;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk that is full, then has room again, then only reads. Where the system lets a test mount one
 * for itself, it is a small disk in memory; elsewhere files may not grow beyond a limit, and
 * nothing is tried that only reads.
 */
class NoRoomTest {
  private static final Pages PAGES = new Pages("full");

  @TempDir private Path folder = Path.of("");

  /** Enters until there is no room. */
  static final class Filler {
    private Filler() {}

    /**
     * Begins.
     *
     * @param words the folder of the disk; {@code disk} where it can be made to read only
     */
    public static void main(String[] words) throws IOException, InterruptedException {
      Path disk = Path.of(words[0]);
      Path room = disk.resolve("room");
      if (words[1].equals("disk")) {
        Files.write(room, new byte[400_000]);
      }
      Archive archive = Pages.opened(disk.resolve("home"));
      archive.enter(PAGES.book, PAGES.begun(), Pages.PHONE);
      int entered = 0;
      Entering outcome = enter(archive, entered);
      while (outcome instanceof Entering.Kept) {
        entered++;
        outcome = enter(archive, entered);
      }
      say("full after " + entered + ": " + outcome);
      say("there " + there(archive));
      say("backup " + archive.backup(disk.resolve("saved.zip")));
      say("files " + files(disk));
      media(archive);
      if (!words[1].equals("disk")) {
        return;
      }
      Files.delete(room);
      say("again " + enter(archive, entered).equals(new Entering.Kept(1)));
      say("there " + there(archive));
      // What somebody writes to is not made to read only.
      archive.close();
      remount(disk);
      say("reading only: " + enter(archive, entered + 1));
      say("opening: " + Archive.open(disk.resolve("home")));
    }

    private static Entering enter(Archive archive, int number) {
      String remark = "r".repeat(15_000);
      Entered one =
          new Entered(
              PAGES.findingId(number),
              PAGES.push,
              "findings",
              0,
              "{label: F%d, kind: roots, cable: 1, remark: %s}".formatted(number, remark));
      return archive.enter(PAGES.book, List.of(one), Pages.PHONE).getFirst();
    }

    private static long there(Archive archive) {
      return archive.entries(PAGES.book).stream()
          .filter(entry -> entry.section().equals("findings"))
          .count();
    }

    private static List<String> files(Path disk) throws IOException {
      try (var files = Files.list(disk)) {
        return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
      }
    }

    private static void media(Archive archive) throws IOException {
      byte[] bytes = new byte[20_000_000];
      new Random(1).nextBytes(bytes);
      Sha256 content =
          Sha256.copied(new ByteArrayInputStream(bytes), java.io.OutputStream.nullOutputStream());
      try {
        say(
            "media "
                + archive
                    .media()
                    .receive(content, bytes.length, 0, new ByteArrayInputStream(bytes)));
      } catch (IOException e) {
        say("media refused, named: " + archive.media().file(content).isPresent());
      }
    }

    private static void remount(Path disk) throws IOException, InterruptedException {
      new ProcessBuilder("mount", "-o", "remount,ro", disk.toString())
          .inheritIO()
          .start()
          .waitFor();
    }

    private static void say(String what) {
      System.out.println(what);
    }
  }

  private static boolean mounts(Path at) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(
                  "unshare", "-rm", "mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", at.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void nothingThatWasAcknowledgedIsLost() throws Exception {
    Path disk = Files.createDirectories(folder.resolve("disk"));
    boolean mounts = mounts(disk);
    List<String> command = new ArrayList<>();
    if (mounts) {
      command.addAll(List.of("unshare", "-rm", "sh", "-c"));
      command.add("mount -t tmpfs -o size=2m tmpfs " + disk + " && exec \"$@\"");
    } else {
      // In blocks of 512 bytes.
      command.addAll(List.of("sh", "-c", "ulimit -f 3000 && exec \"$@\""));
    }
    command.add("sh");
    command.addAll(Child.command(Filler.class, disk.toString(), mounts ? "disk" : "limit"));

    List<String> said = Child.lines(command);

    int entered = Integer.parseInt(said.getFirst().replaceAll("full after (\\d+).*", "$1"));
    assertThat(entered).as(String.join("\n", said)).isGreaterThan(5);
    String full = mounts ? "key=FULL" : "key=UNREACHABLE";
    assertThat(said.get(0)).contains("NotWritten", full, "home").doesNotContain("roots");
    assertThat(said.get(1)).isEqualTo("there " + entered);
    assertThat(said.get(2)).contains(full, "saved.zip");
    assertThat(said.get(3)).isEqualTo(mounts ? "files [home, room]" : "files [home]");
    assertThat(said.get(4)).matches("media (Partly.*|refused, named: false)");
    if (mounts) {
      assertThat(said.subList(5, 7)).containsExactly("again true", "there " + (entered + 1));
      assertThat(said.get(7)).contains("NotWritten", "key=READ_ONLY");
      assertThat(said.get(8)).contains("Refused", "key=READ_ONLY");
    }
  }
}
