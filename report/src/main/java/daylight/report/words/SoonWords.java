package daylight.report.words;

import daylight.line.measure.Argument;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgency;
import java.util.Optional;

/** Says how soon something is to be done about a finding, in a few words. */
public record SoonWords(Words words) {

  /** How soon; empty where there is nothing to be done. */
  public Optional<String> say(HowSoon how) {
    return switch (how) {
      case HowSoon.Stop stop -> Optional.of(words.word("soon.stop"));
      case HowSoon.Listed listed -> Optional.of(words.word(Urgency.AT_ONCE));
      case HowSoon.Ruled ruled -> Optional.of(ruled(ruled));
      case HowSoon.CannotSay cannot -> Optional.of(words.word("soon.open"));
      case HowSoon.Nothing nothing -> Optional.empty();
    };
  }

  private String ruled(HowSoon.Ruled ruled) {
    Urgency worst = ruled.atWorst();
    Argument word = new Argument.Term(ruled.urgency().key());
    return worst == null
        ? words.figure(word)
        : words.within("soon.maybe", word, new Argument.Term(worst.key()));
  }

  /** By which rule. */
  public String rule(String table) {
    return words.say("report.urgency.note", new Argument.Text(table));
  }
}
