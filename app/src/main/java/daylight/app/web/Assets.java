package daylight.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Style, modules and typeface of the pages: the same for every book, kept in the program. */
final class Assets {
  private static final String OURS = "/daylight/app/web/";
  private static final String PAGE = "/daylight/report/page/";

  /** What a report and a page have in common. */
  private static final String VIEW = "/daylight/report/view/";

  private static final String TYPE = "/daylight/report/type/";

  private final Map<String, byte[]> byName = new LinkedHashMap<>();

  Assets() {
    for (String name :
        new String[] {
          "look.css",
          "line.css",
          "switches.css",
          "why.css",
          "sift.css",
          "places.js",
          "moments.js",
          "proxies.js",
          "reading.js",
          "sift.js",
          "line.js",
          "line-film.js",
          "mark.svg"
        }) {
      byName.put(name, bytes(OURS + name));
    }
    byName.put("digs.css", bytes(PAGE + "digs.css"));
    for (String name :
        new String[] {"cursor.css", "line-cursor.js", "line-table.js", "line-view.js"}) {
      byName.put(name, bytes(VIEW + name));
    }
    for (String name : new String[] {"DaylightSans-Regular.woff2", "DaylightSans-Bold.woff2"}) {
      byName.put(name, bytes(TYPE + name));
    }
  }

  Optional<byte[]> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  private static byte[] bytes(String path) {
    try (InputStream in = Assets.class.getResourceAsStream(path)) {
      return Objects.requireNonNull(in, path).readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
