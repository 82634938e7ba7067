package daylight.app.web;

import daylight.report.calendar.CalendarFile;
import daylight.report.draw.Subject;
import daylight.report.map.Atlas;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The result files, each with what it is good for. */
final class HandOver {
  private static final String ON_EARTH = "maps/site.kml";

  /**
   * By name, in the order of who asks for them first. Stills stand beside their findings, and the
   * tables of the workbook one by one are only written by the command.
   */
  private static final List<String> FILES =
      List.of(
          "report.html",
          "report.pdf",
          "report-short.pdf",
          "crew-cards.pdf",
          "plan.svg",
          "profile.svg",
          "strip.svg",
          CalendarFile.NAME,
          "maps/site.gpkg",
          ON_EARTH,
          "maps/site.dxf",
          "maps/site.xlsx",
          "maps/dictionary.html",
          "line.geojson",
          "answers.json");

  private HandOver() {}

  /**
   * Those that there are: nothing shows on a globe that nothing ties to the earth, and a calendar
   * holds what has a day.
   */
  static List<String> files(Subject subject) {
    Set<String> missing = new HashSet<>();
    if (Atlas.earth(subject).isEmpty()) {
      missing.add(ON_EARTH);
    }
    if (!CalendarFile.hasDays(subject)) {
      missing.add(CalendarFile.NAME);
    }
    return FILES.stream().filter(file -> !missing.contains(file)).toList();
  }

  static Tag section(Property property, Subject subject) {
    Words words = subject.words();
    Tag list = Tag.of("ul").with("class", "files");
    for (String file : files(subject)) {
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
