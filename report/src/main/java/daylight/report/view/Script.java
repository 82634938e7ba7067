package daylight.report.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Modules of a page as one, for a page that has no file beside it: each stands before the first
 * that imports it, once, without the words {@code import} and {@code export}. What they declare
 * lies in one scope then. Our own modules are written for that; what could not be told apart there,
 * or is imported in another manner, is refused.
 */
final class Script {
  /** As our modules are written: names in braces, of a module beside it, in one line. */
  private static final Pattern IMPORT =
      Pattern.compile("import \\{ (\\w+(?:, \\w+)*) \\} from '\\./([\\w-]+\\.js)';");

  private static final Pattern EXPORT = Pattern.compile("export (?=(?:class|const|function) )");
  private static final Pattern DECLARED =
      Pattern.compile("(?:export )?(?:async )?(?:class|const|let|var|function\\*?) (\\w+).*");

  private final UnaryOperator<String> read;
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> declared = new LinkedHashSet<>();
  private final List<String> lines = new ArrayList<>();

  private Script(UnaryOperator<String> read) {
    this.read = read;
  }

  /** The module of that name of ours, with all that it imports. */
  static String of(String name) {
    return of(name, Script::ours);
  }

  /** The same of modules that are read by name. */
  static String of(String name, UnaryOperator<String> read) {
    Script script = new Script(read);
    script.take(name);
    return String.join("\n", script.lines) + "\n";
  }

  private void take(String name) {
    if (!names.add(name)) {
      return;
    }
    List<String> own = new ArrayList<>();
    for (String line : read.apply(name).lines().toList()) {
      Matcher imported = IMPORT.matcher(line);
      if (imported.matches()) {
        take(imported.group(2));
        for (String one : imported.group(1).split(", ", -1)) {
          require(declared.contains(one), name, line);
        }
        continue;
      }
      Matcher declares = DECLARED.matcher(line);
      if (declares.matches()) {
        require(declared.add(declares.group(1)), name, line);
      }
      String plain = EXPORT.matcher(line).replaceFirst("");
      require(!plain.startsWith("import") && !plain.startsWith("export"), name, line);
      require(!plain.contains("</script") && !plain.contains("]]>"), name, line);
      own.add(plain);
    }
    lines.addAll(own);
  }

  private static void require(boolean holds, String name, String line) {
    if (!holds) {
      throw new IllegalArgumentException("cannot be put into one script: " + name + ": " + line);
    }
  }

  private static String ours(String name) {
    try (InputStream in = Script.class.getResourceAsStream("/daylight/report/view/" + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A style sheet of ours. */
  static String style(String name) {
    return ours(name);
  }
}
