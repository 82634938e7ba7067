package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Entering;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is wrong with a form: all of it at once, each beside its line and once more above. */
final class Trouble {
  private final Map<String, String> byLine = new LinkedHashMap<>();
  private final Set<String> english = new HashSet<>();
  private final List<String> foreign = new ArrayList<>();
  private final Map<String, String> typed = new HashMap<>();
  private boolean clash;

  void at(String line, String why) {
    byLine.putIfAbsent(line, why);
  }

  /** What the reader of files says of a line, in its English. */
  void foreignAt(String line, String why) {
    byLine.merge(line, why, (one, more) -> one + " " + more);
    english.add(line);
  }

  /** Whether what is wrong with a line is said in English whatever the language of the page. */
  boolean isEnglish(String line) {
    return english.contains(line);
  }

  /** What belongs to no line, in the reader's English. */
  void foreign(List<String> why) {
    foreign.addAll(why);
  }

  /** What the archive would not keep, in the reader's English. */
  void addAll(List<Entering> outcomes, Shown shown) {
    for (Entering outcome : outcomes) {
      switch (outcome) {
        case Entering.Kept kept -> {}
        case Entering.Same same -> {}
        case Entering.Clash other -> clash = true;
        case Entering.Wrong(var complaints) -> foreign.addAll(Office.said(complaints, shown));
        case Entering.NotWritten(var why) -> foreign.add(Words.of(Language.EN, shown).say(why));
      }
    }
  }

  /** Remembers what was typed, so that nobody types it again. */
  void typed(ObjectNode keys) {
    keys.properties().forEach(one -> typed.put(one.getKey(), one.getValue().asText()));
  }

  @Nullable String typed(String line) {
    return typed.get(line);
  }

  boolean isEmpty() {
    return byLine.isEmpty() && foreign.isEmpty() && !clash;
  }

  @Nullable String of(String line) {
    return byLine.get(line);
  }

  /** All of it, to stand above the form; empty where nothing is wrong. */
  Optional<Tag> told(Phrases phrases) {
    if (isEmpty()) {
      return Optional.empty();
    }
    List<Tag> items = new ArrayList<>();
    byLine.forEach(
        (line, why) -> {
          Tag link = Tag.of("a", why).with("href", "#" + line);
          items.add(Tag.of("li").add(isEnglish(line) ? link.with("lang", "en") : link));
        });
    foreign.forEach(why -> items.add(Tag.of("li", why).with("lang", "en")));
    if (clash) {
      items.add(Tag.of("li", phrases.say("form.clash")));
    }
    return Optional.of(
        Tag.of("div")
            .with("class", "trouble")
            .with("role", "alert")
            .add(Tag.of("h2", phrases.say("form.trouble")))
            .add(Parts.list("plain", items)));
  }

  static boolean isDay(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
