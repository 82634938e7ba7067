package daylight.bench;

import daylight.app.field.FieldPages;
import daylight.app.web.Workspace;
import daylight.archive.Folders;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;

/**
 * How long the pages of a large archive take, asked over HTTP on loopback, beside a bare server of
 * the same library that sends as many bytes which are ready: in turns, warm. The slowest in twenty
 * are told; of the times read the ratios.
 *
 * <p>Arguments: visits (10 000 if none), times each page is asked for (400 if none).
 */
public final class PagesBench {
  private static final int WARM = 150;
  private static final double SLOW = 0.95;

  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.NEVER)
          .build();
  private final List<FilledArchive.Place> places;
  private final Random chance = new Random(5);

  private PagesBench(List<FilledArchive.Place> places) {
    this.places = places;
  }

  /** Runs it. */
  public static void main(String[] words) throws Exception {
    int visits = words.length > 0 ? Integer.parseInt(words[0]) : 10_000;
    int times = words.length > 1 ? Integer.parseInt(words[1]) : 400;
    Path folder = Files.createTempDirectory("pages-bench");
    try {
      if (!(Archive.open(folder.resolve("archive"))
          instanceof ArchiveOpening.Opened(Archive archive))) {
        throw new IllegalStateException("no archive could be begun");
      }
      long begun = System.nanoTime();
      List<FilledArchive.Place> places = FilledArchive.fill(archive, visits);
      System.out.printf(
          Locale.ROOT,
          "%d visits of %d sites, entered in %.0f s%n",
          visits,
          places.size(),
          (System.nanoTime() - begun) / 1e9);
      try (Workspace.Running running =
          Workspace.serve(List.of(), 0, false, FieldPages.of(archive)::addTo)) {
        new PagesBench(places).measure(running.address(), times);
      }
      archive.close();
    } finally {
      Folders.delete(folder);
    }
  }

  private void measure(URI address, int times) throws Exception {
    named(address);
    Map<String, Function<FilledArchive.Place, String>> pages = new LinkedHashMap<>();
    pages.put("list of sites", _ -> "/sites");
    pages.put("search", place -> "/sites?q=" + place.word().replace(" ", "%20"));
    pages.put("site", FilledArchive.Place::site);
    pages.put("visit", FilledArchive.Place::visit);
    pages.put("begin a push", place -> place.visit() + "/push");
    pages.put("push", FilledArchive.Place::pass);
    pages.put("walk", place -> place.visit() + "/walk");
    pages.put("entries of a book", place -> place.site() + "/entries");
    System.out.printf("%-18s %9s %9s %9s %9s%n", "page", "median ms", "p95 ms", "bytes", "of bare");
    for (Map.Entry<String, Function<FilledArchive.Place, String>> page : pages.entrySet()) {
      measure(address, page.getKey(), page.getValue(), times);
    }
  }

  /** Who writes is asked once on each device; this one says so. */
  private void named(URI address) throws Exception {
    String token =
        get(address.resolve("/sites"))
            .body()
            .replaceFirst("(?s).*name=\"daylight-token\" content=\"(\\w+)\".*", "$1");
    String origin = "http://" + address.getAuthority();
    HttpRequest said =
        HttpRequest.newBuilder(address.resolve("/who"))
            .header("Origin", origin)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("person=Kim&token=" + token))
            .build();
    int status = client.send(said, HttpResponse.BodyHandlers.ofString()).statusCode();
    if (status != 303) {
      throw new IllegalStateException("the name was answered with " + status);
    }
  }

  private HttpResponse<String> get(URI uri) throws IOException, InterruptedException {
    return client.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
  }

  /** The page itself is checked: what is quick and wrong is no measure. */
  private double timed(URI uri, int least) throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpResponse<String> reply = get(uri);
    double taken = (System.nanoTime() - begun) / 1e6;
    if (reply.statusCode() != 200 || reply.body().length() < least) {
      throw new IllegalStateException(uri + " was answered with " + reply.statusCode());
    }
    return taken;
  }

  private FilledArchive.Place any() {
    return places.get(chance.nextInt(places.size()));
  }

  private void measure(
      URI address, String name, Function<FilledArchive.Place, String> page, int times)
      throws Exception {
    byte[] same = get(address.resolve(page.apply(any()))).body().getBytes(StandardCharsets.UTF_8);
    Javalin bare = BareServer.started(same, 0);
    try {
      URI yardstick = URI.create("http://127.0.0.1:" + bare.port() + "/");
      double[] ours = new double[times];
      double[] theirs = new double[times];
      for (int i = -WARM; i < times; i++) {
        double one = timed(address.resolve(page.apply(any())), 1000);
        double other = timed(yardstick, 1000);
        if (i >= 0) {
          ours[i] = one;
          theirs[i] = other;
        }
      }
      System.out.printf(
          Locale.ROOT,
          "%-18s %9.1f %9.1f %9d %9.1f%n",
          name,
          share(ours, 0.5),
          share(ours, SLOW),
          same.length,
          share(ours, SLOW) / share(theirs, SLOW));
    } finally {
      bare.stop();
    }
  }

  private static double share(double[] values, double of) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[Math.min(sorted.length - 1, (int) Math.ceil(of * sorted.length) - 1)];
  }
}
