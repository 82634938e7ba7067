package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.dig.Crossing;
import daylight.line.dig.ServiceFound;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A mark of another service, as both files tell it. */
final class ServiceJson {
  private ServiceJson() {}

  static void fill(ObjectNode into, ServiceFound found) {
    into.put("service", found.mark().service().name().toLowerCase(Locale.ROOT));
    into.put("visit", found.visit());
    into.put("placed", !found.points().isEmpty());
    ArrayNode crossings = into.putArray("crossings");
    for (Crossing crossing : found.crossings()) {
      ObjectNode at = crossings.addObject();
      Json.place(at, "place", crossing.place());
      at.put("sd", Json.number(crossing.along().sd()));
    }
    ServiceFound.@Nullable Nearest nearest = found.nearest();
    if (nearest != null) {
      Json.place(into, "nearest", nearest.place());
      into.put("away", Json.number(nearest.away()));
      into.put("least", Json.number(nearest.least()));
    }
  }
}
