package daylight.app.field;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.CookieManager;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A browser's part by hand, somewhere else in the network: cookies, token, origin. */
final class Visitor implements AutoCloseable {
  private static final Pattern HIDDEN =
      Pattern.compile("<input type=\"hidden\" name=\"(\\w+)\" value=\"([^\"]*)\"");

  private final String origin;
  private final CookieManager cookies = new CookieManager();
  private final HttpClient client;

  Visitor(String origin) {
    this.origin = origin;
    client = HttpClient.newBuilder().cookieHandler(cookies).build();
  }

  /** One that trusts this certificate authority and no other. */
  Visitor(String origin, byte[] authority) throws IOException, GeneralSecurityException {
    this.origin = origin;
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry(
        "authority",
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new ByteArrayInputStream(authority)));
    TrustManagerFactory managers = TrustManagerFactory.getInstance("PKIX");
    managers.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, managers.getTrustManagers(), null);
    client = HttpClient.newBuilder().cookieHandler(cookies).sslContext(context).build();
  }

  String origin() {
    return origin;
  }

  /** The cookies it holds, as they would be sent. */
  String cookies() {
    StringBuilder all = new StringBuilder();
    cookies
        .getCookieStore()
        .getCookies()
        .forEach(one -> all.append(one.getName()).append('=').append(one.getValue()).append("; "));
    return all.toString();
  }

  HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
    return headers.length == 0 ? request : request.headers(headers);
  }

  HttpResponse<byte[]> bytes(String path) {
    return send(request(path).GET().build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  HttpResponse<String> get(String path, String... headers) {
    return send(request(path, headers).GET().build());
  }

  HttpResponse<String> post(String path, String type, String body, String... headers) {
    return send(
        request(path, headers)
            .header("Origin", origin)
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  HttpResponse<String> form(String path, Map<String, String> fields, String... headers) {
    return post(path, "application/x-www-form-urlencoded", Served.encoded(fields), headers);
  }

  HttpResponse<String> send(HttpRequest request) {
    return send(request, HttpResponse.BodyHandlers.ofString());
  }

  private <T> HttpResponse<T> send(HttpRequest request, HttpResponse.BodyHandler<T> how) {
    try {
      return client.send(request, how);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  Map<String, String> hidden(String path) {
    Map<String, String> hidden = new LinkedHashMap<>();
    HIDDEN
        .matcher(get(path).body())
        .results()
        .forEach(found -> hidden.putIfAbsent(found.group(1), found.group(2)));
    hidden.remove("back");
    return hidden;
  }

  HttpResponse<String> join(String code, String name, String... headers) {
    Map<String, String> form = hidden("/join");
    form.put("code", code);
    form.put("name", name);
    return form("/join", form, headers);
  }

  String token(String path) {
    return get(path)
        .body()
        .replaceFirst("(?s).*name=\"daylight-token\" content=\"(\\w+)\".*", "$1");
  }

  /** Lines sent as they are, which no browser would do; the whole reply as text. */
  String raw(String... lines) {
    URI there = URI.create(origin);
    try (Socket socket = new Socket(there.getHost(), there.getPort())) {
      OutputStream out = socket.getOutputStream();
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      out.write(request.getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    client.close();
  }
}
