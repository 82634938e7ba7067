package daylight.app.cli;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Asks;
import daylight.line.answer.NextBest;
import daylight.line.measure.Complaint;
import daylight.report.Handout;
import daylight.report.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What the commands say to another program: one JSON object, {@code daylight-reply} 1. */
final class JsonReply {
  private static final JsonMapper MAPPER = new JsonMapper();

  private JsonReply() {}

  static String refused(List<Complaint> complaints, Words words) {
    ObjectNode reply = reply("refused");
    complaints(reply, complaints, words);
    return reply.toPrettyString();
  }

  static ObjectNode answered(Handout handout, Path folder, List<String> files) {
    Words words = Words.of(handout.language(), handout.shown());
    ObjectNode reply = reply("answered");
    stops(reply, handout, words);
    reply.put("folder", folder.toString());
    ArrayNode names = reply.putArray("files");
    files.forEach(names::add);
    answers(reply, handout, words, false);
    complaints(reply, handout.complaints(), words);
    return reply;
  }

  static String leaving(Handout handout) {
    Words words = Words.of(handout.language(), handout.shown());
    ObjectNode reply = reply("leaving");
    stops(reply, handout, words);
    ArrayNode doubts = reply.putArray("contradictions");
    handout.line().doubts().forEach(doubt -> doubts.add(words.say(doubt)));
    handout.line().unchecked().ifPresent(said -> reply.put("unchecked", words.say(said)));
    answers(reply, handout, words, true);
    ArrayNode asks = reply.putArray("asks");
    for (Answers.LineAnswers line : handout.answers().lines()) {
      Asks wanted = Asks.of(handout.book(), handout.line(), handout.answers(), line);
      for (Asks.Ask ask : wanted.now()) {
        ObjectNode one = asks.addObject();
        NextBest.Option gain = ask.gain();
        if (gain != null) {
          one.putObject("gain")
              .put("kind", lower(gain.kind()))
              .put("reach", gain.extra().place().reach())
              .put("distance", gain.extra().place().distance())
              .put("sdNow", gain.now().sd())
              .put("sdThen", gain.then())
              .put("sharePerMinute", gain.gainPerMinute());
        }
        one.put("line", line.line())
            .put("question", words.word(ask.question()))
            .put("what", words.say(ask.what()))
            .put("minutes", ask.minutes());
      }
    }
    complaints(reply, handout.complaints(), words);
    return reply.toPrettyString();
  }

  static String ties(TiesReport report, List<Complaint> complaints, Words words) {
    ObjectNode reply = reply("figured");
    report.json(reply, words);
    complaints(reply, complaints, words);
    return reply.toPrettyString();
  }

  /** What every reply begins with. */
  static ObjectNode reply(String outcome) {
    ObjectNode reply = MAPPER.createObjectNode();
    return reply.put("schema", "daylight-reply").put("version", 1).put("outcome", outcome);
  }

  private static void stops(ObjectNode reply, Handout handout, Words words) {
    ArrayNode stops = reply.putArray("stops");
    handout.answers().stops().forEach(stop -> stops.add(words.finding(stop.finding())));
  }

  private static void answers(ObjectNode reply, Handout handout, Words words, boolean missing) {
    ArrayNode lines = reply.putArray("lines");
    for (Answers.LineAnswers line : handout.answers().lines()) {
      ObjectNode one = lines.addObject().put("line", line.line());
      ArrayNode answers = one.putArray("answers");
      for (Answer answer : line.answers()) {
        ObjectNode entry =
            answers
                .addObject()
                .put("question", lower(answer.question()))
                .put("state", lower(answer.state()))
                .put("sure", lower(answer.sure()))
                .put("sentence", words.say(answer.headline()));
        if (missing) {
          ArrayNode asks = entry.putArray("missing");
          answer.missing().forEach(ask -> asks.add(words.say(ask)));
        }
      }
    }
  }

  private static void complaints(ObjectNode reply, List<Complaint> complaints, Words words) {
    ArrayNode list = reply.putArray("complaints");
    for (Complaint complaint : complaints) {
      list.addObject()
          .put("code", complaint.code().key())
          .put("gravity", lower(complaint.code().gravity()))
          .put("file", complaint.place().file())
          .put("line", complaint.place().line())
          .put("column", complaint.place().column())
          .put("path", complaint.place().path())
          .put("sentence", words.complaint(complaint));
    }
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
