package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.answer.FollowUp;
import daylight.line.answer.FollowUps;
import daylight.line.urgency.TimeLimits;
import daylight.report.draw.Subject;
import daylight.report.words.FollowUpWords;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What there is to come back to, with its day or why there is none. */
final class FollowUpJson {
  private final Subject subject;
  private final FollowUpWords told;

  FollowUpJson(Subject subject) {
    this.subject = subject;
    this.told = new FollowUpWords(subject.words(), subject.book(), subject.line(), subject.rules());
  }

  void all(ArrayNode into) {
    List<FollowUp> all =
        FollowUps.of(subject.book(), subject.line(), subject.rules(), subject.answers());
    for (FollowUp one : all) {
      one(into.addObject(), one);
    }
  }

  private void one(ObjectNode json, FollowUp one) {
    json.put("id", one.id().toString()).put("line", one.line()).put("stopped", one.stopped());
    switch (one.what()) {
      case FollowUp.What.Stop stop ->
          json.put("what", "stop").put("finding", stop.finding().finding().label());
      case FollowUp.What.Work work -> {
        json.put("what", "work").put("finding", work.finding().finding().label());
        json.put("atWorst", work.atWorst() == null ? null : work.atWorst().toString());
      }
      case FollowUp.What.Look look -> look(json.put("what", "look"), look);
      case FollowUp.What.Ticket(var ticket) ->
          json.put("what", "ticket").put("ticket", ticket.number());
      case FollowUp.What.Consent(var consent) ->
          json.put("what", "consent").put("who", consent.who());
    }
    due(json, one.due());
    json.put("sentence", told.summary(one));
  }

  private static void look(ObjectNode json, FollowUp.What.Look look) {
    ArrayNode reasons = json.putArray("reasons");
    for (FollowUp.Reason reason : look.reasons()) {
      due(reasons.addObject().put("why", reason.why().key()), reason.due());
    }
    ArrayNode watched = json.putArray("watched");
    look.watched().forEach(one -> watched.add(one.finding().finding().label()));
  }

  private static void due(ObjectNode json, FollowUp.Due due) {
    switch (due) {
      case FollowUp.Due.On(var day, var limit) -> {
        json.put("day", day.toString());
        limit(json, limit);
      }
      case FollowUp.Due.Open(var why) ->
          json.putNull("day").put("open", why.name().toLowerCase(Locale.ROOT));
    }
  }

  private static void limit(ObjectNode json, TimeLimits.@Nullable Limit limit) {
    if (limit != null) {
      json.put("after", limit.time().toString()).put("source", limit.source());
      json.put("mark", limit.mark().name().toLowerCase(Locale.ROOT));
    }
  }
}
