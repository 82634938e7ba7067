package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import daylight.app.Job;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of answers in the language and units of whoever looks. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FrenchPagesTest {
  private static final String PAGE = "/property/filmed/";
  private static final String WANTS = "Accept-Language";
  private static final String FRENCH = "fr-CA,fr;q=0.9,en;q=0.5";

  private Workspace.Running running;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    Path refused = folder.resolve("refused.yaml");
    Files.writeString(
        refused,
        Files.readString(Filmed.unfilmed(folder.resolve("other"), "media: []"))
            .replace("cable: 12.2 ft", "cable: 12.2 hens"));
    running =
        Workspace.start(
            List.of(
                Filmed.property("filmed", Filmed.in(folder.resolve("filmed"))),
                new Property("refused", new Opened(refused, Job.Settings.USUAL), Job::answer)),
            0);
  }

  @AfterAll
  void close() {
    running.close();
  }

  private String text(String path, String... headers) {
    return Asked.text(Asked.get(running, path, headers));
  }

  @Test
  void aBrowserThatAsksForFrenchGetsIt() {
    assertThat(text(PAGE, WANTS, FRENCH))
        .contains("lang=\"fr\"", "Où passe-t-il\u00a0?", "Avant d’agir")
        .doesNotContain("Where does it run?", "give or take");
    assertThat(text(PAGE, WANTS, "de")).contains("lang=\"en\"", "Where does it run?");
    assertThat(text(PAGE)).contains("lang=\"en\"");
  }

  @Test
  void onlyTheWordsChange() {
    String french = text(PAGE + "answers.json", WANTS, FRENCH);
    String english = text(PAGE + "answers.json");

    assertThat(french).isNotEqualTo(english);
    assertThat(withoutSentences(french)).isEqualTo(withoutSentences(english));
  }

  private static String withoutSentences(String json) {
    return json.replaceAll("\"(sentence|order|word)\" ?: ?\"(?:[^\"\\\\]|\\\\.)*\"", "");
  }

  @Test
  void whatIsHandedOverSpeaksItToo() {
    assertThat(text(PAGE + "report.html", WANTS, FRENCH)).contains("lang=\"fr\"", "Vos questions");
    assertThat(text(PAGE + "plan.svg", WANTS, FRENCH)).contains("lang=\"fr\"", "vu de dessus");
    assertThat(text(PAGE + "report.html")).contains("Your questions");
  }

  @Test
  void whatIsWrongIsSaidInIt() {
    assertThat(text("/property/refused/", WANTS, FRENCH))
        .contains("Une chose est à corriger", "12.2 hens");
    assertThat(text("/property/nobody/", WANTS, FRENCH)).contains("Il n’y a rien ici");
  }

  @Test
  void whatWasChosenIsRemembered() {
    HttpResponse<byte[]> chosen = Asked.get(running, PAGE + "?units=metres&language=fr");

    assertThat(chosen.statusCode()).isEqualTo(303);
    assertThat(Asked.header(chosen, "Location")).endsWith(PAGE);
    String cookie = Asked.header(chosen, "Set-Cookie").replaceFirst(";.*", "");
    assertThat(text(PAGE, "Cookie", cookie, WANTS, "en"))
        .contains("lang=\"fr\"")
        .containsPattern("\\d,\\d\\d\u00a0m\\b");
    assertThat(text(PAGE, "Cookie", cookie.replace("metres", "feet")))
        .contains("lang=\"fr\"")
        .doesNotContainPattern("\\d,\\d\\d\u00a0m\\b");
    assertThat(Asked.get(running, PAGE + "?units=ells").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @CsvSource({"390", "1366"})
  void aPageInFrenchFitsAndEverybodyCanReadIt(int width) {
    try (Window window = new Window();
        Page page = window.page(width, 768)) {
      page.navigate(running.address().resolve(PAGE + "?language=fr").toString());
      assertThat(page.locator("html").getAttribute("lang")).isEqualTo("fr");
      page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
      page.locator(".switch a[lang=en]").focus();
      page.keyboard().press("Enter");
      page.waitForCondition(() -> "en".equals(page.locator("html").getAttribute("lang")));
      assertThat(page.locator(".switch a[aria-current]").allTextContents()).contains("English");
    }
  }
}
