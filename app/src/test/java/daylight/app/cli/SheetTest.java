package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import daylight.app.CountedFilm;
import daylight.app.OneDrain;
import daylight.app.web.Window;
import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code sheet}, its page looked at in a browser. */
class SheetTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void picturesEverySoFarAndOfWhatWasFound() throws IOException {
    Path film = CountedFilm.write(folder.resolve("push.mp4"), Make.H264_MP4);
    Path book =
        OneDrain.empty()
            .found("{label: F1, kind: crack, cable: 5, clock: 12}")
            .filmed("push.mp4")
            .write(folder.resolve("book.yaml"));
    Path sheet = folder.resolve("sheet.html");

    Said said = Said.by("sheet", film, "--book", book, "--every", "3 ft", "--to", sheet, "--json");

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    assertThat(said.json().path("pictures").asInt()).isEqualTo(5);
    try (Window window = new Window();
        Page page = window.page(1366, 768)) {
      page.navigate(sheet.toUri().toString());
      List<String> captions = page.locator("figcaption").allInnerTexts();
      assertThat(captions.stream().map(text -> text.replaceAll("\\s+", " ")))
          .satisfiesExactly(
              one -> assertThat(one).startsWith("0\" 0:01"),
              one -> assertThat(one).startsWith("3' 0\" 0:05"),
              one -> assertThat(one).startsWith("F1 Crack, 5' 0\", 12:00"),
              one -> assertThat(one).startsWith("6' 0\" 0:"),
              one -> assertThat(one).startsWith("9' 0\" 0:15"));
      Locator pictures = page.locator("img");
      assertThat(pictures.count()).isEqualTo(5);
      for (Locator picture : pictures.all()) {
        assertThat(picture.evaluate("image => image.complete && image.naturalWidth"))
            .isEqualTo(320);
      }
      assertThat(page.evaluate("document.fonts.check('15px \"Daylight Sans\"')")).isEqualTo(true);
      assertThat(page.locator(".found").count()).isEqualTo(1);
      assertThat(window.asked())
          .allMatch(url -> url.startsWith("file:") || url.startsWith("data:"));
      assertThat(window.complained()).isEmpty();
    }
    assertThat(
            Said.by("sheet", film, "--every", "0.001 ft", "--to", folder.resolve("x.html")).err())
        .contains("more than 400 pictures");
  }
}
