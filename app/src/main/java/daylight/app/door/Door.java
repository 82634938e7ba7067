package daylight.app.door;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.time.Duration;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;

/**
 * A second place at which a running server listens. Shut at first; opened at one address at a time.
 */
public final class Door {
  /** No more connections at once than this, so that no stranger takes what this machine needs. */
  private static final int MOST_CONNECTIONS = 128;

  /** Whoever says nothing for so long is let go. */
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private @Nullable Server server;
  private @Nullable ServerConnector connector;
  private SslContextFactory.@Nullable Server secrets;

  /** The server that is to listen; called once, before it starts. */
  public synchronized void attach(Server running) {
    server = running;
  }

  /**
   * Opens it, at no other address any more.
   *
   * @param port to listen at; 0 takes one that is free
   * @param pass for a secure connection, at which a plain one is understood as well; null for plain
   *     ones alone
   * @return the port
   * @throws BindException where the port is taken
   */
  synchronized int open(InetAddress at, int port, @Nullable Pass pass) throws IOException {
    shut();
    Server running = Objects.requireNonNull(server, "opened before there was a server");
    HttpConnectionFactory http = new HttpConnectionFactory(configuration(running));
    ServerConnector fresh;
    if (pass == null) {
      fresh = new ServerConnector(running, http);
    } else {
      SslContextFactory.Server factory = new SslContextFactory.Server();
      give(factory, pass);
      SslConnectionFactory tls = new SslConnectionFactory(factory, http.getProtocol());
      fresh = new ServerConnector(running, new DetectorConnectionFactory(tls), http);
      secrets = factory;
    }
    fresh.setHost(at.getHostAddress());
    fresh.setPort(port);
    fresh.setIdleTimeout(PATIENCE.toMillis());
    fresh.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, fresh));
    running.addConnector(fresh);
    connector = fresh;
    try {
      fresh.start();
      return fresh.getLocalPort();
    } catch (IOException | RuntimeException e) {
      shut();
      throw e;
    } catch (Exception e) {
      shut();
      throw new IOException(e);
    }
  }

  /** As the server's own, but it also says whether a connection is secure. */
  private static HttpConfiguration configuration(Server running) {
    HttpConfiguration known =
        Stream.of(running.getConnectors())
            .map(one -> one.getConnectionFactory(HttpConnectionFactory.class))
            .filter(Objects::nonNull)
            .findFirst()
            .map(HttpConnectionFactory::getHttpConfiguration)
            .orElseGet(HttpConfiguration::new);
    HttpConfiguration ours = new HttpConfiguration(known);
    // Addresses have no name by which a server could be told from another at the same place.
    ours.addCustomizer(new SecureRequestCustomizer(false));
    return ours;
  }

  private static void give(SslContextFactory.Server factory, Pass pass) {
    factory.setKeyStore(pass.keys());
    factory.setKeyStorePassword(pass.password());
    factory.setKeyManagerPassword(pass.password());
    factory.setSniRequired(false);
  }

  /** Shows another pass from the next connection on; nothing where it shows none. */
  synchronized void renew(Pass pass) throws IOException {
    SslContextFactory.Server shown = secrets;
    if (shown != null) {
      try {
        shown.reload(factory -> give(shown, pass));
      } catch (Exception e) {
        throw new IOException(e);
      }
    }
  }

  /** Shuts it; whoever is connected is cut off. */
  synchronized void shut() throws IOException {
    Connector open = connector;
    connector = null;
    secrets = null;
    if (open != null && server != null) {
      server.removeConnector(open);
      try {
        open.stop();
      } catch (Exception e) {
        throw new IOException(e);
      }
    }
  }
}
