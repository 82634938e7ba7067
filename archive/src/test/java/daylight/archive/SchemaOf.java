package daylight.archive;

import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.measure.Unit;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The JSON Schema (draft 2020-12) that a table of keys amounts to, every scalar a text. */
final class SchemaOf {
  private final JsonNodeFactory json = JsonNodeFactory.instance;
  private final ObjectNode definitions = json.objectNode();

  static ObjectNode book() {
    SchemaOf schema = new SchemaOf();
    ObjectNode root = schema.json.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("$id", "urn:daylight:field-book:1");
    root.put("title", "Field book");
    root.put(
        "description",
        "A field book as YAML 1.2 with every scalar taken as the text it was written as.");
    root.put("$ref", "#/$defs/" + BookShape.BOOK.name());
    schema.define(BookShape.BOOK);
    ((ObjectNode) schema.definitions.get(BookShape.BOOK.name()))
        .putArray("required")
        .add(Versions.KEY);
    root.set("$defs", schema.definitions);
    return root;
  }

  private void define(Section section) {
    if (definitions.has(section.name())) {
      return;
    }
    ObjectNode object = definitions.putObject(section.name());
    object.put("type", "object");
    ObjectNode properties = object.putObject("properties");
    section.keys().forEach((key, shape) -> properties.set(key, of(shape)));
    Shape others = section.others();
    if (others == null) {
      object.put("additionalProperties", false);
    } else {
      object.set("additionalProperties", of(others));
    }
  }

  private ObjectNode of(Shape shape) {
    return switch (shape) {
      case Shape.Plain(Shape.Kind kind) -> text(kind);
      case Shape.OneOf(Class<? extends Enum<?>> words) -> choices(Section.words(words));
      case Shape.Amount amount -> amount();
      case Shape.Rows(Shape item) -> {
        ObjectNode array = json.objectNode();
        array.put("type", "array");
        array.set("items", of(item));
        yield array;
      }
      case Shape.Part(Section section) -> {
        define(section);
        yield json.objectNode().put("$ref", "#/$defs/" + section.name());
      }
      case Shape.Either(List<Shape> shapes) -> {
        ObjectNode either = json.objectNode();
        ArrayNode any = either.putArray("anyOf");
        shapes.forEach(each -> any.add(of(each)));
        yield either;
      }
    };
  }

  private ObjectNode amount() {
    if (!definitions.has("amount")) {
      ObjectNode amount = definitions.putObject("amount");
      ArrayNode any = amount.putArray("anyOf");
      any.addObject().put("type", "string");
      ObjectNode doubted = any.addObject();
      doubted.put("type", "object");
      ObjectNode parts = doubted.putObject("properties");
      parts.putObject("is").put("type", "string");
      parts.putObject("sd").put("type", "string");
      doubted.putArray("required").add("is").add("sd");
      doubted.put("additionalProperties", false);
    }
    return json.objectNode().put("$ref", "#/$defs/amount");
  }

  private ObjectNode text(Shape.Kind kind) {
    return switch (kind) {
      case YES_NO -> choices(List.of("yes", "no", "true", "false"));
      case UNIT -> choices(java.util.Arrays.stream(Unit.values()).map(Unit::symbol).toList());
      case ID -> pattern("^[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}$");
      case DATE -> pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
      case SHA256 -> pattern("^[0-9a-f]{64}$");
      case NUMBER -> pattern("^[-+]?[0-9]{1,9}([.][0-9]{1,40})?$");
      case WORDS, TIME, ZONE, BEARING, CLOCK, SHIFT, FILE ->
          json.objectNode().put("type", "string");
    };
  }

  private ObjectNode pattern(String pattern) {
    return json.objectNode().put("type", "string").put("pattern", pattern);
  }

  private ObjectNode choices(List<String> words) {
    ObjectNode choices = json.objectNode().put("type", "string");
    ArrayNode all = choices.putArray("enum");
    words.forEach(all::add);
    return choices;
  }
}
