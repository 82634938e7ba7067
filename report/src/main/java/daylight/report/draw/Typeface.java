package daylight.report.draw;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The typeface of everything handed over: how wide a text runs, and the font as style sheet. */
public final class Typeface {
  /** The family by name, with what to take where it is missing. */
  public static final String FAMILY = "'Daylight Sans', Verdana, sans-serif";

  /** How far letters rise above the line they stand on, in parts of their size. */
  public static final double ASCENT = 0.78;

  /** How far letters reach below the line they stand on, in parts of their size. */
  public static final double DESCENT = 0.22;

  private static final String REGULAR_FILE = "DaylightSans-Regular.ttf";
  private static final String BOLD_FILE = "DaylightSans-Bold.ttf";
  private static final Typeface REGULAR = new Typeface(REGULAR_FILE);
  private static final Typeface BOLD = new Typeface(BOLD_FILE);

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  private Typeface(String file) {
    try {
      font = new TTFParser().parse(new RandomAccessReadBuffer(bytes(file)));
      glyphs = Objects.requireNonNull(font.getUnicodeCmapLookup());
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The width of a text set at a size, in the unit of the size. */
  public static double width(String text, double size, boolean bold) {
    return (bold ? BOLD : REGULAR).width(text) * size;
  }

  private synchronized double width(String text) {
    double units = 0;
    for (int character : text.codePoints().toArray()) {
      try {
        units += font.getAdvanceWidth(glyphs.getGlyphId(character));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return units / unitsPerEm;
  }

  /** Whether there is a letter for a character. */
  public static boolean has(int character, boolean bold) {
    return (bold ? BOLD : REGULAR).glyphs.getGlyphId(character) != 0;
  }

  /** The font itself as a TrueType file; to be closed by whoever asked. */
  public static InputStream file(boolean bold) {
    return new ByteArrayInputStream(bytes(bold ? BOLD_FILE : REGULAR_FILE));
  }

  /** The font itself as style rules, so that a file needs nothing beside it. */
  public static String rules() {
    return rule("Regular", 400) + rule("Bold", 700);
  }

  private static String rule(String weight, int number) {
    String data = Base64.getEncoder().encodeToString(bytes("DaylightSans-" + weight + ".woff2"));
    return "@font-face{font-family:'Daylight Sans';font-weight:"
        + number
        + ";src:url(data:font/woff2;base64,"
        + data
        + ") format('woff2')}\n";
  }

  private static byte[] bytes(String file) {
    String path = "/daylight/report/type/" + file;
    try (InputStream in = Typeface.class.getResourceAsStream(path)) {
      return Objects.requireNonNull(in, path).readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
