package daylight.report.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.book.Place;
import daylight.line.measure.Measured;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Objects whose keys keep their order and whose numbers are rounded to what can mean anything. */
final class Json {
  private static final int DECIMALS = 6;
  private static final ObjectMapper MAPPER =
      JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private Json() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  /** A number to the sixth decimal, a micrometre where it is metres. */
  static BigDecimal number(double value) {
    return number(value, DECIMALS);
  }

  static BigDecimal number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  /** A value and its standard uncertainty, or null. */
  static void measured(ObjectNode into, String key, @Nullable Measured measured) {
    if (measured == null) {
      into.putNull(key);
    } else {
      into.putObject(key).put("value", number(measured.value())).put("sd", number(measured.sd()));
    }
  }

  /** A bearing within a full turn, clockwise from grid north, and its standard uncertainty. */
  static void bearing(ObjectNode into, String key, double bearing, double sd) {
    measured(into, key, new Measured(turned(bearing), sd));
  }

  /** A bearing within a full turn. */
  static double turned(double bearing) {
    double full = 2 * Math.PI;
    return bearing - full * Math.floor(bearing / full);
  }

  static void place(ObjectNode into, String key, @Nullable Place place) {
    if (place == null) {
      into.putNull(key);
    } else {
      into.putObject(key).put("reach", place.reach()).put("distance", number(place.distance()));
    }
  }

  /** Indented by two blanks, lines ended alike on every machine. */
  static byte[] bytes(JsonNode node) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      return (MAPPER.writer(printer).writeValueAsString(node) + "\n")
          .getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }
}
