package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import daylight.archive.form.Desk;
import daylight.archive.form.Mark;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The published schema is the reader's own table of keys, and an outside validator agrees. */
class SchemaTest {
  private static final Path PUBLISHED =
      Path.of("src/main/resources/daylight/archive/field-book.schema.json");
  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** After a change of the table, run with -Ddaylight.schema.write=true to publish it again. */
  @Test
  void thePublishedSchemaIsTheReadersTableOfKeys() throws IOException {
    String schema =
        JSON.writerWithDefaultPrettyPrinter().writeValueAsString(SchemaOf.book()) + "\n";
    if (Boolean.getBoolean("daylight.schema.write")) {
      Files.createDirectories(PUBLISHED.resolveSibling("."));
      Files.writeString(PUBLISHED, schema);
    }
    assertThat(Files.readString(PUBLISHED)).isEqualToNormalizingNewlines(schema);
  }

  @ParameterizedTest
  @ValueSource(strings = {"shortest.yaml", "full.yaml"})
  void theExamplesAreValid(String example) throws IOException {
    assertThat(errors(Files.readAllBytes(ExamplesTest.FOLDER.resolve(example)))).isEmpty();
  }

  @Test
  void whatIsWrittenIsValid() {
    var book = FieldBookReader.read(ExamplesTest.FOLDER.resolve("full.yaml")).book();
    String written = FieldBookWriter.write(Objects.requireNonNull(book));
    assertThat(errors(written.getBytes(StandardCharsets.UTF_8))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sitte: {}                        | additionalProperties
          site: []                         | type
          visit: {date: 18/04/2026}        | pattern
          site: {landmarks: [{kind: oak}]} | enum
          units: {depth: fathom}           | enum
          """)
  void theValidatorRefusesWhatTheReaderRefuses(String line, String keyword) {
    byte[] book = ("daylight-book: 1\n" + line).getBytes(StandardCharsets.UTF_8);
    assertThat(errors(book)).extracting(Error::getKeyword).containsExactly(keyword);
    assertThat(FieldBookReader.read("book.yaml", book, null).sound()).isFalse();
  }

  private static List<Error> errors(byte[] yaml) {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaOf.book());
    Tree tree = Objects.requireNonNull(TreeReader.read(yaml, new Desk("book")));
    return schema.validate(json(tree).toString(), InputFormat.JSON);
  }

  private static JsonNode json(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> JsonNodeFactory.instance.stringNode(text.text());
      case Tree.Items(List<Tree> items, Mark at) -> {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        items.forEach(item -> array.add(json(item)));
        yield array;
      }
      case Tree.Keys(Map<String, Tree.Member> members, Mark at) -> {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        members.forEach((key, member) -> object.set(key, json(member.value())));
        yield object;
      }
    };
  }
}
