package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The table of what was seen, put in order and sifted in Chromium. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SiftTest {
  private Workspace.Running running;
  private Window window;

  @BeforeAll
  void open(@TempDir Path folder) {
    Path book = Filmed.unfilmed(folder.resolve("shop"), "media: []");
    running = Workspace.start(List.of(Filmed.property("shop", book)), 0);
    window = new Window();
  }

  @AfterAll
  void close() {
    window.close();
    running.close();
  }

  private Page page() {
    Page page = window.page(1366, 768);
    page.navigate(running.address().resolve("/property/shop/").toString());
    page.locator(".sift").waitFor();
    return page;
  }

  private static List<String> labels(Page page) {
    return page.locator(".log tbody tr:visible .label").allTextContents();
  }

  private static String told(Page page) {
    return page.locator(".sift .told").textContent();
  }

  @Test
  void whatIsMostUrgentComesFirstAndEqualsStayInTheOrderOfTheDrain() {
    try (Page page = page()) {
      List<String> along = labels(page);
      page.locator("#sift-order").selectOption("rank");
      List<Locator> rows = page.locator(".log tbody tr").all();
      List<Integer> ranks =
          rows.stream().map(row -> Integer.parseInt(row.getAttribute("data-rank"))).toList();
      List<String> soonest = labels(page);

      assertThat(ranks).hasSize(8).isSorted();
      assertThat(soonest).isNotEqualTo(along).containsExactlyInAnyOrderElementsOf(along);
      for (int i = 1; i < soonest.size(); i++) {
        if (ranks.get(i).equals(ranks.get(i - 1))) {
          assertThat(List.of(soonest.get(i - 1), soonest.get(i)))
              .isSortedAccordingTo(Comparator.comparingInt(along::indexOf));
        }
      }
      page.locator("#sift-order").selectOption("along");
      assertThat(labels(page)).isEqualTo(along);
    }
  }

  @Test
  void itIsSiftedByWhatItIsHowSoonAndByWords() {
    try (Page page = page()) {
      assertThat(told(page)).isEqualTo("8 of 8 shown");
      page.locator("#sift-show").selectOption(new SelectOption().setLabel("Pipe joining (2)"));
      assertThat(labels(page)).containsExactlyInAnyOrder("F3", "F8");
      assertThat(told(page)).isEqualTo("2 of 8 shown");

      page.locator("#sift-show").selectOption("soon:web.sift.nothing");
      assertThat(page.locator(".log tbody tr:visible").all())
          .isNotEmpty()
          .allMatch(row -> "60".equals(row.getAttribute("data-rank")));

      page.locator("#sift-show").selectOption("");
      page.locator("#sift-holding").fill("SÍLT under");
      assertThat(labels(page)).containsExactly("F5");
      page.locator("#sift-holding").fill("a word of nobody");
      assertThat(told(page)).isEqualTo("0 of 8 shown");
      assertThat(Window.violations(page)).isEmpty();
    }
  }

  @Test
  void whoeverIsLedToARowIsShownIt() {
    try (Page page = page()) {
      String id = page.locator(".log tbody tr:has-text('Roots')").getAttribute("id");
      page.locator("#sift-holding").fill("crack");
      assertThat(labels(page)).containsExactly("F7");
      page.evaluate("id => { location.hash = id; }", id);

      page.locator("#" + id).waitFor();
      assertThat(labels(page)).hasSize(8);
      assertThat(page.locator("#sift-holding").inputValue()).isEmpty();
    }
  }

  @Test
  void withoutScriptTheTableIsWholeAndHasNoControls() {
    try (Page page = window.plain(1366, 768)) {
      page.navigate(running.address().resolve("/property/shop/").toString());

      assertThat(labels(page)).hasSize(8);
      assertThat(page.locator(".sift").isVisible()).isFalse();
    }
  }
}
