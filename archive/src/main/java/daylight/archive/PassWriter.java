package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.archive.form.Tree;
import daylight.line.book.Bend;
import daylight.line.book.Catalogue;
import daylight.line.book.Entry;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Units;
import daylight.line.book.Where;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes one push. */
final class PassWriter {
  private final Units units;
  private final Catalogue catalogue;

  PassWriter(Units units, Catalogue catalogue) {
    this.units = units;
    this.catalogue = catalogue;
  }

  private Sheet entry(Section section, Entry entry) {
    return Sheet.of(section, entry.id(), units);
  }

  private Sheet sheet(Section section) {
    return new Sheet(section, units);
  }

  Sheet pass(Pass pass) {
    Pass.End end = pass.end();
    Sheet sheet =
        entry(BookShape.PASS, pass)
            .words("entry", pass.entry())
            .tree("walk", walk(pass.walk()))
            .part("zero", zero(pass.zero()))
            .choice("head", pass.head());
    if (end != null) {
      sheet.part(
          "end",
          sheet(BookShape.END)
              .reading("cable", end.cable())
              .choice("why", end.why())
              .words("node", end.node()));
    }
    return sheet
        .rows("sight", pass.sight(), this::sight)
        .rows("findings", pass.findings(), this::finding)
        .rows("bends", pass.bends(), this::bend)
        .rows("counter-checks", pass.counterChecks(), this::check)
        .rows("resets", pass.resets(), this::reset)
        .rows("anchors", pass.anchors(), this::anchor)
        .rows("corrections", pass.corrections(), this::correction)
        .words("after", pass.after())
        .words("start", VisitWriter.moment(pass.start()))
        .words("remark", pass.remark());
  }

  private Tree.Items walk(List<Pass.Leg> walk) {
    List<Tree> legs = new ArrayList<>();
    for (Pass.Leg leg : walk) {
      legs.add(
          leg.seen()
              ? Sheet.text(leg.reach())
              : sheet(BookShape.LEG)
                  .words("reach", leg.reach())
                  .choice("turn", BookShape.Turn.ASSUMED)
                  .tree());
    }
    return Sheet.items(legs);
  }

  private Sheet zero(Pass.Zero zero) {
    return switch (zero) {
      case Pass.Zero.Reads(Reading counter) -> sheet(BookShape.ZERO).reading("reads", counter);
      case Pass.Zero.Unknown(String reason) -> sheet(BookShape.ZERO).words("unknown", reason);
    };
  }

  private Sheet sight(Pass.Sight sight) {
    return sheet(BookShape.SIGHT)
        .reading("from", sight.from())
        .reading("to", sight.to())
        .choice("clarity", sight.clarity());
  }

  private Sheet finding(Finding finding) {
    Sheet sheet = entry(BookShape.FINDING, finding).words("kind", finding.kind());
    switch (finding.where()) {
      case Where.AtCable(Reading cable) -> sheet.reading("cable", cable);
      case Where.FromTo(Reading from, Reading to) -> sheet.reading("from", from).reading("to", to);
      case Where.AtMoment(String media, double seconds) ->
          sheet.part(
              "moment",
              sheet(BookShape.MOMENT).words("media", media).reading("at", seconds(seconds)));
    }
    sheet.choice("moving", finding.moving());
    if (finding.clock() != null) {
      sheet.words("clock", Amount.clock(finding.clock()));
    }
    Map<String, Dimension> sizes =
        catalogue.find(finding.kind()).map(Catalogue.Kind::quantities).orElse(Map.of());
    finding
        .quantities()
        .forEach(
            (name, size) -> {
              Dimension dimension = sizes.getOrDefault(name, Dimension.LENGTH);
              sheet.reading(name, size, new Shape.Amount(dimension, Bare.NONE));
            });
    finding.words().forEach(sheet::words);
    return sheet
        .words("node", finding.node())
        .texts("stills", finding.stills())
        .rows("outlines", finding.outlines(), this::outline)
        .words("remark", finding.remark());
  }

  private Sheet outline(Finding.Outline outline) {
    return sheet(BookShape.OUTLINE)
        .words("on", outline.on())
        .words("across", Amount.plain(outline.across()))
        .words("down", Amount.plain(outline.down()))
        .words("wide", Amount.plain(outline.wide()))
        .words("high", Amount.plain(outline.high()));
  }

  private Sheet bend(Bend bend) {
    return entry(BookShape.BEND, bend)
        .reading("cable", bend.cable())
        .reading("angle", bend.angle())
        .choice("sense", bend.sense());
  }

  private Sheet check(Pass.CounterCheck check) {
    return entry(BookShape.COUNTER_CHECK, check)
        .reading("counter", check.counter())
        .reading("taped", check.taped());
  }

  private Sheet reset(Pass.Reset reset) {
    return entry(BookShape.RESET, reset)
        .reading("before", reset.before())
        .reading("after", reset.after());
  }

  private Sheet anchor(Pass.Anchor anchor) {
    return entry(BookShape.ANCHOR, anchor)
        .words("media", anchor.media())
        .reading("at", seconds(anchor.seconds()))
        .reading("counter", anchor.counter());
  }

  private Sheet correction(Pass.Correction correction) {
    return entry(BookShape.CORRECTION, correction)
        .words("media", correction.media())
        .reading("from", seconds(correction.fromSeconds()))
        .reading("to", seconds(correction.toSeconds()))
        .reading("counter", correction.counter());
  }

  private static Reading seconds(double seconds) {
    return new Reading(seconds, null, Amount.plain(seconds) + " s");
  }
}
