package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.archive.store.Entering;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is wrong with a form: all of it at once, each beside its line and once more above. */
final class Trouble {
  private final Map<String, String> byLine = new LinkedHashMap<>();
  private final List<String> general = new ArrayList<>();
  private final Map<String, String> typed = new HashMap<>();
  private boolean clash;

  void at(String line, String why) {
    byLine.putIfAbsent(line, why);
  }

  /** What the reader of files says of a line; it may say more than one thing. */
  void moreAt(String line, String why) {
    byLine.merge(line, why, (one, more) -> one + " " + more);
  }

  /** What the archive would not keep; it belongs to no line. */
  void addAll(List<Entering> outcomes, Look look) {
    for (Entering outcome : outcomes) {
      switch (outcome) {
        case Entering.Kept kept -> {}
        case Entering.Same same -> {}
        case Entering.Clash other -> clash = true;
        case Entering.Wrong(var complaints) -> general.addAll(Office.said(complaints, look));
        case Entering.NotWritten(var why) ->
            general.add(Words.of(look.language(), look.shown()).say(why));
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
    return byLine.isEmpty() && general.isEmpty() && !clash;
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
        (line, why) -> items.add(Tag.of("li").add(Tag.of("a", why).with("href", "#" + line))));
    general.forEach(why -> items.add(Tag.of("li", why)));
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
