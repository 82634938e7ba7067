package daylight.app.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Statement;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A book whose footage is being looked at: what is being done, how far it is, and a way to stop.
 */
final class UnderwayPage {
  private static final JsonMapper MAPPER = new JsonMapper();
  private static final int WHOLE = 100;

  private final Frame frame;
  private final Property property;

  UnderwayPage(int properties, Property property, Wish wish) {
    this.frame =
        new Frame(wish.words(property.settings()), properties).under(property.home()).as(wish);
    this.property = property;
  }

  String write() {
    Words words = frame.words();
    Tag header =
        Tag.of("header").add(Tag.of("h1", property.title())).addAll(Pieces.place(property));
    Tag section =
        Pieces.section("reading", words.word("web.reading"))
            .addAll(told(property, words))
            .add(Tag.of("p", words.word("web.reading.why")))
            .add(order(property, "stop", words.word("web.reading.stop")));
    return frame.write(property.title(), List.of(header, section));
  }

  /** What is being done and how far it is, as of now; the page asks on. */
  static List<Tag> told(Property property, Words words) {
    Answering.Doing doing = property.doing();
    return List.of(
        Tag.of("p", doing == null ? words.word("web.reading.index") : says(doing, words))
            .with("class", "doing")
            .with("role", "status")
            .with("data-reading", property.address("progress")),
        Tag.of("p")
            .with("class", "share")
            .add(
                Tag.of("progress")
                    .with("max", Integer.toString(WHOLE))
                    .with("value", Integer.toString(percent(doing)))
                    .with("aria-label", words.word("web.reading")))
            .add(Tag.of("span", share(doing, words))));
  }

  /** That a book was answered without counters, and a way to have them read. */
  static List<Tag> cut(Property property, Words words) {
    return List.of(
        Tag.of("p", words.word("web.reading.cut")).with("class", "missing"),
        order(property, "read", words.word("web.reading.again")));
  }

  /** Shown by the module that can carry it out. */
  private static Tag order(Property property, String what, String says) {
    return Tag.of("p")
        .add(
            Tag.of("button", says)
                .with("type", "button")
                .with("class", "button")
                .with("data-order", property.address(what))
                .with("hidden", ""));
  }

  /** The same for the module; nothing where nothing is being done. */
  static String json(Answering.@Nullable Doing doing, Words words) {
    ObjectNode reply = MAPPER.createObjectNode();
    return doing == null
        ? reply.toString()
        : reply
            .put("says", says(doing, words))
            .put("percent", percent(doing))
            .put("share", share(doing, words))
            .toString();
  }

  private static String says(Answering.Doing doing, Words words) {
    return doing.waits()
        ? words.word("web.reading.waits")
        : Words.capitalised(words.say(Statement.of(doing.step(), new Argument.Text(doing.what()))));
  }

  private static int percent(Answering.@Nullable Doing doing) {
    return doing == null ? 0 : (int) (WHOLE * Math.clamp(doing.share(), 0.0, 1.0));
  }

  private static String share(Answering.@Nullable Doing doing, Words words) {
    return words.say(
        "web.reading.share",
        new Argument.Quantity(Dimension.SHARE, percent(doing) / (double) WHOLE));
  }
}
