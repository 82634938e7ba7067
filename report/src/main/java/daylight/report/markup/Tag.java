package daylight.report.markup;

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
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Content> contents = new ArrayList<>();

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
    contents(out);
    return out.toString();
  }

  /** Whether it goes by that id. */
  public boolean is(String id) {
    return id.equals(attributes.get("id"));
  }

  /** The value of an attribute; empty where it was not set. */
  public Optional<String> value(String attribute) {
    return Optional.ofNullable(attributes.get(attribute));
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

  /** The element as text. */
  public String write() {
    StringBuilder out = new StringBuilder();
    write(out);
    return out.toString();
  }

  private void write(StringBuilder out) {
    out.append('<').append(name);
    attributes.forEach(
        (attribute, value) ->
            out.append(' ').append(attribute).append("=\"").append(quoted(value)).append('"'));
    if (VOID.contains(name) && contents.isEmpty()) {
      out.append("/>");
      return;
    }
    out.append('>');
    contents(out);
    out.append("</").append(name).append('>');
  }

  private void contents(StringBuilder out) {
    for (Content content : contents) {
      switch (content) {
        case Words words -> out.append(escaped(words.text()));
        case Code code -> out.append("/*<![CDATA[*/").append(code.text()).append("/*]]>*/");
        case Child child -> child.tag().write(out);
      }
    }
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
