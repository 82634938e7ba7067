package daylight.report.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The parts of a zip file in memory, by its directory at the end (zip-appnote, 4.3). The library
 * that writes workbooks says the sizes of parts only there and behind each part, in a way that the
 * reader of streams of the platform refuses, and the platform's other reader wants a file.
 */
final class Parts {
  private static final int END = 0x06054b50;
  private static final int END_SIZE = 22;
  private static final int DEFLATED = 8;

  private Parts() {}

  /** The content of every part by its name, in their order. */
  static Map<String, byte[]> of(byte[] zip) throws IOException {
    ByteBuffer in = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
    int end = zip.length - END_SIZE;
    if (in.getInt(end) != END) {
      throw new IOException("no directory at the end of the workbook");
    }
    int count = in.getShort(end + 10) & 0xFFFF;
    int at = in.getInt(end + 16);
    Map<String, byte[]> parts = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      int name = in.getShort(at + 28) & 0xFFFF;
      int more = (in.getShort(at + 30) & 0xFFFF) + (in.getShort(at + 32) & 0xFFFF);
      String called = new String(zip, at + 46, name, StandardCharsets.UTF_8);
      parts.put(called, part(zip, in, at));
      at += 46 + name + more;
    }
    return parts;
  }

  private static byte[] part(byte[] zip, ByteBuffer in, int entry) throws IOException {
    int packed = in.getInt(entry + 20);
    int size = in.getInt(entry + 24);
    int local = in.getInt(entry + 42);
    if (in.getShort(entry + 10) != DEFLATED || packed < 0 || size < 0 || local < 0) {
      throw new IOException("a part of the workbook is packed in a way that is not known");
    }
    int head = 30 + (in.getShort(local + 26) & 0xFFFF) + (in.getShort(local + 28) & 0xFFFF);
    byte[] content = new byte[size];
    try (Inflater inflater = new Inflater(true)) {
      inflater.setInput(zip, local + head, packed);
      int done = 0;
      while (done < size) {
        int more = inflater.inflate(content, done, size - done);
        if (more == 0) {
          throw new IOException("a part of the workbook is cut off");
        }
        done += more;
      }
    } catch (DataFormatException e) {
      throw new IOException("a part of the workbook cannot be unpacked", e);
    }
    return content;
  }
}
