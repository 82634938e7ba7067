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
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples of the manual read well, say everything a book can say, and survive writing. */
class ExamplesTest {
  static final Path FOLDER = Path.of("../docs/examples");

  @ParameterizedTest
  @ValueSource(strings = {"shortest.yaml", "full.yaml"})
  void readsWithoutComplaint(String example) {
    assertThat(FieldBookReader.read(FOLDER.resolve(example)).complaints()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"shortest.yaml", "full.yaml"})
  void whatIsWrittenReadsBackToAnEqualBook(String example) {
    var book = Objects.requireNonNull(FieldBookReader.read(FOLDER.resolve(example)).book());
    String written = FieldBookWriter.write(book);
    ReadBook again =
        FieldBookReader.read("again.yaml", written.getBytes(StandardCharsets.UTF_8), null);
    assertThat(again.complaints()).isEmpty();
    assertThat(again.book()).isEqualTo(book);
    assertThat(FieldBookWriter.write(book)).isEqualTo(written);
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
