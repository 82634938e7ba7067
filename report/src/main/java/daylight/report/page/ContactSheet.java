package daylight.report.page;

import daylight.line.measure.Argument;
import daylight.report.draw.Ink;
import daylight.report.draw.Typeface;
import daylight.report.markup.Tag;
import daylight.report.shots.Picture;
import daylight.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Small pictures along the line on one page that brings its typeface along: for the screen, and for
 * paper by the browser. Each stands over its distance; what was found is marked by its label.
 */
public final class ContactSheet {
  private static final String STYLE =
      """
      body{font:15px/1.35 %s;color:%s;background:%s;margin:24px auto;max-width:1100px;padding:0 16px}
      h1{font-size:22px;margin:0 0 4px}
      p{margin:0 0 16px;color:%s}
      ol{list-style:none;margin:0;padding:0;display:grid;gap:14px 12px;
        grid-template-columns:repeat(auto-fill,minmax(190px,1fr))}
      figure{margin:0;break-inside:avoid}
      img,.none{display:block;width:100%%;height:auto;border:1px solid %s;box-sizing:border-box}
      .none{aspect-ratio:4/3;display:flex;align-items:center;justify-content:center;
        color:%s;text-align:center;padding:8px}
      .found img{border:3px solid %s}
      figcaption{font-variant-numeric:tabular-nums;margin-top:3px}
      figcaption b{display:block}
      figcaption span{color:%s;margin-left:6px;white-space:nowrap}
      .found span{margin-left:0}
      @page{margin:12mm}
      @media print{body{margin:0;padding:0;max-width:none;font-size:9pt}
        ol{grid-template-columns:repeat(4,1fr);gap:8px}}
      """
          .formatted(
              Typeface.FAMILY,
              Ink.DARK,
              Ink.PAPER,
              Ink.SOFT,
              Ink.FAINT,
              Ink.SOFT,
              Ink.DRAIN,
              Ink.SOFT);

  private ContactSheet() {}

  /**
   * One place along the line.
   *
   * @param place its distance in words
   * @param seconds from the first frame; null where there is no picture
   * @param found what was found there, in words; null for a place by distance alone
   * @param picture null where the recording shows none
   */
  public record Place(
      String place, @Nullable Double seconds, @Nullable String found, @Nullable Picture picture) {}

  /**
   * The page.
   *
   * @param title the recording by name
   * @param about what is to be known of it
   */
  public static String page(String title, String about, List<Place> places, Words words) {
    Tag list = Tag.of("ol");
    places.forEach(place -> list.add(Tag.of("li").add(figure(place, words))));
    Tag head =
        Tag.of("head")
            .add(Tag.of("meta").with("charset", "utf-8"))
            .add(
                Tag.of("meta")
                    .with("name", "viewport")
                    .with("content", "width=device-width, initial-scale=1"))
            .add(Tag.of("title", title))
            .add(Tag.of("style", Typeface.rules() + STYLE));
    Tag body =
        Tag.of("body")
            .add(Tag.of("main").add(Tag.of("h1", title)).add(Tag.of("p", about)).add(list));
    return "<!DOCTYPE html>\n"
        + Tag.of("html").with("lang", words.language().code()).add(head).add(body).write()
        + "\n";
  }

  private static Tag figure(Place place, Words words) {
    Tag figure = Tag.of("figure");
    String found = place.found();
    Tag caption = Tag.of("figcaption");
    if (found != null) {
      figure.with("class", "found");
      caption.add(Tag.of("b", found));
    } else {
      caption.text(place.place());
    }
    Double seconds = place.seconds();
    if (seconds != null) {
      caption.text(" ").add(Tag.of("span", Html.time(seconds)));
    }
    return figure.add(picture(place, words)).add(caption);
  }

  private static Tag picture(Place place, Words words) {
    Picture picture = place.picture();
    if (picture == null) {
      return Tag.of("div", words.word("sheet.none")).with("class", "none");
    }
    String found = place.found();
    return Tag.of("img")
        .with("src", picture)
        .with(
            "alt", words.say("sheet.alt", new Argument.Text(found == null ? place.place() : found)))
        .with("width", Integer.toString(picture.width()))
        .with("height", Integer.toString(picture.height()));
  }
}
