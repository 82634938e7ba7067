package daylight.report.view;

import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The line as a table, for those who do not see the drawings: a row every so far, and wherever
 * there is something, in the order in which the water runs.
 */
public final class AlongTable {
  /** A row at least so often: three feet, or a metre. */
  private static final double YARD = 0.9144;

  private static final double METRE = 1;

  private final Views views;
  private final Words words;

  private AlongTable(Views views) {
    this.views = views;
    this.words = views.subject().words();
  }

  /** A table for each route of the site. */
  public static List<Tag> of(Views views) {
    AlongTable along = new AlongTable(views);
    return views.stretches().stream().map(along::table).toList();
  }

  private Tag table(Views.Stretch stretch) {
    Tag head = Tag.of("tr");
    for (String column : List.of("where", "depth", "within", "sight", "there")) {
      head.add(Tag.of("th", words.word("web.line." + column)).with("scope", "col"));
    }
    Tag body = Tag.of("tbody");
    double every = words.shown() == Shown.METRES ? METRE : YARD;
    double next = 0;
    String reach = "";
    for (int i = stretch.from(); i <= stretch.to(); i++) {
      Sample sample = views.samples().get(i);
      if (!sample.place().reach().equals(reach)) {
        reach = sample.place().reach();
        next = 0;
      }
      List<Thing> here = here(i);
      if (!here.isEmpty() || sample.place().distance() >= next || i == stretch.to()) {
        body.add(row(i, here));
        next = sample.place().distance() + every;
      }
    }
    return Tag.of("table")
        .with("class", "along")
        .add(
            Tag.of(
                "caption",
                words.say(
                    "web.line.caption",
                    new Argument.Label(stretch.route().from()),
                    new Argument.Label(stretch.route().to()))),
            Tag.of("thead").add(head),
            body);
  }

  private List<Thing> here(int sample) {
    return views.things().stream()
        .filter(thing -> thing.from() == sample || thing.to() == sample)
        .toList();
  }

  private Tag row(int number, List<Thing> here) {
    Sample sample = views.samples().get(number);
    Tag link =
        Tag.of("a", sample.where())
            .with("class", "to-place")
            .with("href", "#line")
            .with("data-place", sample.place().reach())
            .with("data-distance", sample.place().distance());
    List<String> there = new ArrayList<>();
    for (Thing thing : here) {
      boolean ends = thing.from() != thing.to() && thing.to() == number;
      there.add(ends ? words.say("web.line.ends", new Argument.Text(thing.says())) : thing.says());
    }
    return Tag.of("tr")
        .add(
            Tag.of("th").with("scope", "row").add(link),
            Tag.of("td", sample.depth().orElse("–")),
            Tag.of("td", sample.within().orElse("–")),
            Tag.of(
                "td",
                words.word("draw.strip.seen." + sample.seen().name().toLowerCase(Locale.ROOT))),
            Tag.of("td", there.isEmpty() ? "–" : words.beside(there)));
  }
}
