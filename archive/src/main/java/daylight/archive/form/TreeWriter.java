package daylight.archive.form;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Writes a tree as YAML that reads back to the same tree. Rows that hold no more than texts and fit
 * on a line are written in braces, everything else key by key.
 */
public final class TreeWriter {
  private static final int WIDTH = 110;
  private static final String STEP = "  ";

  /** What is safe without quotes anywhere; everything else gets them. */
  private static final Pattern SAFE =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._/°%+'\"()–−-]*[\\p{L}\\p{N}._/°%+'\")])?");

  private final StringBuilder out = new StringBuilder();

  private TreeWriter() {}

  /** The text of a tree whose root has keys. */
  public static String write(Tree.Keys tree) {
    TreeWriter writer = new TreeWriter();
    writer.keys(tree, "", "");
    return writer.out.toString();
  }

  /** Writes keys one below the other; the first follows on the line that has begun. */
  private void keys(Tree.Keys tree, String first, String indent) {
    String before = first;
    for (Map.Entry<String, Tree.Member> member : tree.members().entrySet()) {
      out.append(before).append(quoted(member.getKey())).append(':');
      value(member.getValue().value(), indent);
      before = indent;
    }
  }

  private void value(Tree value, String indent) {
    if (isShort(value)) {
      out.append(' ').append(inline(value)).append('\n');
      return;
    }
    out.append('\n');
    switch (value) {
      case Tree.Text text -> throw new IllegalStateException("a text is always short");
      case Tree.Keys keys -> keys(keys, indent + STEP, indent + STEP);
      case Tree.Items(List<Tree> items, Mark at) -> {
        for (Tree item : items) {
          out.append(indent).append(STEP).append('-');
          item(item, indent + STEP);
        }
      }
    }
  }

  private void item(Tree item, String indent) {
    if (item instanceof Tree.Keys keys && !isShort(item)) {
      keys(keys, " ", indent + STEP);
    } else {
      value(item, indent);
    }
  }

  private static boolean isShort(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> true;
      case Tree.Items(List<Tree> items, Mark at) ->
          items.stream().allMatch(Tree.Text.class::isInstance) && inline(tree).length() < WIDTH;
      case Tree.Keys(Map<String, Tree.Member> members, Mark at) ->
          members.values().stream().noneMatch(member -> nests(member.value()))
              && inline(tree).length() < WIDTH;
    };
  }

  private static boolean nests(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> false;
      case Tree.Items(List<Tree> items, Mark at) ->
          !items.stream().allMatch(Tree.Text.class::isInstance);
      case Tree.Keys keys ->
          keys.members().values().stream().anyMatch(m -> !(m.value() instanceof Tree.Text));
    };
  }

  private static String inline(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> quoted(text.text());
      case Tree.Items(List<Tree> items, Mark at) ->
          "[" + String.join(", ", items.stream().map(TreeWriter::inline).toList()) + "]";
      case Tree.Keys(Map<String, Tree.Member> members, Mark at) ->
          "{"
              + String.join(
                  ", ",
                  members.entrySet().stream()
                      .map(m -> quoted(m.getKey()) + ": " + inline(m.getValue().value()))
                      .toList())
              + "}";
    };
  }

  /** A text as YAML reads it back; with quotes unless it is safe without. */
  static String quoted(String text) {
    if (SAFE.matcher(text).matches()) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> quoted.append(escaped(c)));
    return quoted.append('"').toString();
  }

  private static String escaped(int c) {
    return switch (c) {
      case '"' -> "\\\"";
      case '\\' -> "\\\\";
      case '\n' -> "\\n";
      case '\t' -> "\\t";
      default ->
          isPlainlyPrintable(c) ? Character.toString(c) : String.format(Locale.ROOT, "\\U%08X", c);
    };
  }

  private static boolean isPlainlyPrintable(int c) {
    boolean ascii = c >= ' ' && c < 0x7F;
    boolean letter = c > 0xA0 && Character.isLetterOrDigit(c);
    return ascii || letter || "–−°½¼¾²³·’".indexOf(c) >= 0;
  }
}
