package daylight.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of the project as a person meets them, and what is wrong with them. */
final class SourceTree {
  static final int LONGEST_FILE = 400;

  private static final Pattern LEFT_FOR_LATER = Pattern.compile("\\b(TODO|FIXME|XXX)\\b");
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)#\\s]*)(?:#[^)]*)?\\)");
  private static final Pattern PACKAGE_COMMENT =
      Pattern.compile("(?s)^/\\*\\*(.*?)\\*/\\s*@NullMarked");
  private static final Pattern CITATION = Pattern.compile("(?s)Sources: (.*?)\\*/");
  private static final Pattern SOURCE_ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9.]+)+");
  private static final int SHORTEST_PACKAGE_COMMENT = 80;

  private final Path root;

  SourceTree(Path root) {
    this.root = root;
  }

  /** The project's own tree: the nearest folder upward that holds the check script. */
  static SourceTree ofThisProject() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("check"))) {
      folder = parentOf(folder);
    }
    return new SourceTree(folder);
  }

  Path file(String name) {
    return root.resolve(name);
  }

  List<Path> mainSources() throws IOException {
    return files(path -> path.contains("/src/main/java/") && path.endsWith(".java"));
  }

  List<Path> documents() throws IOException {
    return files(path -> path.endsWith(".md"));
  }

  List<String> tooLong() throws IOException {
    return mainSources().stream()
        .filter(file -> read(file).lines().count() > LONGEST_FILE)
        .map(this::name)
        .toList();
  }

  List<String> leftForLater() throws IOException {
    return mainSources().stream()
        .filter(file -> LEFT_FOR_LATER.matcher(read(file)).find())
        .map(this::name)
        .toList();
  }

  /** Folders with sources whose package-info is missing or says next to nothing. */
  List<String> unexplainedPackages() throws IOException {
    return mainSources().stream()
        .map(SourceTree::parentOf)
        .distinct()
        .filter(folder -> !explains(folder.resolve("package-info.java")))
        .map(this::name)
        .toList();
  }

  /** Links of documents, within the project, that lead nowhere: document and target. */
  List<String> brokenLinks() throws IOException {
    return documents().stream().flatMap(this::brokenLinksOf).toList();
  }

  private Stream<String> brokenLinksOf(Path document) {
    return LINK.matcher(read(document))
        .results()
        .map(link -> link.group(1))
        .filter(target -> !target.isEmpty() && !target.contains(":"))
        .filter(target -> !Files.exists(document.resolveSibling(target)))
        .map(target -> name(document) + ": " + target);
  }

  /** Source ids that a package-info cites and SOURCES.md does not list: folder and id. */
  List<String> unlistedSources() throws IOException {
    String listed = read(root.resolve("SOURCES.md"));
    return mainSources().stream()
        .filter(file -> file.endsWith("package-info.java"))
        .flatMap(file -> citedBy(file).map(id -> name(parentOf(file)) + ": " + id))
        .filter(cited -> !listed.contains("`" + cited.substring(cited.indexOf(": ") + 2) + "`"))
        .toList();
  }

  private static Stream<String> citedBy(Path packageInfo) {
    return CITATION
        .matcher(read(packageInfo))
        .results()
        .flatMap(sentence -> Stream.of(sentence.group(1).split("[\\s,;*]+", -1)))
        .map(word -> word.replaceAll("\\.$", ""))
        .filter(word -> SOURCE_ID.matcher(word).matches());
  }

  private static boolean explains(Path packageInfo) {
    return Files.exists(packageInfo)
        && PACKAGE_COMMENT
            .matcher(read(packageInfo))
            .results()
            .anyMatch(comment -> comment.group(1).strip().length() >= SHORTEST_PACKAGE_COMMENT);
  }

  private List<Path> files(Predicate<String> wanted) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile)
          .filter(path -> isOurs(name(path)) && wanted.test("/" + name(path)))
          .sorted()
          .toList();
    }
  }

  private static Path parentOf(Path path) {
    return Objects.requireNonNull(path.getParent(), () -> path + " has no folder above it");
  }

  private static boolean isOurs(String name) {
    return Stream.of(name.split("/", -1))
        .noneMatch(part -> part.equals("target") || (part.startsWith(".") && !part.equals(".ci")));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String name(Path path) {
    return root.relativize(path).toString().replace('\\', '/');
  }
}
