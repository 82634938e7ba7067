package daylight.archive.seal;

import daylight.archive.Sha256;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;

/**
 * A bundle: contents and the list of them in one zip file that any system opens. The same contents
 * and facts give the same bytes.
 */
public final class Bundle {
  private Bundle() {}

  /** What came of sealing. */
  public sealed interface Outcome {
    /** It was written; the seal is what tells it from every other. */
    record Sealed(Sha256 seal) implements Outcome {}

    /** Nothing was written. */
    record Refused(Statement why) implements Outcome {}
  }

  /** A content while it is being sealed. */
  private record Weighed(Item item, Content content, long checksum) {}

  /** Its content was another when it was read again. */
  private static final class Moving extends IOException {
    private static final long serialVersionUID = 1;

    Moving(String name) {
      super(name);
    }
  }

  /**
   * Seals contents into a file, which is there whole or not at all.
   *
   * @param target must not be there yet
   * @param facts about the sealing, by names of small letters and hyphens; values of one line
   * @param contents by their names in the bundle: paths with slashes that lead nowhere else
   * @throws IllegalArgumentException if a name or a fact cannot be one
   */
  public static Outcome write(
      Path target, Map<String, String> facts, SortedMap<String, Content> contents) {
    Path file = target.toAbsolutePath();
    if (Files.exists(file)) {
      return refused(SealTrouble.THERE_ALREADY, target.toString());
    }
    try {
      Files.createDirectories(file.getParent());
      Path folder = Files.createTempDirectory(file.getParent(), ".sealing");
      Path work = folder.resolve("packed");
      try {
        List<Weighed> weighed = new ArrayList<>();
        for (Map.Entry<String, Content> one : contents.entrySet()) {
          weighed.add(weighed(one.getKey(), one.getValue()));
        }
        SealList list = new SealList(facts, weighed.stream().map(Weighed::item).toList());
        pack(work, list, weighed);
        Files.move(work, file, StandardCopyOption.ATOMIC_MOVE);
        return new Outcome.Sealed(list.seal());
      } finally {
        Files.deleteIfExists(work);
        Files.deleteIfExists(folder);
      }
    } catch (Moving moving) {
      return refused(SealTrouble.MOVING, String.valueOf(moving.getMessage()));
    } catch (IOException e) {
      return new Outcome.Refused(
          Statement.of(
              SealTrouble.NOT_WRITTEN,
              new Argument.Text(target.toString()),
              new Argument.Text(e.toString())));
    }
  }

  /** Whether a file of a bundle may be called so: a path with slashes that leads nowhere else. */
  public static boolean isName(String name) {
    return Item.isName(name) && !name.equals(SealList.NAME);
  }

  private static Outcome refused(SealTrouble why, String what) {
    return new Outcome.Refused(Statement.of(why, new Argument.Text(what)));
  }

  private static Weighed weighed(String name, Content content) throws IOException {
    Measure measure = new Measure();
    try (InputStream in = content.open()) {
      Sha256 sum = measure.read(in, OutputStream.nullOutputStream());
      return new Weighed(new Item(name, measure.size(), sum), content, measure.checksum());
    }
  }

  private static void pack(Path work, SealList list, List<Weighed> all) throws IOException {
    Wrapping wrapping = new Wrapping();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(work))) {
      byte[] text = list.text().getBytes(StandardCharsets.UTF_8);
      CRC32 checksum = new CRC32();
      checksum.update(text);
      out.write(wrapping.head(SealList.NAME, text.length, checksum.getValue()));
      out.write(text);
      for (Weighed one : all) {
        Item item = one.item();
        out.write(wrapping.head(item.name(), item.size(), one.checksum()));
        Measure again = new Measure();
        try (InputStream in = one.content().open()) {
          if (!again.read(in, out).equals(item.content()) || again.size() != item.size()) {
            throw new Moving(item.name());
          }
        }
      }
      out.write(wrapping.end());
    }
    try (FileChannel channel = FileChannel.open(work, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Length, checksum and digest of what passes. */
  static final class Measure {
    private final CRC32 checksum = new CRC32();
    private long size;

    Sha256 read(InputStream in, OutputStream out) throws IOException {
      return Sha256.copied(
          new CheckedInputStream(in, checksum),
          new OutputStream() {
            @Override
            public void write(int b) throws IOException {
              out.write(b);
              size++;
            }

            @Override
            public void write(byte[] bytes, int from, int count) throws IOException {
              out.write(bytes, from, count);
              size += count;
            }
          });
    }

    long checksum() {
      return checksum.getValue();
    }

    long size() {
      return size;
    }
  }
}
