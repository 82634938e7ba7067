package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.answer.NextBest;
import daylight.line.answer.Why;
import daylight.line.book.Place;
import daylight.line.course.Contribution;
import daylight.line.course.Source;
import daylight.line.course.Wanted;
import daylight.line.fall.FallStretch;
import java.util.Locale;

/** What a figure comes from, by identity and not by label, and what would make it surer. */
final class WhyJson {
  private WhyJson() {}

  static ObjectNode of(Why why) {
    ObjectNode json = Json.object();
    of(json.putObject("of"), why.of());
    figure(json.putObject("figure"), why.figure());
    Json.measured(json, "now", why.now());
    ArrayNode shares = json.putArray("contributions");
    why.rests().forEach(share -> shares.add(share(share)));
    NextBest.Option best = why.best();
    if (best == null) {
      return json.putNull("next");
    }
    ObjectNode next = json.putObject("next");
    next.put("kind", lower(best.kind()));
    Json.place(next, "at", best.extra().place());
    next.put("then", Json.number(best.then())).put("minutes", Json.number(best.kind().minutes()));
    return json;
  }

  /**
   * A share of the variance: {@code source} is a label or the id of a prior for people, {@code id}
   * leads to the entry.
   */
  static ObjectNode share(Contribution share) {
    ObjectNode json = Json.object();
    switch (share.source()) {
      case Source.OfEntry entry -> {
        json.put("source", entry.id().label()).put("assumed", false);
        json.put("id", entry.id().uuid().toString());
        json.put("kind", word(entry.sort())).put("part", word(entry.part()));
      }
      case Source.OfPrior prior -> {
        json.put("source", prior.kind().id()).put("assumed", true);
        json.putNull("id").put("kind", "prior").putNull("part");
      }
    }
    return json.put("share", Json.number(share.share()));
  }

  private static void of(ObjectNode json, Why.Of of) {
    switch (of) {
      case Why.Of.OfAnswer one ->
          json.put("kind", "answer").put("line", one.line()).put("question", lower(one.question()));
      case Why.Of.OfDig one -> json.put("kind", "dig").put("finding", one.finding());
      case Why.Of.OfLocate one ->
          json.put("kind", "locate")
              .put("entry", one.entry().label())
              .put("id", one.entry().uuid().toString());
      case Why.Of.OfNode one ->
          json.put("kind", "node")
              .put("entry", one.node().label())
              .put("id", one.node().id().uuid().toString());
      case Why.Of.OfStretch(FallStretch stretch) -> {
        json.put("kind", "stretch");
        Json.place(json, "from", stretch.from());
        Json.place(json, "to", stretch.to());
      }
      case Why.Of.OfReach one ->
          json.put("kind", "reach")
              .put("entry", one.reach().label())
              .put("id", one.reach().uuid().toString());
    }
  }

  private static void figure(ObjectNode json, Wanted figure) {
    switch (figure) {
      case Wanted.Across(Place at) -> at(json, "across", at);
      case Wanted.Widest(Place at) -> at(json, "widest", at);
      case Wanted.Depth(Place at) -> at(json, "depth", at);
      case Wanted.Fall(Place from, Place to) -> {
        json.put("kind", "fall");
        Json.place(json, "from", from);
        Json.place(json, "to", to);
      }
      case Wanted.Length(String reach) -> json.put("kind", "length").put("reach", reach);
    }
  }

  private static void at(ObjectNode json, String kind, Place at) {
    json.put("kind", kind);
    Json.place(json, "at", at);
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static String word(Enum<?> value) {
    return lower(value).replace('_', '-');
  }
}
