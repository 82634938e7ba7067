package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.survey.SiteTie;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.words.CodeWords;
import daylight.report.words.GradeWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What goes with every file: what must not be done, what frame and units these are. */
final class NoticeRows {
  private final Making making;
  private final Subject subject;
  private final Words words;
  private final List<Row> rows = new ArrayList<>();

  NoticeRows(Making making) {
    this.making = making;
    this.subject = making.subject();
    this.words = subject.words();
  }

  List<Row> all() {
    if (!making.stop().isEmpty()) {
      say("stop", words.word("report.stop") + ": " + making.stop());
    }
    if (subject.book().site().invented()) {
      say("invented", words.word("report.invented"));
    }
    Set<Caution> cautions = new LinkedHashSet<>();
    cautions.add(Caution.NOTIFY_BEFORE_DIGGING);
    cautions.add(Caution.HAND_DIG);
    cautions.add(Caution.LOCATES_APPROXIMATE);
    cautions.add(Caution.TRENCH);
    cautions.addAll(subject.answers().cautions());
    cautions.add(Caution.LOCAL_CODES);
    cautions.forEach(caution -> say("caution", words.word(caution)));
    say("caution", making.say("report.services.depth"));
    say("site", subject.book().site().name());
    say("visit", Captions.visit(subject));
    frame();
    say("uncertainty", making.say("map.notice.uncertainty"));
    say("quality", making.say("map.notice.quality"));
    say("unknown", making.say("map.notice.unknown"));
    say("grades", new GradeWords(words).scheme(subject.rules().grades()));
    if (!subject.codes().isEmpty()) {
      say("codes", new CodeWords(words, subject.codes()).whose());
    }
    return rows;
  }

  private void frame() {
    say("frame", making.say("map.notice.grid"));
    SiteTie earth = making.earth();
    if (earth == null) {
      say("frame", making.say("map.notice.untied"));
      say("kml", making.say("map.no_kml"));
      return;
    }
    say("frame", making.say("map.notice.tied"));
    figure("grid_north", earth.gridNorth(), earth.gridNorthSd());
    metres("grid_zero_east_sd", earth.eastSd());
    metres("grid_zero_north_sd", earth.northSd());
  }

  private void figure(String about, double bearing, double sd) {
    double full = 2 * Math.PI;
    double turned = bearing - full * Math.floor(bearing / full);
    add(about, making.say("map.notice.grid_north"), StrictMath.toDegrees(turned), "°");
    add(about + "_sd", making.say("map.notice.grid_north_sd"), StrictMath.toDegrees(sd), "°");
  }

  private void metres(String about, double value) {
    add(about, making.say("map.notice." + about), value, "m");
  }

  private void say(String about, String what) {
    add(about, what, null, null);
  }

  private void add(String about, String what, @Nullable Double value, @Nullable String unit) {
    rows.add(
        new Filling(Layer.NOTICE, making.earth())
            .text("about", about)
            .text("says", what)
            .number("value", value)
            .text("unit", unit)
            .done());
  }
}
