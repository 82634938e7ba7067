package daylight.report.exchange;

import daylight.report.map.Atlas;
import daylight.report.map.Field;
import daylight.report.map.Layer;
import daylight.report.markup.Tag;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The data dictionary as a page: what files there are, and what every field of a layer means. */
final class DictionaryPage {
  private static final String LOOK =
      """
      body{font:16px/1.45 system-ui,sans-serif;max-width:62rem;margin:0 auto;padding:1rem;color:#1c2320;background:#fdfcf8}
      h1{font-size:1.6rem}h2{font-size:1.2rem;margin:2rem 0 .3rem}
      table{border-collapse:collapse;width:100%;margin:.5rem 0 1rem}
      th,td{text-align:left;vertical-align:top;padding:.3rem .6rem;border-bottom:1px solid #cfd6d1}
      thead th{background:#e6efe9}tbody th{font-weight:600;font-family:ui-monospace,monospace}
      @media(max-width:40rem){table{font-size:.85rem}th,td{padding:.3rem .2rem}tbody th{overflow-wrap:anywhere;min-width:5.5rem}}
      .stop{border:3px solid #8c1c13;padding:.5rem .8rem;font-weight:700}
      """;

  private final Atlas atlas;

  private DictionaryPage(Atlas atlas) {
    this.atlas = atlas;
  }

  static byte[] write(Atlas atlas) {
    String page = "<!DOCTYPE html>\n" + new DictionaryPage(atlas).page().write() + "\n";
    return page.getBytes(StandardCharsets.UTF_8);
  }

  private String word(String key) {
    return atlas.words().word(key);
  }

  private Tag page() {
    String title = atlas.words().named(atlas.site(), word("map.dictionary"));
    Tag main = Tag.of("main").add(Tag.of("h1", title)).add(Tag.of("h2", word("map.notice")));
    atlas.of(Layer.NOTICE).stream()
        .filter(row -> row.text("about").equals("stop"))
        .forEach(row -> main.add(Tag.of("p", row.text("says")).with("class", "stop")));
    Tag notice = Tag.of("ul");
    atlas.of(Layer.NOTICE).stream()
        .filter(row -> !row.text("about").equals("stop"))
        .forEach(row -> notice.add(Tag.of("li", row.text("says"))));
    main.add(notice).add(Tag.of("h2", word("map.files"))).add(files());
    for (Layer layer : Layer.values()) {
      main.add(layer(layer));
    }
    return Tag.of("html")
        .with("lang", atlas.words().language().code())
        .add(
            Tag.of("head")
                .add(Tag.of("meta").with("charset", "utf-8"))
                .add(
                    Tag.of("meta")
                        .with("name", "viewport")
                        .with("content", "width=device-width, initial-scale=1"))
                .add(Tag.of("title", title))
                .add(Tag.of("style", LOOK.replace("\n", ""))))
        .add(Tag.of("body").add(main));
  }

  private Tag files() {
    Tag body = Tag.of("tbody");
    for (String file : List.of("gpkg", "kml", "dxf", "xlsx", "csv")) {
      String name = file.equals("csv") ? "csv/*.csv" : "site." + file;
      boolean none = file.equals("kml") && atlas.earth().isEmpty();
      String what = word(none ? "map.file.kml.none" : "map.file." + file);
      body.add(row(List.of(name, what)));
    }
    return Tag.of("table")
        .add(head(List.of(word("map.head.file"), word("map.head.what"))))
        .add(body);
  }

  private Tag layer(Layer layer) {
    Tag body = Tag.of("tbody");
    for (Field field : layer.fields()) {
      body.add(
          row(
              List.of(
                  field.name(),
                  atlas.type(field),
                  atlas.unit(field),
                  atlas.meaning(layer, field))));
    }
    List<String> heads =
        List.of(
            word("map.head.field"),
            word("map.head.type"),
            word("map.head.unit"),
            word("map.head.meaning"));
    return Tag.of("section")
        .with("id", layer.id())
        .add(Tag.of("h2", layer.id()))
        .add(Tag.of("p", atlas.title(layer) + " " + atlas.form(layer)))
        .add(Tag.of("table").add(head(heads)).add(body));
  }

  private static Tag head(List<String> texts) {
    Tag row = Tag.of("tr");
    texts.forEach(text -> row.add(Tag.of("th", text).with("scope", "col")));
    return Tag.of("thead").add(row);
  }

  private static Tag row(List<String> texts) {
    Tag row = Tag.of("tr");
    for (int i = 0; i < texts.size(); i++) {
      row.add(
          i == 0 ? Tag.of("th", texts.get(i)).with("scope", "row") : Tag.of("td", texts.get(i)));
    }
    return row;
  }
}
