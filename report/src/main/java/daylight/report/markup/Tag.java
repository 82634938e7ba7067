package daylight.report.markup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One element with its attributes and what stands in it. Built by one thread, written once; the
 * methods that add return the element itself.
 */
public final class Tag {
  /** Elements that HTML never closes by a tag of their own. */
  private static final Set<String> VOID = Set.of("br", "col", "hr", "img", "input", "link", "meta");

  private final String name;
  private final Map<String, Value> attributes = new LinkedHashMap<>();
  private final List<Content> contents = new ArrayList<>();

  private sealed interface Value {}

  private record Plain(String text) implements Value {}

  private record Held(Embedded large) implements Value {}

  private sealed interface Content {}

  private record Words(String text) implements Content {}

  private record Code(String text) implements Content {}

  private record Child(Tag tag) implements Content {}

  private Tag(String name) {
    this.name = name;
  }

  /** An empty element. */
  public static Tag of(String name) {
    return new Tag(name);
  }

  /** An element that holds a text. */
  public static Tag of(String name, String text) {
    return new Tag(name).text(text);
  }

  /** Sets an attribute that was not set before. */
  public Tag with(String attribute, String value) {
    return set(attribute, new Plain(value));
  }

  /** Sets an attribute to the address of something large, of which no text is held. */
  public Tag with(String attribute, Embedded large) {
    return set(attribute, new Held(large));
  }

  private Tag set(String attribute, Value value) {
    if (attributes.putIfAbsent(attribute, value) != null) {
      throw new IllegalArgumentException(name + ": attribute set twice: " + attribute);
    }
    return this;
  }

  /** Sets an attribute to a number with at most two decimals. */
  public Tag with(String attribute, double value) {
    return with(attribute, number(value));
  }

  /** Adds elements at the end. */
  public Tag add(Tag... children) {
    for (Tag child : children) {
      contents.add(new Child(child));
    }
    return this;
  }

  /** Adds elements at the end. */
  public Tag addAll(List<Tag> children) {
    return add(children.toArray(Tag[]::new));
  }

  /** Adds text at the end. */
  public Tag text(String text) {
    contents.add(new Words(text));
    return this;
  }

  /**
   * Adds a style sheet or a script, as it is. HTML reads it to the element's end; for XML, where
   * some of its characters mean something, it stands within a CDATA section, whose marks are
   * comments of either language.
   *
   * @param text holds neither the end of such a section nor that of its element
   */
  public Tag code(String text) {
    if (text.contains("]]>") || text.contains("</")) {
      throw new IllegalArgumentException(name + ": code cannot end what it stands in");
    }
    contents.add(new Code(text));
    return this;
  }

  /** What stands in it as text. */
  public String inside() {
    StringBuilder out = new StringBuilder();
    try {
      contents(out, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** Whether it goes by that id. */
  public boolean is(String id) {
    return value("id").filter(id::equals).isPresent();
  }

  /** The value of an attribute; empty where it was not set. */
  public Optional<String> value(String attribute) {
    return Optional.ofNullable(attributes.get(attribute)).map(value -> text(value, true));
  }

  /** Whether nothing stands in it. */
  public boolean isEmpty() {
    return contents.isEmpty();
  }

  /** What is read in it, without the marks. */
  public String read() {
    StringBuilder read = new StringBuilder();
    for (Content content : contents) {
      switch (content) {
        case Words words -> read.append(words.text());
        case Code _ -> {}
        case Child child -> read.append(child.tag().read()).append(' ');
      }
    }
    return read.toString();
  }

  /** The element as text, with all that it shows. */
  public String write() {
    StringBuilder out = new StringBuilder();
    write(out, true);
    return out.toString();
  }

  /** The element as text in which what is large is only named. */
  public String naming() {
    StringBuilder out = new StringBuilder();
    write(out, false);
    return out.toString();
  }

  /** Writes the element as text, with all that it shows. */
  public void write(Writer out) {
    write(out, true);
  }

  private void write(Appendable out, boolean whole) {
    try {
      out.append('<').append(name);
      for (Map.Entry<String, Value> one : attributes.entrySet()) {
        out.append(' ').append(one.getKey()).append("=\"");
        out.append(quoted(text(one.getValue(), whole))).append('"');
      }
      if (VOID.contains(name) && contents.isEmpty()) {
        out.append("/>");
        return;
      }
      out.append('>');
      contents(out, whole);
      out.append("</").append(name).append('>');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void contents(Appendable out, boolean whole) throws IOException {
    for (Content content : contents) {
      switch (content) {
        case Words words -> out.append(escaped(words.text()));
        case Code code -> out.append("/*<![CDATA[*/").append(code.text()).append("/*]]>*/");
        case Child child -> child.tag().write(out, whole);
      }
    }
  }

  private static String text(Value value, boolean whole) {
    return switch (value) {
      case Plain plain -> plain.text();
      case Held(Embedded large) -> whole ? large.inPage() : large.beside();
    };
  }

  /** A number with at most two decimals, without zeros at the end. */
  public static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String quoted(String value) {
    return escaped(value).replace("\"", "&quot;").replace("\n", "&#10;");
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .filter(Tag::allowed)
        .forEach(
            character -> {
              switch (character) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.appendCodePoint(character);
              }
            });
    return out.toString();
  }

  /** The characters of XML 1.0, section 2.2. */
  private static boolean allowed(int character) {
    return character == '\t'
        || character == '\n'
        || character == '\r'
        || (character >= 0x20 && character <= 0xD7FF)
        || (character >= 0xE000 && character <= 0xFFFD)
        || character >= 0x10000;
  }
}
