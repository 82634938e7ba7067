package daylight.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A place of its own for what is kept of counters, so that no test finds what another, or the user
 * of the machine, has read. In a static field one for all tests of a class, otherwise one each.
 */
public final class OwnCache
    implements BeforeAllCallback, AfterAllCallback, BeforeEachCallback, AfterEachCallback {
  private static final String PROPERTY = "daylight.cache";

  private @Nullable Path made;
  private @Nullable String before;
  private boolean forAll;

  /** Where it is, or will be as soon as something is kept. */
  public Path folder() {
    return around().resolve("cache");
  }

  private Path around() {
    if (made == null) {
      throw new IllegalStateException("there is one only while a test runs");
    }
    return made;
  }

  @Override
  public void beforeAll(ExtensionContext context) throws IOException {
    forAll = true;
    begin();
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    end();
  }

  @Override
  public void beforeEach(ExtensionContext context) throws IOException {
    if (!forAll) {
      begin();
    }
  }

  @Override
  public void afterEach(ExtensionContext context) throws IOException {
    if (!forAll) {
      end();
    }
  }

  private void begin() throws IOException {
    before = System.getProperty(PROPERTY);
    made = Files.createTempDirectory("own-cache");
    System.setProperty(PROPERTY, folder().toString());
  }

  private void end() throws IOException {
    if (before == null) {
      System.clearProperty(PROPERTY);
    } else {
      System.setProperty(PROPERTY, before);
    }
    try (Stream<Path> kept = Files.walk(around())) {
      for (Path one : kept.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    }
    made = null;
  }
}
