package daylight.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Shown;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrenchTest {
  private static final String NO_BREAK = "\u00a0";

  /** Words that both languages have; whoever adds one has looked that it is French, too. */
  private static final Set<String> ALIKE =
      Set.of(
          "aspect.structure",
          "column.code",
          "column.source",
          "readings.node",
          "readings.visit",
          "source.sort.node",
          "draw.legend.strip_joint",
          "friction.manning",
          "kind.joint",
          "kind.joint.short",
          "kind.obstruction.short",
          "material.abs",
          "meaning.joint.word",
          "material.pvc",
          "measured.angle",
          "measured.direction",
          "media.document",
          "media.photo",
          "paper.page",
          "priors.angle",
          "report.figure",
          "size.angle",
          "strength.possible",
          "strength.probable",
          "symbol.joint",
          "web.line.where",
          "web.name",
          "web.title");

  private final Properties english = read("en.properties");
  private final Properties french = read("fr.properties");
  private final Words words = Words.of(Language.FR, Shown.METRES);
  private final Words feet = Words.of(Language.FR, Shown.FEET_INCHES);

  private static Properties read(String file) {
    Properties messages = new Properties();
    try (InputStream in = Objects.requireNonNull(Words.class.getResourceAsStream(file), file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      messages.load(reader);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return messages;
  }

  @Test
  void itSaysWhatEnglishSays() {
    assertThat(french.stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
    // A whole hour has no minutes in French.
    List<String> apart =
        english.stringPropertyNames().stream()
            .filter(key -> !key.equals("figure.hour"))
            .filter(key -> !fields(english, key).equals(fields(french, key)))
            .toList();

    assertThat(apart).isEmpty();
  }

  private static Set<String> fields(Properties messages, String key) {
    return Pattern.compile("\\{\\d[\\d.]*}")
        .matcher(messages.getProperty(key))
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void nothingIsLeftInEnglish() {
    Set<String> alike =
        english.stringPropertyNames().stream()
            .filter(key -> english.getProperty(key).equals(french.getProperty(key)))
            .filter(key -> english.getProperty(key).matches("(?s).*\\p{L}{2}.*"))
            .filter(key -> !key.startsWith("unit."))
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(alike).containsExactlyInAnyOrderElementsOf(ALIKE);
  }

  /**
   * Rules of French setting, from memory: what must not begin a line stays with what it follows.
   */
  @Test
  void itIsSetAsFrenchIs() {
    Pattern loose = Pattern.compile("[^\u00a0]»|«[^\u00a0]| [:;!?%]");
    Pattern tight = Pattern.compile("[\\p{L}\\d})»\\]][;!?%]|[\\p{L})»}]: |[“”]|\\p{L}'\\p{L}");

    assertThat(thoseWith(loose)).isEmpty();
    // This one shows what stands in a file.
    assertThat(thoseWith(tight)).containsExactly("book-file.version-not-first");
  }

  private List<String> thoseWith(Pattern wrong) {
    return french.stringPropertyNames().stream()
        .filter(key -> wrong.matcher(french.getProperty(key)).find())
        .toList();
  }

  @Test
  void figuresAreWrittenAsInFrench() {
    assertThat(words.figure(new Argument.Length(12.5))).isEqualTo("12,50" + NO_BREAK + "m");
    assertThat(words.figure(new Argument.Number(1234.5))).isEqualTo("1234,5");
    assertThat(words.figure(new Argument.Count(1234567))).isEqualTo("1\u202f234\u202f567");
    assertThat(words.figure(new Argument.Quantity(Dimension.SHARE, 0.3)))
        .isEqualTo("30" + NO_BREAK + "%");
    assertThat(feet.figure(new Argument.Bore(0.1016))).isEqualTo("4" + NO_BREAK + "po");
    assertThat(feet.figure(new Argument.Length(3.81))).isEqualTo("12'" + NO_BREAK + "6\"");
    assertThat(feet.figure(new Argument.Quantity(Dimension.FLOW, 0.0006)))
        .isEqualTo("9,5" + NO_BREAK + "gal" + NO_BREAK + "US/min");
    assertThat(words.figure(new Argument.Quantity(Dimension.CLOCK, Math.PI / 2)))
        .isEqualTo("3" + NO_BREAK + "h");
    assertThat(words.hour("14:05")).isEqualTo("14" + NO_BREAK + "h" + NO_BREAK + "05");
    assertThat(words.figure(new Argument.Day(LocalDate.of(2026, 11, 27))))
        .isEqualTo("27 novembre 2026");
    assertThat(words.figure(new Argument.Day(LocalDate.of(2026, 8, 1)))).isEqualTo("1er août 2026");
    assertThat(words.figure(new Argument.UncertainLength(new Measured(1.25, 0.01))))
        .matches("1,250\u00a0m \\(à 0,020\u00a0m près\\)");
    assertThat(words.figure(new Argument.Probability(0.9)))
        .isEqualTo("probable (90" + NO_BREAK + "%)");
  }

  @ParameterizedTest
  @CsvSource({
    "flow_input.bore, du diamètre",
    "flow_input.fittings, des raccords",
    "flow_input.slope, de la pente",
    "frost-input.moisture, de l’eau contenue dans le sol",
    "measured.angle, d’angle"
  })
  void wordsAreDrawnTogether(String key, String drawn) {
    assertThat(words.say("figure.frost.decides", new Argument.Term(key)))
        .isEqualTo("La plus grande part du doute vient " + drawn + ".");
  }

  @Test
  void namesAreLeftAsTheyAre() {
    assertThat(words.say("answer.missing_bore", new Argument.Label("A1")))
        .isEqualTo("Mesurez le diamètre intérieur de A1.");
    assertThat(words.say("answer.missing_bore", new Argument.Label("le")))
        .isEqualTo("Mesurez le diamètre intérieur de le.");
  }

  @Test
  void oneAndNoneAreCountedAlike() {
    assertThat(readings(0)).startsWith("0 lecture de plus");
    assertThat(readings(1)).startsWith("1 lecture de plus");
    assertThat(readings(2)).startsWith("2 lectures de plus");
    // What says "one" in a word cannot say "none".
    assertThat(words.say("cli.refused", new Argument.Count(1))).startsWith("Une chose");
    assertThat(words.say("cli.refused", new Argument.Count(0))).startsWith("0 choses");
  }

  private String readings(int count) {
    return words.say("figure.ties.fit", new Argument.Count(count), new Argument.Number(1));
  }
}
