package daylight.app.field;

import daylight.report.words.Language;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Everything that these pages say, in one language: from one message file each. */
final class Phrases {
  private static final Pattern FIELD = Pattern.compile("\\{(\\d)}");
  private static final Map<Language, Phrases> ALL = new EnumMap<>(Language.class);

  static {
    for (Language tongue : Language.values()) {
      ALL.put(tongue, new Phrases(tongue));
    }
  }

  private final Language tongue;
  private final Properties messages = new Properties();

  private Phrases(Language tongue) {
    this.tongue = tongue;
    String file = tongue.code() + ".properties";
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(Phrases.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      messages.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Phrases of(Language tongue) {
    return Objects.requireNonNull(ALL.get(tongue), tongue.code());
  }

  Language tongue() {
    return tongue;
  }

  Properties messages() {
    return messages;
  }

  /** A word or a sentence; {@code {0}} and so on stand for what is told with it. */
  String say(String key, Object... told) {
    String message = messages.getProperty(key);
    if (message == null) {
      throw new IllegalArgumentException("no message for the key " + key);
    }
    Matcher fields = FIELD.matcher(message);
    return fields.replaceAll(
        field -> Matcher.quoteReplacement(String.valueOf(told[Integer.parseInt(field.group(1))])));
  }

  /** The same of so many things: {@code key.one} or {@code key.other}, the number first. */
  String count(String key, long count, Object... told) {
    Object[] all = new Object[told.length + 1];
    all[0] = count;
    System.arraycopy(told, 0, all, 1, told.length);
    return say(key + (tongue.isOne(count) ? ".one" : ".other"), all);
  }

  /** All messages whose keys begin so, by the rest of the key: what a script may say. */
  Map<String, String> behind(String start) {
    Map<String, String> behind = new TreeMap<>();
    messages.stringPropertyNames().stream()
        .filter(key -> key.startsWith(start))
        .forEach(key -> behind.put(key.substring(start.length()), messages.getProperty(key)));
    return behind;
  }

  /** A kind of finding; an identity that is not in the catalogue is shown as it is written. */
  String kind(String id) {
    return messages.getProperty("kind." + id, id);
  }

  /** A length as {@link daylight.line.measure.Print} gives it, in the way of the language. */
  String figure(String printed) {
    return tongue == Language.FR
        ? printed.replace('.', ',').replaceAll(" in\\b", " po").replaceAll(" ft\\b", " pi")
        : printed;
  }

  /** Several things in one sentence part. */
  String list(List<String> items) {
    return String.join(", ", items);
  }
}
