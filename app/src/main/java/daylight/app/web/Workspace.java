package daylight.app.web;

import daylight.app.Job;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** The door of the room: serves field books to a browser of this machine until it is closed. */
public final class Workspace {
  private static final String LOOPBACK = "127.0.0.1";

  private Workspace() {}

  /** What is being served. */
  public static final class Running implements AutoCloseable {
    private final Javalin server;
    private final List<Property> properties;
    private final @Nullable Proxies proxies;

    private Running(Javalin server, List<Property> properties, @Nullable Proxies proxies) {
      this.server = server;
      this.properties = properties;
      this.proxies = proxies;
    }

    /** Of its first page. */
    public URI address() {
      return URI.create("http://" + LOOPBACK + ":" + server.port() + "/");
    }

    /** Ends it; requests under way are given up. */
    @Override
    public void close() {
      // Whoever waits for a page is let go first.
      properties.forEach(Property::end);
      server.stop();
      properties.forEach(Property::close);
      if (proxies != null) {
        proxies.close();
      }
    }
  }

  /**
   * Serves the books, each as it is on disk when it is looked at.
   *
   * @param port to listen on; 0 takes one that is free
   * @param copies whether copies of recordings that browsers cannot play are made beside the books
   * @throws io.javalin.util.JavalinBindException where the port is taken
   */
  public static Running serve(List<Opened> books, int port, boolean copies) {
    Proxies proxies = copies ? new Proxies() : null;
    Semaphore turns = new Semaphore(1, true);
    List<Property> properties = new ArrayList<>();
    Map<String, Integer> taken = new LinkedHashMap<>();
    for (Opened opened : books) {
      String name = Property.nameOf(opened.file());
      int times = taken.merge(name, 1, Integer::sum);
      properties.add(
          new Property(
              times == 1 ? name : name + "-" + times, opened, Job::answer, proxies, turns));
    }
    Running running = start(properties, port, proxies);
    // Whoever opens the first page comes later than this, and need not wait for all of it.
    Thread.ofVirtual().start(() -> properties.forEach(Workspace::prepare));
    return running;
  }

  /** Reads a book and begins the copies that its recordings need. */
  private static void prepare(Property property) {
    if (property.read() instanceof Reading.Answered answered) {
      Recording.of(property, answered).forEach(property::proxy);
    }
  }

  static Running start(List<Property> properties, int port) {
    return start(properties, port, null);
  }

  static Running start(List<Property> properties, int port, @Nullable Proxies proxies) {
    Javalin server = Javalin.create(config -> configure(config, new Routes(properties)));
    return new Running(server.start(LOOPBACK, port), properties, proxies);
  }

  private static void configure(JavalinConfig config, Routes routes) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = CompressionStrategy.NONE;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    routes.addTo(config.routes);
  }
}
