package daylight.report.draw;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.TreeMap;

/**
 * How wide letters of the shipped typeface run, read from the font file without the reader that
 * drawings are measured with: tables head, hhea, hmtx and cmap (format 4) as in ISO/IEC 14496-22
 * (from memory).
 */
final class Glyphs {
  private static final Glyphs REGULAR = new Glyphs(false);
  private static final Glyphs BOLD = new Glyphs(true);

  private final ByteBuffer font;
  private final Map<String, Integer> tables = new TreeMap<>();
  private final int unitsPerEm;
  private final int wide;
  private final int segments;

  private Glyphs(boolean bold) {
    try (var in = Typeface.file(bold)) {
      font = ByteBuffer.wrap(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    int count = font.getShort(4);
    for (int i = 0; i < count; i++) {
      int at = 12 + 16 * i;
      byte[] tag = new byte[4];
      font.get(at, tag);
      tables.put(new String(tag, java.nio.charset.StandardCharsets.US_ASCII), font.getInt(at + 8));
    }
    unitsPerEm = unsigned(table("head") + 18);
    wide = unsigned(table("hhea") + 34);
    segments = format4();
  }

  private int table(String tag) {
    return java.util.Objects.requireNonNull(tables.get(tag), tag);
  }

  private int unsigned(int at) {
    return font.getShort(at) & 0xffff;
  }

  private int format4() {
    int cmap = table("cmap");
    for (int i = 0; i < unsigned(cmap + 2); i++) {
      int at = cmap + font.getInt(cmap + 4 + 8 * i + 4);
      if (unsigned(at) == 4) {
        return at;
      }
    }
    throw new AssertionError("no cmap of format 4");
  }

  private int glyph(int character) {
    int twice = unsigned(segments + 6);
    int ends = segments + 14;
    int starts = ends + twice + 2;
    int deltas = starts + twice;
    int offsets = deltas + twice;
    for (int i = 0; i < twice; i += 2) {
      if (character <= unsigned(ends + i)) {
        int start = unsigned(starts + i);
        int offset = unsigned(offsets + i);
        if (character < start) {
          return 0;
        }
        if (offset == 0) {
          return (character + unsigned(deltas + i)) & 0xffff;
        }
        int glyph = unsigned(offsets + i + offset + 2 * (character - start));
        return glyph == 0 ? 0 : (glyph + unsigned(deltas + i)) & 0xffff;
      }
    }
    return 0;
  }

  private double advance(int character) {
    int glyph = Math.min(glyph(character), wide - 1);
    return (double) unsigned(table("hmtx") + 4 * glyph) / unitsPerEm;
  }

  /** The width of a text set at a size, in the unit of the size. */
  static double width(String text, double size, boolean bold) {
    Glyphs glyphs = bold ? BOLD : REGULAR;
    return size * text.codePoints().mapToDouble(glyphs::advance).sum();
  }
}
