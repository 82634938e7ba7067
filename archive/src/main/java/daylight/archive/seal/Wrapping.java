package daylight.archive.seal;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How files stand in a bundle: a zip file (PKWARE, APPNOTE.TXT 6.3.10, from memory) whose files are
 * stored as they are and that has but one form: no times, no attributes, no remarks, nothing
 * between. So every byte of it is known beforehand, and none can be another without being seen. A
 * library that writes zip files would do as well today, and otherwise in its next version.
 */
final class Wrapping {
  /** Bytes before the name in the head of a file. */
  static final int HEAD = 30;

  /** The same in the list at the end. */
  private static final int NOTE = 46;

  /** Where in that head the checksum stands. */
  static final int CHECKSUM_AT = 14;

  private static final int LOCAL = 0x04034b50;
  private static final int CENTRAL = 0x02014b50;
  private static final int END = 0x06054b50;
  private static final int LARGE_END = 0x06064b50;
  private static final int LARGE_PLACE = 0x07064b50;
  private static final int USUAL = 20;
  private static final int LARGE = 45;
  private static final int UTF_8 = 0x0800;

  /** The first day that such a file can tell: none. */
  private static final int NO_DAY = 0x21;

  private static final long MOST = 0xFFFF_FFFFL;
  private static final int MANY = 0xFFFF;
  private static final int LARGE_EXTRA = 1;

  private final ByteArrayOutputStream central = new ByteArrayOutputStream();
  private long written;
  private int files;

  /** The head of the next file, which its bytes follow. */
  byte[] head(String name, long size, long checksum) {
    byte[] path = name.getBytes(StandardCharsets.UTF_8);
    boolean large = size >= MOST;
    byte[] bytes = new byte[HEAD + path.length + (large ? 20 : 0)];
    ByteBuffer head = into(bytes);
    head.putInt(LOCAL);
    common(head, large, checksum, large ? MOST : size, path.length, large ? 20 : 0);
    head.put(path);
    if (large) {
      head.putShort((short) LARGE_EXTRA).putShort((short) 16).putLong(size).putLong(size);
    }
    note(path, size, checksum);
    written += bytes.length + size;
    files++;
    return bytes;
  }

  private static void common(
      ByteBuffer into, boolean large, long checksum, long size, int path, int extra) {
    into.putShort((short) (large ? LARGE : USUAL));
    into.putShort((short) UTF_8).putShort((short) 0);
    into.putShort((short) 0).putShort((short) NO_DAY);
    into.putInt((int) checksum).putInt((int) size).putInt((int) size);
    into.putShort((short) path).putShort((short) extra);
  }

  /** The same once more for the list at the end. */
  private void note(byte[] path, long size, long checksum) {
    boolean large = size >= MOST || written >= MOST;
    int extra = large ? 28 : 0;
    byte[] bytes = new byte[NOTE + path.length + extra];
    ByteBuffer note = into(bytes);
    note.putInt(CENTRAL).putShort((short) (large ? LARGE : USUAL));
    common(note, large, checksum, large ? MOST : size, path.length, extra);
    note.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(0);
    note.putInt((int) (large ? MOST : written));
    note.put(path);
    if (large) {
      note.putShort((short) LARGE_EXTRA).putShort((short) 24);
      note.putLong(size).putLong(size).putLong(written);
    }
    central.writeBytes(bytes);
  }

  /** What stands after the last file. */
  byte[] end() {
    boolean large = written >= MOST || files >= MANY;
    byte[] list = central.toByteArray();
    byte[] bytes = new byte[list.length + (large ? 76 : 0) + 22];
    ByteBuffer end = into(bytes);
    end.put(list);
    if (large) {
      end.putInt(LARGE_END).putLong(44).putShort((short) LARGE).putShort((short) LARGE);
      end.putInt(0).putInt(0).putLong(files).putLong(files).putLong(list.length).putLong(written);
      end.putInt(LARGE_PLACE).putInt(0).putLong(written + list.length).putInt(1);
    }
    int told = large ? MANY : files;
    end.putInt(END).putShort((short) 0).putShort((short) 0);
    end.putShort((short) told).putShort((short) told);
    end.putInt((int) (large ? MOST : list.length)).putInt((int) (large ? MOST : written));
    end.putShort((short) 0);
    return bytes;
  }

  private static ByteBuffer into(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }
}
