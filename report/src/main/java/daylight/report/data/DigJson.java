package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.answer.DigPlace;
import daylight.line.dig.Dig;
import daylight.line.dig.DigBox;
import daylight.line.dig.DigTarget;
import daylight.line.measure.Argument;
import daylight.line.survey.PlanPoint;
import daylight.report.draw.Subject;
import daylight.report.words.DigWords;
import java.util.List;
import java.util.Locale;

/** A place to dig: its rows as the cards say them, its shape in metres on the site grid. */
record DigJson(Subject subject) {
  ObjectNode of(DigPlace dig) {
    ObjectNode json = Json.object();
    json.put("line", dig.line()).put("finding", dig.finding().finding().label());
    json.put("cleaned", dig.cleaned());
    Json.place(json, "at", dig.finding().from());
    switch (dig.dig()) {
      case DigTarget target -> target(json, target);
      case Dig.Unknown(var missing) -> {
        rows(json, List.of(DigWords.of(dig.ticket())));
        json.put("missing", subject.words().say(missing));
      }
    }
    return json;
  }

  private void target(ObjectNode json, DigTarget target) {
    point(json.putArray("spot"), target.spot());
    Json.measured(json, "crown", target.crown());
    Json.measured(json, "invert", target.invert());
    DigBox box = target.box();
    ObjectNode shape = json.putObject("box");
    shape
        .put("along", Json.number(box.along()))
        .put("across", Json.number(box.across()))
        .put("heading", Json.number(Json.turned(box.bearing())));
    ArrayNode corners = shape.putArray("corners");
    box.corners().forEach(corner -> point(corners.addArray(), corner));
    json.put("quality", target.quality().name());
    rows(
        json,
        DigWords.of(
            target,
            subject.line(),
            subject.book().site(),
            subject.answers().stops(),
            subject.rules().limits().dig()));
  }

  private void rows(ObjectNode json, List<DigWords.Row> rows) {
    ArrayNode told = json.putArray("rows");
    for (DigWords.Row row : rows) {
      ObjectNode one = told.addObject();
      one.put("about", row.about().name().toLowerCase(Locale.ROOT));
      one.put("key", row.key());
      ArrayNode figures = one.putArray("figures");
      row.arguments().forEach(argument -> figures.add(ArgumentJson.of(argument)));
      one.put("doubt", row.doubt());
      one.put("sentence", subject.words().say(row.key(), row.arguments().toArray(Argument[]::new)));
    }
  }

  private static void point(ArrayNode into, PlanPoint point) {
    into.add(Json.number(point.x())).add(Json.number(point.y()));
  }
}
