package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.fall.Ponding;
import org.jspecify.annotations.Nullable;

/** Where water would stand by the grade alone, and the draws it was computed with. */
final class PondingJson {
  private PondingJson() {}

  static ObjectNode of(Ponding ponding) {
    ObjectNode json = Json.object();
    json.put("film", Json.number(Ponding.FILM));
    json.put("seed", ponding.draws().seed()).put("draws", ponding.draws().count());
    ArrayNode pools = json.putArray("pools");
    for (Ponding.Pool pool : ponding.pools()) {
      ObjectNode one = pools.addObject();
      Json.place(one, "from", pool.from());
      Json.place(one, "to", pool.to());
      one.put("probability", Json.number(pool.probability()));
      range(one, "depth", pool.depth());
      range(one, "volume", pool.volume());
      Json.place(one, "lip", pool.lip());
    }
    ArrayNode open = json.putArray("open");
    for (Ponding.Open stretch : ponding.open()) {
      ObjectNode one = open.addObject();
      Json.place(one, "from", stretch.from());
      Json.place(one, "to", stretch.to());
      one.put("most", Json.number(stretch.most()));
    }
    return json;
  }

  private static void range(ObjectNode json, String name, Ponding.@Nullable Range range) {
    if (range == null) {
      json.putNull(name);
      return;
    }
    json.putObject(name)
        .put("low", Json.number(range.low()))
        .put("middle", Json.number(range.middle()))
        .put("high", Json.number(range.high()));
  }
}
