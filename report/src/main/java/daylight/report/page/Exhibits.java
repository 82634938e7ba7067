package daylight.report.page;

import daylight.line.dig.Digger;
import daylight.line.measure.Argument;
import daylight.report.draw.Captions;
import daylight.report.draw.FrostDrawing;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Photo;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The numbers of figures and tables, so that the text can point at them. */
final class Exhibits {
  static final String PLAN = "plan";
  static final String PROFILE = "profile";
  static final String STRIP = "strip";
  static final String PUMPS = "pumps";
  static final String FROST = "frost";
  static final String SERVICES = "services";
  static final String FINDINGS = "findings";
  static final String LOCATES = "locates";
  static final String FALL = "fall";
  static final String CONNECTIONS = "connections";
  static final String FOOTAGE = "footage";

  private final Words words;
  private final List<Still> stills;
  private final List<Photo> photos;
  private final List<String> figures = new ArrayList<>(List.of(PLAN, PROFILE, STRIP));
  private final List<String> tables = new ArrayList<>();

  Exhibits(Subject subject) {
    words = subject.words();
    stills = subject.shots().stills();
    photos = subject.shots().photos();
    if (!subject.answers().pumps().isEmpty()) {
      figures.add(PUMPS);
    }
    if (FrostDrawing.isFor(subject)) {
      figures.add(FROST);
    }
    stills.forEach(still -> figures.add(id(still)));
    photos.forEach(photo -> figures.add(id(photo)));
    number(SERVICES, Digger.services(subject.book(), subject.line()));
    number(FINDINGS, Captions.findings(subject));
    number(LOCATES, subject.line().locates());
    number(FALL, subject.answers().fall().stretches());
    number(CONNECTIONS, subject.answers().proving().connections());
    number(FOOTAGE, subject.shots().reels());
  }

  /** A table without rows is not shown. */
  private void number(String id, List<?> rows) {
    if (!rows.isEmpty()) {
      tables.add(id);
    }
  }

  /** The id of a still on the page. */
  String id(Still still) {
    return "still-" + (stills.indexOf(still) + 1);
  }

  /** The id of a photograph on the page. */
  String id(Photo photo) {
    return "photo-" + (photos.indexOf(photo) + 1);
  }

  /** The id of the still of a finding, by the finding's label. */
  Optional<String> still(String finding) {
    return stills.stream()
        .filter(still -> still.finding().equals(finding))
        .findFirst()
        .map(this::id);
  }

  /** The id of the still of a finding, or else of a photograph of it, by the finding's label. */
  Optional<String> picture(String finding) {
    return still(finding)
        .or(
            () ->
                photos.stream()
                    .filter(photo -> photo.finding().equals(finding))
                    .findFirst()
                    .map(this::id));
  }

  /** Whether a figure or a table of that id is shown. */
  boolean has(String id) {
    return figures.contains(id) || tables.contains(id);
  }

  /** Such as {@code Figure 2}. */
  String name(String id) {
    return figures.contains(id)
        ? words.say("report.figure", new Argument.Count(figures.indexOf(id) + 1))
        : words.say("report.table", new Argument.Count(tables.indexOf(id) + 1));
  }

  /** What stands at a figure or a table. */
  String caption(String id, String text) {
    return words.named(name(id), text);
  }

  /** Points at a figure or a table. */
  Tag link(String id) {
    return Tag.of("a", name(id)).with("href", "#" + id);
  }
}
