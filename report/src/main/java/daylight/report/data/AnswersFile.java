package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Evidence;
import daylight.line.answer.Opening;
import daylight.line.answer.StopOrder;
import daylight.line.answer.Why;
import daylight.line.book.Finding;
import daylight.line.condition.CodeRow;
import daylight.line.condition.CodeTable;
import daylight.line.condition.Seen;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.dig.Digger;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Complaint;
import daylight.line.measure.Statement;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.words.CodeWords;
import daylight.report.words.ConnectionWords;
import daylight.report.words.EvidenceWords;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;

/** The door for {@code answers.json}: metres, ratios and shares, each sentence in words beside. */
public final class AnswersFile {
  private static final int VERSION = 1;

  private final Subject subject;
  private final Words words;
  private final EvidenceWords evidenceWords;

  private AnswersFile(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.evidenceWords = new EvidenceWords(words, subject::distance);
  }

  /** The answers as UTF-8 text. */
  public static byte[] write(Subject subject) {
    return Json.bytes(new AnswersFile(subject).root());
  }

  private ObjectNode root() {
    Answers answers = subject.answers();
    ObjectNode root = Json.object();
    root.put("schema", "daylight-answers").put("version", VERSION);
    ArrayNode stops = root.putArray("stops");
    answers.stops().forEach(stop -> stops.add(stop(stop)));
    root.put("site", subject.book().site().name());
    root.put("invented", subject.book().site().invented());
    root.put("visit", answers.visit());
    opening(root.putObject("opening"), answers.opening());
    ArrayNode lines = root.putArray("lines");
    answers.lines().forEach(line -> lines.add(line(line)));
    cautions(root.putArray("cautions"), answers.cautions());
    ObjectNode fall = root.putObject("fall");
    ArrayNode stretches = fall.putArray("stretches");
    answers.fall().stretches().forEach(stretch -> stretches.add(stretch(stretch)));
    ArrayNode water = fall.putArray("water");
    answers.fall().water().forEach(seen -> water.add(water(seen)));
    fall.set("ponding", PondingJson.of(answers.fall().ponding()));
    root.set(
        "tests", new TestsJson(new ConnectionWords(words, subject.book())).of(answers.proving()));
    ArrayNode digs = root.putArray("digs");
    answers.digs().forEach(dig -> digs.add(new DigJson(subject).of(dig)));
    new FollowUpJson(subject).all(root.putArray("followUps"));
    ArrayNode why = root.putArray("why");
    Why.all(subject.book(), subject.line(), answers).forEach(one -> why.add(WhyJson.of(one)));
    root.set("grades", new GradeJson(words).scheme(subject.rules().grades()));
    codes(root);
    ArrayNode findings = root.putArray("findings");
    Captions.findings(subject).forEach(placed -> findings.add(finding(placed)));
    ArrayNode services = root.putArray("services");
    Digger.services(subject.book(), subject.line())
        .forEach(
            one -> ServiceJson.fill(services.addObject().put("label", one.mark().label()), one));
    statements(root.putArray("doubts"), subject.line().doubts());
    statements(root.putArray("unchecked"), subject.line().unchecked().stream().toList());
    ArrayNode complaints = root.putArray("complaints");
    subject.complaints().forEach(complaint -> complaints.add(complaint(complaint)));
    return root;
  }

  private void opening(ObjectNode json, Opening opening) {
    json.put("words", opening.words());
    statements(json.putArray("told"), opening.told());
    ArrayNode ranked = json.putArray("ranked");
    for (Opening.Ranked cause : opening.ranked()) {
      ObjectNode one = ranked.addObject();
      one.put("cause", cause.cause()).put("strength", lower(cause.strength()));
      statements(one.putArray("for"), cause.speaksFor());
      statements(one.putArray("against"), cause.speaksAgainst());
      statements(one.putArray("missing"), cause.missing());
    }
    statements(json.putArray("causes"), opening.causes());
    statements(json.putArray("against"), opening.against());
    ArrayNode evidence = json.putArray("evidence");
    opening.evidence().forEach(one -> evidence.add(evidence(one)));
    cautions(json.putArray("cautions"), opening.cautions());
  }

  private ObjectNode stop(StopOrder stop) {
    PlacedFinding placed = stop.finding();
    ObjectNode json = Json.object();
    json.put("finding", placed.finding().label()).put("kind", placed.finding().kind());
    Json.place(json, "at", placed.from());
    return json.put("sentence", words.finding(placed)).put("order", words.word("report.stop.do"));
  }

  private void codes(ObjectNode root) {
    CodeTable codes = subject.codes();
    if (!codes.isEmpty()) {
      root.putObject("codes")
          .put("title", codes.title())
          .put("checked", codes.checked())
          .put("sentence", new CodeWords(words, codes).whose());
    }
  }

  private void code(ObjectNode json, Finding finding) {
    CodeTable codes = subject.codes();
    if (!codes.isEmpty()) {
      String code = codes.find(Seen.of(finding, null)).map(CodeRow::code).orElse(null);
      json.put("code", code);
    }
  }

  /** Where something is, and which way the pipe runs there, clockwise from grid north. */
  private ObjectNode finding(PlacedFinding placed) {
    ObjectNode json = Json.object();
    json.put("finding", placed.finding().label()).put("kind", placed.finding().kind());
    code(json, placed.finding());
    Json.place(json, "from", placed.from());
    Json.place(json, "to", placed.to());
    json.put("distanceSd", Json.number(placed.sd()));
    subject
        .line()
        .findRun(placed.from().reach())
        .ifPresent(
            run -> {
              if (run.path() instanceof Run.Path.Found found) {
                Station at = found.nearest(placed.from().distance());
                Json.bearing(json, "heading", at.bearing(), at.bearingSd());
                Json.measured(json, "depth", at.depth());
              }
            });
    json.set("grade", new GradeJson(words).of(subject.rules().grade(placed, subject.line())));
    json.set(
        "howSoon",
        new SoonJson(words, subject.rules().urgency())
            .of(subject.rules().howSoon(placed, subject.book(), subject.line())));
    return json.put("sentence", words.finding(placed));
  }

  private ObjectNode line(Answers.LineAnswers line) {
    ObjectNode json = Json.object().put("line", line.line());
    ArrayNode answers = json.putArray("answers");
    line.answers().forEach(answer -> answers.add(answer(answer)));
    return json;
  }

  private ObjectNode answer(Answer answer) {
    ObjectNode json = Json.object();
    json.put("question", lower(answer.question()));
    json.put("state", lower(answer.state()));
    json.put("sureness", lower(answer.sure()));
    json.set("headline", statement(answer.headline()));
    statements(json.putArray("reasons"), answer.reasons());
    statements(json.putArray("missing"), answer.missing());
    ArrayNode evidence = json.putArray("evidence");
    answer.evidence().forEach(one -> evidence.add(evidence(one)));
    ArrayNode shares = json.putArray("contributions");
    answer.contributions().forEach(share -> shares.add(WhyJson.share(share)));
    cautions(json.putArray("cautions"), answer.cautions());
    return json;
  }

  private void statements(ArrayNode into, List<Statement> statements) {
    statements.forEach(one -> into.add(statement(one)));
  }

  private ObjectNode statement(Statement statement) {
    ObjectNode json = Json.object();
    json.put("key", statement.key().key()).put("sentence", words.say(statement));
    ArrayNode figures = json.putArray("figures");
    statement.arguments().forEach(argument -> figures.add(ArgumentJson.of(argument)));
    return json;
  }

  private void cautions(ArrayNode into, List<Caution> cautions) {
    for (Caution caution : cautions) {
      into.addObject().put("caution", lower(caution)).put("sentence", words.word(caution));
    }
  }

  private ObjectNode evidence(Evidence evidence) {
    ObjectNode json = Json.object();
    switch (evidence) {
      case Evidence.Figure figure -> {
        json.put("kind", "figure").put("what", figure.what().key());
        json.set("figure", ArgumentJson.of(figure.figure()));
        Json.place(json, "at", figure.at());
      }
      case Evidence.Seen seen -> {
        json.put("kind", "seen").put("finding", seen.finding()).put("findingKind", seen.kind());
        Json.place(json, "at", seen.at());
        json.set("size", seen.size() == null ? null : ArgumentJson.of(seen.size()));
      }
      case Evidence.Noted noted -> {
        json.put("kind", "noted").put("entry", noted.entry().label());
        json.put("id", noted.entry().uuid().toString());
        json.set("what", ArgumentJson.of(noted.what()));
      }
      case Evidence.Rule rule -> {
        json.put("kind", "rule").put("rules", rule.rules()).put("clause", rule.clause());
        json.set("limit", ArgumentJson.of(rule.limit()));
        json.put("source", rule.source());
      }
    }
    return json.put("sentence", evidenceWords.say(evidence));
  }

  private static ObjectNode stretch(FallStretch stretch) {
    ObjectNode json = Json.object();
    Json.place(json, "from", stretch.from());
    Json.place(json, "to", stretch.to());
    json.put("whole", stretch.whole());
    Json.measured(json, "drop", stretch.drop());
    Json.measured(json, "slope", stretch.slope());
    FallLimit limit = stretch.limit();
    if (limit == null) {
      json.putNull("limit");
    } else {
      json.putObject("limit")
          .put("rules", limit.rules())
          .put("clause", limit.clause())
          .put("slope", Json.number(limit.slope()))
          .put("source", limit.source())
          .put("mark", lower(limit.mark()));
    }
    Double below = stretch.belowLimit();
    json.put("belowLimit", below == null ? null : Json.number(below));
    return json.put("adverse", Json.number(stretch.adverse()));
  }

  private static ObjectNode water(WaterSeen seen) {
    ObjectNode json = Json.object().put("finding", seen.finding());
    Json.place(json, "from", seen.from());
    Json.place(json, "to", seen.to());
    Json.measured(json, "depth", seen.depth());
    json.put("share", seen.share() == null ? null : Json.number(seen.share()));
    json.put("still", seen.still());
    ObjectNode held = json.putObject("held");
    seen.held()
        .shares()
        .forEach(share -> held.put(lower(share.cause()), Json.number(share.probability())));
    Double byGrade = seen.held().byGrade();
    json.put("byGrade", byGrade == null ? null : Json.number(byGrade));
    ArrayNode signs = json.putArray("signs");
    seen.held().signs().forEach(sign -> signs.add(lower(sign)));
    ArrayNode tests = json.putArray("tests");
    seen.held().tests().forEach(test -> tests.add(lower(test)));
    return json;
  }

  private ObjectNode complaint(Complaint complaint) {
    ObjectNode json = Json.object();
    json.put("code", complaint.code().key());
    json.put("gravity", lower(complaint.code().gravity()));
    json.put("file", complaint.place().file());
    json.put("line", complaint.place().line()).put("column", complaint.place().column());
    json.put("path", complaint.place().path());
    return json.put("sentence", words.complaint(complaint));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
