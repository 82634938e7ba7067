package daylight.archive;

import daylight.archive.form.Section;
import daylight.line.book.Catalogue;
import daylight.line.book.Entry;
import daylight.line.book.Exposure;
import daylight.line.book.Kit;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Reported;
import daylight.line.book.Test;
import daylight.line.book.Units;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes one visit. */
final class VisitWriter {
  private final Units units;
  private final PassWriter passes;
  private final TieWriter ties;
  private final PaperWriter papers;

  VisitWriter(Units units, Catalogue catalogue) {
    this.units = units;
    this.passes = new PassWriter(units, catalogue);
    this.ties = new TieWriter(units);
    this.papers = new PaperWriter(units);
  }

  private Sheet entry(Section section, Entry entry) {
    return Sheet.of(section, entry.id(), units);
  }

  private Sheet sheet(Section section) {
    return new Sheet(section, units);
  }

  Sheet visit(Visit visit) {
    Sheet sheet =
        entry(BookShape.VISIT, visit).words("date", day(visit.date())).texts("crew", visit.crew());
    complaint(sheet, visit.complaint());
    if (!visit.kit().equals(Kit.UNRECORDED)) {
      sheet.part("kit", kit(visit.kit()));
    }
    sheet
        .rows("passes", visit.passes(), passes::pass)
        .rows("locates", visit.locates(), this::locate)
        .rows("exposures", visit.exposures(), this::exposure)
        .rows("ties", visit.ties(), ties::tie)
        .rows("levels", visit.levels(), this::level)
        .rows("tests", visit.tests(), this::test)
        .rows("works", visit.works(), this::work);
    return papers.add(visit.papers(), sheet);
  }

  private void complaint(Sheet sheet, @Nullable Reported complaint) {
    if (complaint == null || complaint.isBare()) {
      sheet.words("complaint", complaint == null ? null : complaint.words());
      return;
    }
    sheet.part(
        "complaint",
        sheet(ComplaintShape.REPORTED)
            .words("words", complaint.words())
            .texts("kinds", complaint.kinds().stream().map(Section::word).toList())
            .words("at", complaint.at())
            .choice("when", complaint.when()));
  }

  private Sheet kit(Kit kit) {
    Reading shift = kit.clockOffset();
    return sheet(BookShape.KIT)
        .words("camera", kit.camera())
        .reading("sonde-behind-lens", kit.sondeBehindLens())
        .reading("sonde-above-invert", kit.sondeAboveInvert())
        .words("receiver", kit.receiver())
        .words("clock-offset", shift == null ? null : Amount.shift(shift))
        .part("counter", burned(kit.counter()));
  }

  private @Nullable Sheet burned(Kit.@Nullable Burned counter) {
    if (counter == null) {
      return null;
    }
    Kit.Region at = counter.region();
    Unit unit = counter.unit();
    return sheet(BookShape.BURNED)
        .texts(
            "region",
            at == null
                ? List.of()
                : Stream.of(at.left(), at.top(), at.width(), at.height())
                    .map(String::valueOf)
                    .toList())
        .words("unit", unit == null ? null : unit.symbol());
  }

  private Sheet locate(Locate locate) {
    return entry(BookShape.LOCATE, locate)
        .words("pass", locate.pass())
        .reading("cable", locate.cable())
        .choice("moving", locate.moving())
        .reading("depth", locate.depth())
        .reading("receiver-height", locate.receiverHeight())
        .words("surface", locate.surface())
        .reading("cover", locate.cover())
        .choice("signal", locate.signal())
        .rows(
            "lifts",
            locate.lifts(),
            lift -> sheet(BookShape.LIFT).reading("by", lift.by()).reading("depth", lift.depth()))
        .part("nulls", nulls(locate.nulls()))
        .choice("off-on", locate.offOn() == Locate.OffOn.NO ? null : locate.offOn())
        .words("time", moment(locate.time()))
        .words("remark", locate.remark());
  }

  private @Nullable Sheet nulls(Locate.@Nullable Nulls nulls) {
    return nulls == null
        ? null
        : sheet(BookShape.NULLS)
            .reading("before", nulls.before())
            .reading("after", nulls.after())
            .reading("over", nulls.over())
            .reading("upright-before", nulls.uprightBefore())
            .reading("upright-after", nulls.uprightAfter());
  }

  private Sheet exposure(Exposure exposure) {
    return entry(BookShape.EXPOSURE, exposure)
        .choice("by", exposure.by())
        .words("pass", exposure.pass())
        .reading("cable", exposure.cable())
        .reading("crown", exposure.crown())
        .reading("invert", exposure.invert())
        .words("surface", exposure.surface());
  }

  private Sheet level(Level level) {
    Sheet sheet = entry(BookShape.LEVEL, level);
    return switch (level) {
      case Level.Rod rod ->
          mark(sheet, rod.mark()).words("set-up", rod.setUp()).reading("rod", rod.rod());
      case Level.Height height -> mark(sheet, height.mark()).reading("height", height.height());
      case Level.Rise rise ->
          sheet
              .part("from", mark(sheet(BookShape.MARK), rise.from()))
              .part("to", mark(sheet(BookShape.MARK), rise.to()))
              .reading("rise", rise.rise());
    };
  }

  private static Sheet mark(Sheet sheet, Level.Mark mark) {
    return sheet.words("of", mark.point()).choice("part", mark.part());
  }

  private Sheet test(Test test) {
    return entry(BookShape.TEST, test)
        .choice("kind", test.kind())
        .words("at", test.at())
        .reading("flow", test.flow())
        .reading("volume", test.volume())
        .reading("duration", test.duration())
        .reading("drop", test.drop())
        .texts("reaches", test.held().reaches())
        .reading("riser", test.held().riser())
        .reading("head", test.held().head())
        .reading("topped-up", test.held().toppedUp())
        .rows(
            "seen",
            test.seen(),
            seen ->
                sheet(BookShape.SEEN)
                    .words("where", seen.where())
                    .yes("arrived", seen.arrived())
                    .reading("after", seen.after())
                    .reading("volume", seen.volume()))
        .words("remark", test.remark());
  }

  private Sheet work(Work work) {
    Sheet sheet = entry(BookShape.WORK, work);
    return switch (work) {
      case Work.Cleaning cleaning ->
          sheet
              .choice("kind", BookShape.WorkKind.CLEANING)
              .texts("reaches", cleaning.reaches())
              .words("how", cleaning.how());
      case Work.Repair repair ->
          sheet
              .choice("kind", BookShape.WorkKind.REPAIR)
              .words("date", day(repair.date()))
              .words("reach", repair.reach())
              .reading("from", repair.from())
              .reading("to", repair.to())
              .words("what", repair.what())
              .mark("altered", repair.altered());
    };
  }

  static @Nullable String day(@Nullable LocalDate day) {
    return day == null ? null : day.toString();
  }

  static @Nullable String moment(@Nullable Instant moment) {
    return moment == null ? null : moment.toString();
  }
}
