package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The manual quotes the corpus as it is. */
class ManualTest {
  private static final Pattern QUOTED =
      Pattern.compile("(?s)From `(corpus/[^`]+)`:\\n\\n```yaml\\n(.*?)```");
  private static final Pattern ANY = Pattern.compile("```yaml\\n");
  private static final Pattern NAMED = Pattern.compile("`((?:corpus|docs)/[^`]+)`");

  private static String manual() throws IOException {
    return Files.readString(SourceTree.ofThisProject().file("docs/manual.md"));
  }

  @Test
  void everySnippetStandsInTheFileItNames() throws IOException {
    List<MatchResult> snippets = QUOTED.matcher(manual()).results().toList();
    assertThat(snippets).hasSizeGreaterThan(6);
    for (MatchResult snippet : snippets) {
      String book = Files.readString(SourceTree.ofThisProject().file(snippet.group(1)));
      assertThat("\n" + book).as(snippet.group(1)).contains("\n" + snippet.group(2));
    }
  }

  @Test
  void noSnippetIsWithoutItsFile() throws IOException {
    assertThat(ANY.matcher(manual()).results().count())
        .isEqualTo(QUOTED.matcher(manual()).results().count());
  }

  @Test
  void everyFileItNamesIsThere() throws IOException {
    List<String> named =
        NAMED.matcher(manual()).results().map(match -> match.group(1)).distinct().toList();
    assertThat(named).hasSizeGreaterThan(8);
    assertThat(named)
        .allSatisfy(name -> assertThat(SourceTree.ofThisProject().file(name)).exists());
  }
}
