package daylight.archive.seal;

import daylight.archive.Sha256;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * Tells whether a bundle is as it was sealed. A bundle has one form only, so every byte is known
 * from its list; the list is known from its last line. Whoever rewrites all of it, the last line
 * too, makes another bundle, which only a seal that was noted elsewhere tells from this one.
 */
public final class SealCheck {
  private static final long LONGEST_LIST = 64L << 20;

  private final Path file;

  private SealCheck(Path file) {
    this.file = file;
  }

  /**
   * What was found.
   *
   * @param seal of the list as it is now; null where there is none
   * @param facts of that list
   * @param differences what is not as it was sealed; none where nothing is
   */
  public record Checked(
      @Nullable Sha256 seal, Map<String, String> facts, List<Statement> differences) {
    public Checked {
      differences = List.copyOf(differences);
    }

    /** Whether it is as it was sealed. */
    public boolean isUnchanged() {
      return differences.isEmpty();
    }
  }

  /**
   * Checks a bundle, which is read once, and twice where something differs.
   *
   * @param noted the seal that was noted when it was sealed; null where none was
   */
  public static Checked of(Path file, @Nullable Sha256 noted) {
    SealCheck check = new SealCheck(file);
    try {
      Checked checked = check.byForm();
      Checked told = checked.isUnchanged() ? checked : check.byContent();
      return noted == null || noted.equals(told.seal()) ? told : other(told, noted);
    } catch (IOException e) {
      return check.broken(SealTrouble.UNREADABLE, file.toString(), e.toString());
    }
  }

  private static Checked other(Checked told, Sha256 noted) {
    Sha256 seal = told.seal();
    List<Statement> differences = new ArrayList<>(told.differences());
    if (seal != null) {
      differences.add(said(SealTrouble.OTHER_SEAL, seal.hex(), noted.hex()));
    }
    return new Checked(seal, told.facts(), differences);
  }

  private Checked broken(SealTrouble why, String... what) {
    return new Checked(null, Map.of(), List.of(said(why, what)));
  }

  private static Statement said(SealTrouble what, String... about) {
    return Statement.of(
        what, Arrays.stream(about).map(Argument.Text::new).toArray(Argument[]::new));
  }

  /** Byte by byte; whatever differs, it only says that something does. */
  private Checked byForm() throws IOException {
    Checked differs = broken(SealTrouble.WRAPPING, file.toString());
    Wrapping wrapping = new Wrapping();
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
      byte[] text = first(in, wrapping);
      Optional<SealList.Read> read =
          text == null ? Optional.empty() : SealList.read(new String(text, StandardCharsets.UTF_8));
      if (read.isEmpty() || !read.get().sound()) {
        return differs;
      }
      SealList list = read.get().list();
      for (Item item : list.items()) {
        if (!isNext(in, wrapping, item)) {
          return differs;
        }
      }
      byte[] end = wrapping.end();
      return Arrays.equals(end, in.readNBytes(end.length)) && in.read() < 0
          ? new Checked(list.seal(), list.facts(), List.of())
          : differs;
    }
  }

  /** The list, which comes first; null where something else does. */
  private static byte @Nullable [] first(InputStream in, Wrapping wrapping) throws IOException {
    byte[] head = in.readNBytes(Wrapping.HEAD + SealList.NAME.length());
    if (head.length < Wrapping.HEAD) {
      return null;
    }
    long size = Integer.toUnsignedLong(number(head, Wrapping.CHECKSUM_AT + 4));
    if (size > LONGEST_LIST) {
      return null;
    }
    byte[] text = in.readNBytes((int) size);
    CRC32 checksum = new CRC32();
    checksum.update(text);
    byte[] due = wrapping.head(SealList.NAME, text.length, checksum.getValue());
    return Arrays.equals(due, head) ? text : null;
  }

  private static boolean isNext(InputStream in, Wrapping wrapping, Item item) throws IOException {
    int path = item.name().getBytes(StandardCharsets.UTF_8).length;
    byte[] begins = in.readNBytes(Wrapping.HEAD + path);
    if (begins.length < Wrapping.HEAD) {
      return false;
    }
    long told = Integer.toUnsignedLong(number(begins, Wrapping.CHECKSUM_AT));
    byte[] due = wrapping.head(item.name(), item.size(), told);
    byte[] rest = in.readNBytes(due.length - begins.length);
    Bundle.Measure measure = new Bundle.Measure();
    Sha256 sum = measure.read(new Portion(in, item.size()), OutputStream.nullOutputStream());
    return Arrays.equals(due, 0, begins.length, begins, 0, begins.length)
        && Arrays.equals(due, begins.length, due.length, rest, 0, rest.length)
        && sum.equals(item.content())
        && measure.checksum() == told;
  }

  private static int number(byte[] bytes, int at) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(at);
  }

  /** File by file, as any program that opens zip files finds them. */
  private Checked byContent() throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry(SealList.NAME);
      Optional<SealList.Read> read =
          entry == null || entry.getSize() > LONGEST_LIST
              ? Optional.empty()
              : SealList.read(text(zip, entry));
      if (read.isEmpty()) {
        return broken(SealTrouble.NO_SEAL, file.toString());
      }
      SealList list = read.get().list();
      List<Statement> differences = new ArrayList<>();
      if (!read.get().sound()) {
        differences.add(said(SealTrouble.LIST_CHANGED));
      }
      differences.addAll(differences(zip, list));
      if (differences.isEmpty()) {
        differences.add(said(SealTrouble.WRAPPING, file.toString()));
      }
      return new Checked(list.seal(), list.facts(), differences);
    } catch (ZipException e) {
      return broken(SealTrouble.UNREADABLE, file.toString(), String.valueOf(e.getMessage()));
    }
  }

  private static String text(ZipFile zip, ZipEntry entry) throws IOException {
    try (InputStream in = zip.getInputStream(entry)) {
      return new String(in.readNBytes((int) LONGEST_LIST), StandardCharsets.UTF_8);
    } catch (ZipException damaged) {
      return "";
    }
  }

  private static List<Statement> differences(ZipFile zip, SealList list) {
    List<Statement> differences = new ArrayList<>();
    Set<String> known = new TreeSet<>(Set.of(SealList.NAME));
    for (Item item : list.items()) {
      known.add(item.name());
      ZipEntry entry = zip.getEntry(item.name());
      if (entry == null) {
        differences.add(said(SealTrouble.MISSING, item.name()));
      } else if (!isSame(zip, entry, item)) {
        differences.add(said(SealTrouble.CHANGED, item.name()));
      }
    }
    for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
      String name = all.nextElement().getName();
      if (known.add(name)) {
        differences.add(said(SealTrouble.ADDED, name));
      }
    }
    return differences;
  }

  private static boolean isSame(ZipFile zip, ZipEntry entry, Item item) {
    try (InputStream in = zip.getInputStream(entry)) {
      return Sha256.copied(in, OutputStream.nullOutputStream()).equals(item.content());
    } catch (IOException | IllegalArgumentException damaged) {
      return false;
    }
  }

  /** So many bytes of a stream and no more. */
  private static final class Portion extends InputStream {
    private final InputStream in;
    private long left;

    Portion(InputStream in, long left) {
      this.in = in;
      this.left = left;
    }

    @Override
    public int read() throws IOException {
      int read = left == 0 ? -1 : in.read();
      left -= read < 0 ? 0 : 1;
      return read;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int read = left == 0 ? -1 : in.read(into, from, (int) Math.min(most, left));
      left -= Math.max(read, 0);
      return read;
    }
  }
}
