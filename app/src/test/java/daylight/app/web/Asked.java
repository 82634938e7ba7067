package daylight.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** Requests to what is being served. */
final class Asked {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private Asked() {}

  /** A request with its headers: name, value, name, value. */
  static HttpResponse<byte[]> of(
      Workspace.Running running, String method, String path, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(running.address().resolve(path))
            .method(method, HttpRequest.BodyPublishers.noBody());
    if (headers.length > 0) {
      request.headers(headers);
    }
    try {
      return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  static HttpResponse<byte[]> get(Workspace.Running running, String path, String... headers) {
    return of(running, "GET", path, headers);
  }

  static String text(HttpResponse<byte[]> reply) {
    return new String(reply.body(), StandardCharsets.UTF_8);
  }

  static String header(HttpResponse<byte[]> reply, String name) {
    return reply.headers().firstValue(name).orElse("");
  }

  /** Lines sent as they are, which a well-behaved client would not do; the whole reply as text. */
  static String raw(URI address, String... lines) {
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
