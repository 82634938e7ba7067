package daylight.bench;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** The yardstick: a server of the same library that has one page, which is ready. */
public final class BareServer {
  private BareServer() {}

  /**
   * Serves a page until the process is ended; with a second argument it asks for the page once and
   * ends, for the Java machine to keep what it learnt.
   */
  public static void main(String[] words) throws IOException {
    byte[] page = "<!DOCTYPE html><title>bare</title>".getBytes(StandardCharsets.UTF_8);
    Javalin server = started(page, Integer.parseInt(words[0]));
    if (words.length > 1) {
      URI.create("http://127.0.0.1:" + server.port() + "/").toURL().openStream().close();
      server.stop();
      System.exit(0);
    }
  }

  static Javalin started(byte[] page, int port) {
    return Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              config.startup.startupWatcherEnabled = false;
              config.http.compressionStrategy = CompressionStrategy.NONE;
              config.routes.get("/", reply -> reply.contentType("text/html").result(page));
            })
        .start("127.0.0.1", port);
  }
}
