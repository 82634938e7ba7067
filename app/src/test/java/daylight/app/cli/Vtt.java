package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import daylight.app.web.Window;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * WebVTT files read by two parsers that are not ours, and by both alike: the npm package
 * videojs-vtt.js, which tells every error, and the browser's own.
 */
final class Vtt {
  private static final String PARSER =
      "META-INF/resources/webjars/videojs-vtt.js/0.15.5/dist/vtt.js";

  private Vtt() {}

  /** The texts of all cues in order, entities resolved. */
  static List<String> texts(Path file) throws IOException {
    String text = Files.readString(file);
    try (Window window = new Window();
        Page page = window.page(400, 300)) {
      page.setContent("<video></video>");
      page.evaluate(parser());
      List<?> errors = (List<?>) page.evaluate(NPM + "return errors; }", text);
      assertThat(errors).as("what the npm parser complains of").isEmpty();
      List<?> npm = (List<?>) page.evaluate(NPM + "return cues; }", text);
      List<?> browser = (List<?>) page.evaluate(BROWSER, text);
      assertThat(npm).as("as the browser reads it").isEqualTo(browser).isNotEmpty();
      return npm.stream().map(cue -> String.valueOf(((List<?>) cue).get(2))).toList();
    }
  }

  private static String parser() throws IOException {
    try (InputStream in = Vtt.class.getClassLoader().getResourceAsStream(PARSER)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static final String NPM =
      """
      text => {
        const cues = [], errors = [];
        const parser = new WebVTT.Parser(window, window.vttjs, WebVTT.StringDecoder());
        parser.oncue = cue => cues.push([
          Math.round(cue.startTime * 1000), Math.round(cue.endTime * 1000),
          WebVTT.convertCueToDOMTree(window, cue.text).textContent]);
        parser.onparsingerror = error => errors.push(String(error.message || error));
        parser.parse(text);
        parser.flush();
      """;

  private static final String BROWSER =
      """
      async text => {
        const track = document.createElement('track');
        track.kind = 'captions';
        track.default = true;
        track.src = 'data:text/vtt;charset=utf-8,' + encodeURIComponent(text);
        const loaded = new Promise((done, failed) => {
          track.onload = done;
          track.onerror = () => failed(new Error('not loaded'));
        });
        document.querySelector('video').append(track);
        track.track.mode = 'hidden';
        await loaded;
        return Array.from(track.track.cues).map(cue => [
          Math.round(cue.startTime * 1000), Math.round(cue.endTime * 1000),
          cue.getCueAsHTML().textContent]);
      }
      """;
}
