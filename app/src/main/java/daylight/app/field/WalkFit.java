package daylight.app.field;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.Job;
import daylight.app.RuleChoice;
import daylight.app.web.Look;
import daylight.archive.Sha256;
import daylight.line.answer.Answers;
import daylight.line.answer.Asks;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.report.Handout;
import daylight.report.words.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the whole book says of the spots of a walk: where each lies, how it fits, which readings
 * cannot be, and what to measure next. Computed by the main job, never by the page.
 */
final class WalkFit {
  /** So many answers are remembered, for pages that ask again before anything was written. */
  private static final int REMEMBERED = 16;

  /** What an answer is of: the book as it is written, for whom it is told. */
  private record Of(Sha256 written, String visit, Look look) {}

  private final Office office;
  private final Map<Of, ObjectNode> remembered =
      new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Of, ObjectNode> eldest) {
          return size() > REMEMBERED;
        }
      };

  WalkFit(Office office) {
    this.office = office;
  }

  /** The answer, one at a time: two phones that ask at once wait for the same computation. */
  synchronized ObjectNode told(Caller caller, BookNow book, BookNow.Row visit) {
    Optional<String> written = office.archive().written(book.book());
    if (written.isEmpty()) {
      return EntryJson.object().put("state", "refused");
    }
    Of of = new Of(Sha256.of(written.get()), visit.entry().toString(), caller.look());
    ObjectNode known = remembered.get(of);
    if (known == null) {
      known = computed(caller, book, visit);
      remembered.put(of, known);
    }
    return known;
  }

  private ObjectNode computed(Caller caller, BookNow book, BookNow.Row visit) {
    Shown shown = caller.look().shown();
    Job.Settings settings =
        new Job.Settings(null, shown, null, RuleChoice.USUAL, visit.text("label").orElse(null));
    return switch (Job.answerWithoutFootage(office.archive(), book.book(), settings)) {
      case Job.Outcome.Refused refused -> {
        ObjectNode out = EntryJson.object().put("state", "refused");
        ArrayNode said = out.putArray("complaints");
        Office.said(refused.complaints(), caller.look()).forEach(said::add);
        yield out;
      }
      case Job.Outcome.Answered answered -> fitted(caller, answered.handout(), visit);
    };
  }

  private static ObjectNode fitted(Caller caller, Handout handout, BookNow.Row visit) {
    Words words = Words.of(caller.look().language(), caller.look().shown());
    ObjectNode out = EntryJson.object().put("state", "fitted");
    ArrayNode doubts = out.putArray("doubts");
    for (Statement doubt : handout.line().doubts()) {
      ObjectNode one = doubts.addObject().put("says", words.say(doubt));
      ArrayNode about = one.putArray("about");
      labels(doubt.arguments()).forEach(about::add);
    }
    handout.line().unchecked().ifPresent(says -> out.put("unchecked", words.say(says)));
    asks(out.putArray("next"), handout, words);
    new WalkSpots(caller, handout, visit.entry()).tell(out);
    return out;
  }

  /** The entries that a sentence names. */
  private static List<String> labels(List<Argument> arguments) {
    return arguments.stream()
        .flatMap(
            one ->
                switch (one) {
                  case Argument.Label(String label) -> List.of(label).stream();
                  case Argument.Several several -> labels(several.items()).stream();
                  case Argument.Said(Statement within) -> labels(within.arguments()).stream();
                  case Argument.Either either -> labels(either.items()).stream();
                  default -> List.<String>of().stream();
                })
        .distinct()
        .toList();
  }

  private static void asks(ArrayNode next, Handout handout, Words words) {
    for (Answers.LineAnswers line : handout.answers().lines()) {
      Asks asks = Asks.of(handout.book(), handout.line(), handout.answers(), line);
      for (Asks.Ask ask : asks.now()) {
        Argument minutes = new Argument.Quantity(Dimension.DURATION, 60 * ask.minutes());
        next.addObject()
            .put("says", words.say(ask.what()))
            .put("takes", words.figure(minutes))
            .put("why", words.word(ask.question()));
      }
    }
  }
}
