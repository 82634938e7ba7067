package daylight.report.paper;

import daylight.report.draw.Typeface;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The typeface within one document, shared by text and drawings. */
record Fonts(PDFont regular, PDFont bold) {
  /** Stands for a character that the typeface does not have. */
  static final char MISSING = '?';

  static Fonts load(PDDocument document) throws IOException {
    return new Fonts(load(document, false), load(document, true));
  }

  /** A text without the characters that the typeface does not have. */
  static String writable(String text, boolean bold) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .map(character -> Typeface.has(character, bold) ? character : MISSING)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  PDFont of(boolean isBold) {
    return isBold ? bold : regular;
  }

  private static PDFont load(PDDocument document, boolean bold) throws IOException {
    try (InputStream file = Typeface.file(bold)) {
      return PDType0Font.load(document, file, true);
    }
  }
}
