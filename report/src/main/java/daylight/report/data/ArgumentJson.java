package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.Locale;

/** One figure of a sentence: its kind, and its value in SI units. */
public final class ArgumentJson {
  private ArgumentJson() {}

  /** The kind of a figure and its value, with its standard uncertainty where it has one. */
  public static ObjectNode of(Argument argument) {
    ObjectNode json = Json.object();
    switch (argument) {
      case Argument.Text(String text) -> json.put("kind", "text").put("text", text);
      case Argument.Number(double value) -> number(json, "number", value);
      case Argument.Count(long count) -> json.put("kind", "count").put("value", count);
      case Argument.Length(double metres) -> number(json, "length", metres);
      case Argument.UncertainLength(Measured metres) -> measured(json, "length", metres);
      case Argument.Bore(double metres) -> number(json, "bore", metres);
      case Argument.Small(double metres) -> number(json, "size", metres);
      case Argument.UncertainSlope(Measured slope) -> measured(json, "slope", slope);
      case Argument.UncertainAngle(Measured radians) -> measured(json, "angle", radians);
      case Argument.Probability(double value) -> number(json, "probability", value);
      case Argument.Term(String key) -> json.put("kind", "term").put("key", key);
      case Argument.Day(var date) -> json.put("kind", "day").put("date", date.toString());
      case Argument.Several(List<Argument> items) -> {
        json.put("kind", "several");
        ArrayNode array = json.putArray("items");
        items.forEach(item -> array.add(of(item)));
      }
      case Argument.Either(List<Argument> items) -> {
        json.put("kind", "either");
        ArrayNode array = json.putArray("items");
        items.forEach(item -> array.add(of(item)));
      }
      case Argument.Said(Statement statement) -> {
        json.put("kind", "said").put("key", statement.key().key());
        ArrayNode array = json.putArray("items");
        statement.arguments().forEach(item -> array.add(of(item)));
      }
      case Argument.Quantity quantity ->
          json.put("kind", lower(quantity.dimension()))
              .put("value", Json.number(quantity.value(), decimals(quantity.dimension())));
      case Argument.Label(String label) -> json.put("kind", "label").put("label", label);
      case Argument.Choices(List<String> choices) -> {
        json.put("kind", "choices");
        choices.forEach(json.putArray("choices")::add);
      }
      case Argument.Reason(var refusal) ->
          json.put("kind", "reason").put("refusal", lower(refusal));
    }
    return json;
  }

  /** A litre a minute is 0.000017 m³/s, and a millimetre an hour far less in metres a second. */
  private static int decimals(Dimension dimension) {
    return switch (dimension) {
      case FLOW, RAINFALL -> 9;
      default -> 6;
    };
  }

  private static void number(ObjectNode json, String kind, double value) {
    json.put("kind", kind).put("value", Json.number(value));
  }

  private static void measured(ObjectNode json, String kind, Measured measured) {
    json.put("kind", kind)
        .put("value", Json.number(measured.value()))
        .put("sd", Json.number(measured.sd()));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
