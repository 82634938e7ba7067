package daylight.report.paper;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The sRGB colour space as an ICC profile of version 2, so that a colour on paper is the colour
 * that was meant. Its tone curve is that of IEC 61966-2-1:1999; its primaries are that standard's,
 * adapted to the profile connection space's D50 as in the published sRGB profiles. All from memory.
 */
final class ColourProfile {
  private static final String WORDS = "sRGB IEC61966-2.1";
  private static final int STEPS = 1024;
  private static final int HEADER = 128;

  private ColourProfile() {}

  /** The file. */
  static byte[] srgb() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", description());
    tags.put("cprt", text("No copyright, use freely"));
    tags.put("wtpt", xyz(0.9642, 1, 0.8249));
    tags.put("rXYZ", xyz(0.4361, 0.2225, 0.0139));
    tags.put("gXYZ", xyz(0.3851, 0.7169, 0.0971));
    tags.put("bXYZ", xyz(0.1431, 0.0606, 0.7139));
    tags.put("rTRC", curve());
    tags.put("gTRC", curve());
    tags.put("bTRC", curve());
    int table = 4 + 12 * tags.size();
    int size = HEADER + table + tags.values().stream().mapToInt(tag -> padded(tag.length)).sum();
    ByteBuffer file = ByteBuffer.allocate(size);
    header(file, size);
    file.position(HEADER).putInt(tags.size());
    int offset = HEADER + table;
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      file.put(ascii(tag.getKey())).putInt(offset).putInt(tag.getValue().length);
      file.put(offset, tag.getValue());
      offset += padded(tag.getValue().length);
    }
    return file.array();
  }

  private static void header(ByteBuffer file, int size) {
    file.putInt(0, size).putInt(8, 0x02100000);
    file.put(12, ascii("mntrRGB XYZ "));
    file.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
    file.put(36, ascii("acsp"));
    file.putInt(68, fixed(0.9642)).putInt(72, fixed(1)).putInt(76, fixed(0.8249));
  }

  private static byte[] description() {
    byte[] words = ascii(WORDS + "\0");
    return ByteBuffer.allocate(12 + words.length + 78)
        .put(ascii("desc"))
        .putInt(8, words.length)
        .put(12, words)
        .array();
  }

  private static byte[] text(String words) {
    byte[] ascii = ascii(words + "\0");
    return ByteBuffer.allocate(8 + ascii.length).put(ascii("text")).put(8, ascii).array();
  }

  private static byte[] xyz(double x, double y, double z) {
    return ByteBuffer.allocate(20)
        .put(ascii("XYZ "))
        .putInt(8, fixed(x))
        .putInt(12, fixed(y))
        .putInt(16, fixed(z))
        .array();
  }

  private static byte[] curve() {
    ByteBuffer curve = ByteBuffer.allocate(12 + 2 * STEPS).put(ascii("curv")).putInt(8, STEPS);
    for (int i = 0; i < STEPS; i++) {
      double light = linear((double) i / (STEPS - 1));
      curve.putShort(12 + 2 * i, (short) Math.round(light * 65535));
    }
    return curve.array();
  }

  private static double linear(double value) {
    return value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
  }

  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
