package daylight.report;

import daylight.report.calendar.CalendarFile;
import daylight.report.data.AnswersFile;
import daylight.report.data.LineFile;
import daylight.report.draw.PlanDrawing;
import daylight.report.draw.ProfileDrawing;
import daylight.report.draw.StripDrawing;
import daylight.report.draw.Subject;
import daylight.report.draw.Typeface;
import daylight.report.exchange.MapFiles;
import daylight.report.markup.Tag;
import daylight.report.page.OwnersReport;
import daylight.report.page.Sender;
import daylight.report.paper.PaperReport;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** The door of the room: makes the files to hand over. */
public final class Report {
  private Report() {}

  /** The files by name; the same handout gives the same bytes. */
  public static SortedMap<String, byte[]> files(Handout handout) {
    Subject subject = handout.subject();
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("plan.svg", alone(PlanDrawing.draw(subject)));
    files.put("profile.svg", alone(ProfileDrawing.draw(subject)));
    files.put("strip.svg", alone(StripDrawing.draw(subject)));
    Sender sender = handout.sender();
    OwnersReport report = OwnersReport.of(subject, sender);
    files.put("report.html", report.file());
    files.put("report.pdf", PaperReport.write(report.edition(), handout.paper()));
    files.put("report-short.pdf", PaperReport.brief(subject, sender, handout.paper()));
    files.put("crew-cards.pdf", PaperReport.crew(subject, sender, handout.paper()));
    files.put("answers.json", AnswersFile.write(subject));
    handout.shots().stills().forEach(still -> files.put(still.file(), still.picture().jpeg()));
    handout.shots().photos().forEach(photo -> files.put(photo.file(), photo.picture().jpeg()));
    files.put("line.geojson", LineFile.write(subject));
    files.putAll(MapFiles.of(subject));
    CalendarFile.write(subject).ifPresent(calendar -> files.put(CalendarFile.NAME, calendar));
    return files;
  }

  /** A drawing as a file that brings its typeface along. */
  private static byte[] alone(Tag svg) {
    String xml = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    Tag styled = svg.add(Tag.of("style", Typeface.rules()));
    return (xml + styled.write() + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
