package daylight.archive.form;

import daylight.line.measure.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The keys that may stand together, with the shape of each. The same table serves reading, writing
 * and the published schema, so that they cannot drift apart.
 *
 * @param name what the section is called in the schema
 * @param keys every key known here
 * @param others the shape of whatever further keys; null where there must be none
 */
public record Section(String name, Map<String, Shape> keys, @Nullable Shape others) {
  public Section {
    keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
  }

  /** A section without keys. */
  public static Section named(String name) {
    return new Section(name, Map.of(), null);
  }

  /** With one more key. */
  public Section with(String key, Shape shape) {
    Map<String, Shape> more = new LinkedHashMap<>(keys);
    if (more.put(key, shape) != null) {
      throw new IllegalArgumentException(name + " has " + key + " twice");
    }
    return new Section(name, more, others);
  }

  /** With the keys of another. */
  public Section with(Section other) {
    Section all = this;
    for (Map.Entry<String, Shape> key : other.keys.entrySet()) {
      all = all.with(key.getKey(), key.getValue());
    }
    return all;
  }

  /** With several keys of words. */
  public Section words(String... names) {
    Section all = this;
    for (String key : names) {
      all = all.with(key, new Shape.Plain(Shape.Kind.WORDS));
    }
    return all;
  }

  /** With a key for a text of some kind. */
  public Section plain(String key, Shape.Kind kind) {
    return with(key, new Shape.Plain(kind));
  }

  /** With a key for one word out of an enum's. */
  public Section oneOf(String key, Class<? extends Enum<?>> words) {
    return with(key, new Shape.OneOf(words));
  }

  /** With a key for a quantity whose bare numbers a book's units explain. */
  public Section amount(String key, Dimension dimension, Bare bare) {
    return with(key, new Shape.Amount(dimension, bare));
  }

  /** With a key for a quantity that carries its unit. */
  public Section amount(String key, Dimension dimension) {
    return amount(key, dimension, Bare.NONE);
  }

  /** With a key for a section of its own. */
  public Section part(String key, Section section) {
    return with(key, new Shape.Part(section));
  }

  /** With a key for a list of sections. */
  public Section rows(String key, Section section) {
    return with(key, new Shape.Rows(new Shape.Part(section)));
  }

  /** With a key for a list of words. */
  public Section texts(String key) {
    return with(key, new Shape.Rows(new Shape.Plain(Shape.Kind.WORDS)));
  }

  /** With any further key of that shape. */
  public Section open(Shape shape) {
    return new Section(name, keys, shape);
  }

  /**
   * The shape at a key.
   *
   * @throws IllegalArgumentException for a key that the section does not know: our own mistake
   */
  public Shape at(String key) {
    Shape shape = keys.getOrDefault(key, others);
    if (shape == null) {
      throw new IllegalArgumentException(name + " has no key " + key);
    }
    return shape;
  }

  /** The words of an enum, as they are written in a file. */
  public static List<String> words(Class<? extends Enum<?>> type) {
    List<String> words = new ArrayList<>();
    for (Enum<?> constant : type.getEnumConstants()) {
      words.add(word(constant));
    }
    return words;
  }

  /** The word of an enum's constant, as it is written in a file. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
