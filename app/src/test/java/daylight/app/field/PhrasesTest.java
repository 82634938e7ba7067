package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Bundled;
import daylight.line.book.Catalogue;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Both languages say the same things, all of them are said somewhere, and no key is without. */
class PhrasesTest {
  private final Phrases english = Phrases.of(Language.EN);
  private final Phrases french = Phrases.of(Language.FR);

  private static Set<String> keys(Phrases phrases) {
    return new TreeSet<>(phrases.messages().stringPropertyNames());
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    assertThat(keys(french)).hasSizeGreaterThan(100).isEqualTo(keys(english));
  }

  @Test
  void bothLanguagesTellTheSameThings() {
    for (String key : keys(english)) {
      assertThat(fields(french, key)).as(key).isEqualTo(fields(english, key));
      assertThat(french.messages().getProperty(key)).as(key).isNotBlank();
    }
  }

  private static List<String> fields(Phrases phrases, String key) {
    return Pattern.compile("\\{\\d}")
        .matcher(phrases.messages().getProperty(key))
        .results()
        .map(MatchResult::group)
        .sorted()
        .distinct()
        .toList();
  }

  @Test
  void everyKindOfFindingIsNamedInBothAsTheReportNamesIt() {
    Words report = Words.of(Language.EN, Shown.METRES);
    Catalogue catalogue = Bundled.catalogue();
    for (String id : ids(catalogue)) {
      assertThat(english.kind(id)).isEqualTo(report.kind(id));
      assertThat(keys(french)).contains("kind." + id);
    }
  }

  private static List<String> ids(Catalogue catalogue) {
    List<String> ids = catalogue.kinds().stream().map(Catalogue.Kind::id).toList();
    assertThat(ids).contains("roots", "foreign-pipe");
    return ids;
  }

  /** By itself in a source, or made there from the beginning that stands before its last dot. */
  @Test
  void everyKeyIsUsed() throws IOException {
    String sources = sources();
    List<String> unused =
        keys(english).stream()
            .map(key -> key.replaceFirst("\\.(one|other)$", ""))
            .filter(
                key ->
                    !sources.contains("\"" + key + "\"")
                        && Stream.iterate(
                                key, k -> k.contains("."), k -> k.substring(0, k.lastIndexOf('.')))
                            .map(k -> k.substring(0, k.lastIndexOf('.') + 1))
                            .noneMatch(start -> sources.contains("\"" + start + "\"")))
            .filter(key -> !key.startsWith("caution."))
            .toList();

    assertThat(unused).isEmpty();
  }

  private static String sources() throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/daylight/app/field"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.append(Files.readString(file));
      }
    }
    return all.toString();
  }

  @Test
  void oneAndNoneAreCountedAsTheLanguageDoes() {
    assertThat(english.count("sites.visits", 0)).isEqualTo("0 visits");
    assertThat(english.count("sites.visits", 1)).isEqualTo("1 visit");
    assertThat(french.count("sites.visits", 0)).isEqualTo("0 visite");
    assertThat(french.count("sites.visits", 2)).isEqualTo("2 visites");
    assertThat(french.figure("2 1/2 in")).isEqualTo("2 1/2 po");
    assertThat(french.figure("1.40 m")).isEqualTo("1,40 m");
  }

  @Test
  void aHeadIsNeverWiderThanTheRuleAllows() {
    assertThat(HeadAdvice.told(0.1016, Shown.FEET_INCHES, english))
        .isEqualTo("Head up to 2 in, skid about 3 in");
    assertThat(HeadAdvice.told(0.1, Shown.METRES, english))
        .isEqualTo("Head up to 60 mm, skid about 75 mm");
    assertThat(HeadAdvice.told(0.05, Shown.METRES, english)).isEqualTo("Head up to 30 mm, no skid");
  }
}
