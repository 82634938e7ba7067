package daylight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypefaceTest {
  private static final String WRITTEN =
      "ABCXYZabcxyz0123456789 .,:;!?%&()+-/#'\"°½¼¾⅛⅜⅝⅞′″×−±≤≥≈→←↑↓√²³·–—‘’“”…•"
          + "éèêëçœàâôûùüîïöäßñÉÈÇŒÀøαβθλμσφΔΣ";

  @ParameterizedTest
  @ValueSource(strings = {"DaylightSans-Regular", "DaylightSans-Bold"})
  void digitsAreEquallyWideSoThatFiguresStandUnderEachOther(String name) throws IOException {
    try (TrueTypeFont font = read(name)) {
      int zero = width(font, '0');

      assertThat(zero).isPositive();
      assertThat("123456789".chars())
          .allSatisfy(digit -> assertThat(width(font, digit)).isEqualTo(zero));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"DaylightSans-Regular", "DaylightSans-Bold"})
  void everyCharacterThatIsWrittenHasAGlyph(String name) throws IOException {
    try (TrueTypeFont font = read(name)) {
      var glyphs = Objects.requireNonNull(font.getUnicodeCmapLookup());
      String missing =
          WRITTEN
              .codePoints()
              .filter(character -> glyphs.getGlyphId(character) == 0)
              .mapToObj(Character::toString)
              .collect(Collectors.joining());

      assertThat(missing).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"DaylightSans-Regular", "DaylightSans-Bold"})
  void theLicenceTravelsInsideTheFont(String name) throws IOException {
    try (TrueTypeFont font = read(name)) {
      var names = Objects.requireNonNull(font.getNaming());

      assertThat(names.getFontFamily()).isEqualTo("Daylight Sans");
      assertThat(names.getName(13, 3, 1, 0x409)).contains("SIL Open Font License");
    }
  }

  private static TrueTypeFont read(String name) throws IOException {
    try (InputStream bytes = TypefaceTest.class.getResourceAsStream("type/" + name + ".ttf")) {
      return new TTFParser().parse(new RandomAccessReadBuffer(Objects.requireNonNull(bytes)));
    }
  }

  private static int width(TrueTypeFont font, int character) {
    try {
      return font.getAdvanceWidth(
          Objects.requireNonNull(font.getUnicodeCmapLookup()).getGlyphId(character));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
