package daylight.app.field;

import daylight.report.markup.Tag;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The page that asks who writes. Where it comes between a form and what was typed into it, all of
 * that goes along unseen and is kept with the name.
 */
final class WhoForm {
  static final String PERSON = "person";
  static final String DEVICE = "device";

  private static final Set<String> OWN = Set.of(PERSON, DEVICE, Gate.FIELD);

  private WhoForm() {}

  /**
   * The page.
   *
   * @param action where the name goes
   * @param along what goes with it unseen
   * @param wrong why the name was not taken; null where none was given yet
   */
  static Sheet sheet(Caller caller, String action, List<Tag> along, @Nullable String wrong) {
    Phrases phrases = caller.phrases();
    String title = phrases.say("who");
    Tag form =
        Forms.form(caller, action)
            .addAll(along)
            .add(
                Forms.line(
                        PERSON,
                        phrases.say("who.person"),
                        "text",
                        Objects.requireNonNullElse(caller.person(), ""),
                        phrases.say("who.person.hint"),
                        wrong)
                    .with("data-first", ""))
            .add(
                Forms.line(
                    DEVICE,
                    phrases.say("who.device"),
                    "text",
                    caller.device(),
                    phrases.say("who.device.hint"),
                    null))
            .add(Forms.submit(phrases.say("who.keep")));
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(title));
    contents.add(Parts.paragraph("lead", phrases.say("who.why")));
    contents.add(form);
    return Sheet.of(title, contents);
  }

  /** What a form sent, to be sent once more with a name. */
  static List<Tag> typed(Context request) {
    List<Tag> along = new ArrayList<>();
    request.formParamMap().entrySet().stream()
        .filter(one -> !OWN.contains(one.getKey()))
        .forEach(
            one -> one.getValue().forEach(text -> along.add(Forms.hidden(one.getKey(), text))));
    return along;
  }
}
