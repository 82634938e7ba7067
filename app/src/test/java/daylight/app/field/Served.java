package daylight.app.field;

import daylight.app.web.Workspace;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An archive that is being served, and a browser's part by hand: cookies, token, origin. */
final class Served implements AutoCloseable {
  private static final Pattern HIDDEN =
      Pattern.compile("<input type=\"hidden\" name=\"(\\w+)\" value=\"([^\"]*)\"");

  private final Archive archive;
  private final Workspace.Running running;
  private final CookieManager jar = new CookieManager();
  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(jar)
          .followRedirects(HttpClient.Redirect.NORMAL)
          .build();

  Served(Path folder) throws IOException {
    if (!(Archive.open(folder) instanceof ArchiveOpening.Opened(Archive opened))) {
      throw new IOException("not opened: " + folder);
    }
    archive = opened;
    running = Workspace.serve(List.of(), 0, false, FieldPages.of(archive)::addTo);
  }

  Archive archive() {
    return archive;
  }

  URI address() {
    return running.address();
  }

  String origin() {
    return "http://" + running.address().getAuthority();
  }

  HttpResponse<String> get(String path, String... headers) {
    return send(request(path, headers).GET().build());
  }

  /** How many bytes an address sends. */
  long weight(String path) {
    try {
      HttpResponse<byte[]> reply =
          client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofByteArray());
      return reply.body().length;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** As a browser sends it: with its own origin. */
  HttpResponse<String> post(String path, String type, String body, String... headers) {
    return send(
        request(path, headers)
            .header("Origin", origin())
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  HttpResponse<String> form(String path, Map<String, String> fields, String... headers) {
    return post(path, "application/x-www-form-urlencoded", encoded(fields), headers);
  }

  static String encoded(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(running.address().resolve(path));
    return headers.length == 0 ? request : request.headers(headers);
  }

  HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** What a page's first forms carry unseen. */
  Map<String, String> hidden(String path) {
    Map<String, String> hidden = new LinkedHashMap<>();
    HIDDEN
        .matcher(get(path).body())
        .results()
        .forEach(found -> hidden.putIfAbsent(found.group(1), found.group(2)));
    hidden.remove("back");
    return hidden;
  }

  String token() {
    return get("/sites")
        .body()
        .replaceFirst("(?s).*name=\"daylight-token\" content=\"(\\w+)\".*", "$1");
  }

  /** What the browser's part remembers, as it is sent. */
  String cookies() {
    return jar.getCookieStore().getCookies().stream()
        .map(one -> one.getName() + "=" + one.getValue())
        .collect(Collectors.joining("; "));
  }

  /** Begins a site as the form does; returns its book. */
  UUID site(String address, String complaint) {
    Map<String, String> form = hidden("/sites/new");
    UUID book = UUID.fromString(form.get("book"));
    form.putAll(
        Map.of(
            "address", address,
            "complaint", complaint,
            "date", "2026-11-27",
            "person", "Kim",
            "units", "feet",
            "zone", "America/New_York"));
    HttpResponse<String> reply = form("/sites/new", form);
    if (reply.statusCode() != 200 || !reply.uri().getPath().equals("/site/" + book)) {
      throw new IllegalStateException(reply.statusCode() + " " + reply.body());
    }
    return book;
  }

  HttpResponse<String> enter(UUID book, String json) {
    return post("/site/" + book + "/enter", "application/json", json, "Daylight-Token", token());
  }

  @Override
  public void close() {
    client.close();
    running.close();
    archive.close();
  }
}
