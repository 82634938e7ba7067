package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.form.Desk;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The books that come with Daylight read well, say all a book can say, and survive writing. */
class ExamplesTest {
  static final Path FOLDER = Path.of("../docs/examples");
  private static final Path DEMO = Path.of("../app/src/main/resources/daylight/app/demo");
  private static final Path MANUAL = Path.of("../docs/field-book.md");
  private static final Set<String> ID_AND_LABEL = Set.of("id", "label");
  private static final Pattern FENCED = Pattern.compile("(?s)```yaml\n(.*?)```");

  static List<Path> books() {
    return List.of(
        FOLDER.resolve("shortest.yaml"),
        FOLDER.resolve("full.yaml"),
        DEMO.resolve("shop-roof-drain.yaml"),
        DEMO.resolve("house-sewer.yaml"),
        DEMO.resolve("wash-down-pit.yaml"));
  }

  static List<String> booksOfTheManual() throws IOException {
    return FENCED.matcher(Files.readString(MANUAL)).results().map(m -> m.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("books")
  void readsWithoutComplaint(Path example) throws IOException {
    // The footage of the demo properties is made when they are shown, so it is not looked for.
    Path folder = example.startsWith(DEMO) ? null : FOLDER;
    byte[] book = Files.readAllBytes(example);
    assertThat(FieldBookReader.read("example", book, folder).complaints()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("booksOfTheManual")
  void theManualsBooksReadWithoutComplaint(String example) {
    assertThat(read(example).complaints()).isEmpty();
    assertThat(read(example).book()).isNotNull();
  }

  @Test
  void theManualShowsBooks() throws IOException {
    assertThat(booksOfTheManual()).hasSizeGreaterThanOrEqualTo(3);
  }

  @ParameterizedTest
  @MethodSource("books")
  void whatIsWrittenReadsBackToAnEqualBook(Path example) {
    var book = Objects.requireNonNull(FieldBookReader.read(example).book());
    String written = FieldBookWriter.write(book);
    ReadBook again = read(written);
    assertThat(again.complaints()).isEmpty();
    assertThat(again.book()).isEqualTo(book);
    assertThat(FieldBookWriter.write(Objects.requireNonNull(again.book()))).isEqualTo(written);
  }

  @ParameterizedTest
  @MethodSource("books")
  void everyEntryThatIsWrittenCarriesItsIdAndLabel(Path example) {
    var book = Objects.requireNonNull(FieldBookReader.read(example).book());
    byte[] written = FieldBookWriter.write(book).getBytes(StandardCharsets.UTF_8);
    Tree tree = Objects.requireNonNull(TreeReader.read(written, new Desk("written")));
    List<Tree.Keys> entries = new ArrayList<>();
    entries(tree, new Shape.Part(BookShape.BOOK), entries);
    assertThat(entries).hasSizeGreaterThan(10);
    assertThat(entries).allMatch(entry -> entry.members().keySet().containsAll(ID_AND_LABEL));
  }

  /** Gathers the sections that stand for an entry: those that may carry an identity. */
  private static void entries(Tree tree, Shape shape, List<Tree.Keys> entries) {
    switch (shape) {
      case Shape.Part(Section section) when tree instanceof Tree.Keys keys -> {
        if (section.keys().containsKey("id")) {
          entries.add(keys);
        }
        keys.members().forEach((key, member) -> entries(member.value(), section.at(key), entries));
      }
      case Shape.Rows(Shape item) when tree instanceof Tree.Items items ->
          items.items().forEach(each -> entries(each, item, entries));
      case Shape.Either(List<Shape> shapes) -> shapes.forEach(each -> entries(tree, each, entries));
      default -> {}
    }
  }

  private static ReadBook read(String text) {
    return FieldBookReader.read("again.yaml", text.getBytes(StandardCharsets.UTF_8), null);
  }

  @Test
  void betweenThemTheyUseEveryKeyThatABookKnows() throws IOException {
    Set<String> used = new TreeSet<>();
    for (String example : List.of("shortest.yaml", "full.yaml")) {
      Tree tree = TreeReader.read(Files.readAllBytes(FOLDER.resolve(example)), new Desk(example));
      collect(Objects.requireNonNull(tree), new Shape.Part(BookShape.BOOK), used);
    }
    Set<String> known = new TreeSet<>();
    collect(new Shape.Part(BookShape.BOOK), known);
    assertThat(used).containsAll(known);
  }

  private static void collect(Shape shape, Set<String> known) {
    switch (shape) {
      case Shape.Part(Section section) ->
          section
              .keys()
              .forEach(
                  (key, value) -> {
                    known.add(section.name() + "." + key);
                    collect(value, known);
                  });
      case Shape.Rows(Shape item) -> collect(item, known);
      case Shape.Either(List<Shape> shapes) -> shapes.forEach(each -> collect(each, known));
      case Shape.Plain plain -> {}
      case Shape.OneOf oneOf -> {}
      case Shape.Amount amount -> {}
    }
  }

  private static void collect(Tree tree, Shape shape, Set<String> used) {
    switch (shape) {
      case Shape.Part(Section section) when tree instanceof Tree.Keys keys ->
          keys.members()
              .forEach(
                  (key, member) -> {
                    used.add(section.name() + "." + key);
                    collect(member.value(), section.at(key), used);
                  });
      case Shape.Rows(Shape item) when tree instanceof Tree.Items items ->
          items.items().forEach(each -> collect(each, item, used));
      case Shape.Either(List<Shape> shapes) -> shapes.forEach(each -> collect(tree, each, used));
      default -> {}
    }
  }
}
