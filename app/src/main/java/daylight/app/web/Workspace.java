package daylight.app.web;

import daylight.app.Job;
import daylight.app.door.Door;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
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

  /** Pages that are served beside the books, and come first. */
  @FunctionalInterface
  public interface Beside {
    /**
     * Adds them.
     *
     * @param door by which other machines may come in; shut, until one of these pages opens it
     */
    void addTo(RoutesConfig routes, Shelf shelf, Door door);
  }

  /** What is being served. */
  public static final class Running implements AutoCloseable {
    private final Javalin server;
    private final Shelf shelf;
    private final @Nullable Proxies proxies;

    private Running(Javalin server, Shelf shelf, @Nullable Proxies proxies) {
      this.server = server;
      this.shelf = shelf;
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
      shelf.all().forEach(Property::end);
      server.stop();
      shelf.all().forEach(Property::close);
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
    return serve(books, port, copies, null);
  }

  /**
   * The same.
   *
   * @param sites adds the pages of an archive, which then come first; null for none
   */
  public static Running serve(
      List<Opened> books, int port, boolean copies, @Nullable Beside sites) {
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
    Running running = start(new Shelf(properties, proxies, turns), port, proxies, sites);
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
    return start(new Shelf(properties, proxies, new Semaphore(1, true)), port, proxies, null);
  }

  private static Running start(
      Shelf shelf, int port, @Nullable Proxies proxies, @Nullable Beside sites) {
    Javalin server = Javalin.create(config -> configure(config, shelf, sites));
    return new Running(server.start(LOOPBACK, port), shelf, proxies);
  }

  private static void configure(JavalinConfig config, Shelf shelf, @Nullable Beside sites) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = CompressionStrategy.NONE;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    new Routes(shelf, sites != null).addTo(config.routes);
    if (sites != null) {
      Door door = new Door();
      config.jetty.modifyServer(door::attach);
      sites.addTo(config.routes, shelf, door);
    }
  }
}
