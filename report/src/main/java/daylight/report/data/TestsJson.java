package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.measure.Measured;
import daylight.line.proving.Connection;
import daylight.line.proving.HeldTest;
import daylight.line.proving.HoldVerdict;
import daylight.line.proving.Lack;
import daylight.line.proving.Leak;
import daylight.line.proving.Passage;
import daylight.line.proving.Poured;
import daylight.line.proving.Proving;
import daylight.report.words.ConnectionWords;
import java.util.List;
import java.util.Locale;

/** What the tests proved, and where what comes in: cubic metres, seconds, shares. */
final class TestsJson {
  private final ConnectionWords words;

  TestsJson(ConnectionWords words) {
    this.words = words;
  }

  ObjectNode of(Proving proving) {
    ObjectNode json = Json.object();
    ArrayNode holds = json.putArray("holds");
    proving.holds().forEach(held -> holds.add(held(held)));
    ArrayNode poured = json.putArray("poured");
    proving.poured().forEach(one -> poured.add(poured(one)));
    ArrayNode passages = json.putArray("passages");
    proving.passages().forEach(one -> passages.add(passage(one)));
    ArrayNode connections = json.putArray("connections");
    proving.connections().forEach(one -> connections.add(connection(one)));
    return json;
  }

  private static ObjectNode held(HeldTest held) {
    ObjectNode json = Json.object().put("test", held.test().label()).put("at", held.test().at());
    texts(json.putArray("reaches"), held.reaches());
    Leak leak = held.leak();
    Json.measured(json, "lost", leak == null ? null : leak.lost());
    Json.measured(json, "rate", leak == null ? null : leak.rate());
    json.put("atLeast", leak != null && leak.atLeast());
    ArrayNode against = json.putArray("against");
    held.against().forEach(verdict -> against.add(verdict(verdict)));
    ArrayNode missing = json.putArray("missing");
    for (Lack lack : held.lacks()) {
      missing.addObject().put("what", lower(lack.why())).put("reach", lack.reach());
    }
    return json;
  }

  private static ObjectNode verdict(HoldVerdict verdict) {
    ObjectNode json = Json.object();
    json.put("limit", verdict.limit().id()).put("verdict", lower(verdict.verdict()));
    Json.measured(json, "allowed", verdict.allowed());
    Double within = verdict.within();
    Double longer = verdict.longer();
    json.put("within", within == null ? null : Json.number(within));
    json.put("longer", longer == null ? null : Json.number(longer));
    json.put("source", verdict.limit().source()).put("clause", verdict.limit().clause());
    return json.put("mark", lower(verdict.limit().mark()));
  }

  private static ObjectNode poured(Poured poured) {
    ObjectNode json = Json.object().put("test", poured.test().label());
    Measured in = poured.in();
    Json.measured(json, "in", in);
    Json.measured(json, "out", poured.out());
    Json.measured(json, "missing", poured.missing());
    return json;
  }

  private static ObjectNode passage(Passage passage) {
    return Json.object()
        .put("test", passage.test().label())
        .put("kind", lower(passage.test().kind()))
        .put("at", passage.test().at())
        .put("where", passage.seen().where())
        .put("arrived", passage.seen().arrived())
        .put("meaning", lower(passage.meaning()));
  }

  private ObjectNode connection(Connection connection) {
    ObjectNode json = Json.object();
    json.put("source", connection.source()).put("kind", lower(connection.kind()));
    json.put("node", connection.node()).put("joins", connection.joins());
    json.put("known", lower(connection.known()));
    texts(json.putArray("by"), connection.by());
    texts(json.putArray("against"), connection.against());
    return json.put("sentence", words.sentence(connection));
  }

  private static void texts(ArrayNode into, List<String> texts) {
    texts.forEach(into::add);
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
