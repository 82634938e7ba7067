package daylight.report.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;

/** The messages of one language, by key. */
final class Messages {
  private final Map<String, String> byKey;

  private Messages(Map<String, String> byKey) {
    this.byKey = byKey;
  }

  static Messages read(Language language) {
    String file = language.code() + ".properties";
    try (InputStream in = Messages.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("message file is missing: " + file);
      }
      Properties messages = new Properties();
      try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        messages.load(reader);
      }
      return new Messages(
          messages.stringPropertyNames().stream()
              .collect(Collectors.toUnmodifiableMap(key -> key, messages::getProperty)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Optional<String> find(String key) {
    return Optional.ofNullable(byKey.get(key));
  }

  String get(String key) {
    return find(key)
        .orElseThrow(() -> new IllegalArgumentException("no message for the key " + key));
  }
}
