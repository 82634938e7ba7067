package daylight.app.web;

import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;

/** The result files, each with what it is good for. */
final class HandOver {
  /** By name, in the order of who asks for them first; stills stand beside their findings. */
  static final List<String> FILES =
      List.of(
          "report.html",
          "report.pdf",
          "plan.svg",
          "profile.svg",
          "strip.svg",
          "maps/site.gpkg",
          "maps/site.dxf",
          "maps/site.xlsx",
          "maps/dictionary.html",
          "line.geojson",
          "answers.json");

  private HandOver() {}

  static Tag section(Property property, Words words) {
    Tag list = Tag.of("ul").with("class", "files");
    for (String file : FILES) {
      list.add(
          Tag.of("li")
              .add(
                  Tag.of("a")
                      .with("href", property.address(file))
                      .with("download", property.fileWord() + "-" + file.replace('/', '-'))
                      .add(Tag.of("strong", file))
                      .add(Tag.of("span", words.word("web.file." + file)))));
    }
    return Pieces.section("files", words.word("web.files"))
        .add(
            Tag.of("p")
                .add(
                    Tag.of("a", words.word("web.report"))
                        .with("class", "button")
                        .with("href", property.address("report.html"))))
        .add(list);
  }
}
