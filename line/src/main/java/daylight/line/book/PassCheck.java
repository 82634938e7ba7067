package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A pass walks from its entry along reaches that join, and nothing lies past its end. */
final class PassCheck {
  private final FaultList faults;
  private final Names names;
  private final Site site;
  private final FindingCheck findings;

  PassCheck(FaultList faults, Names names, Site site, Catalogue catalogue) {
    this.faults = faults;
    this.names = names;
    this.site = site;
    this.findings = new FindingCheck(faults, names, catalogue);
  }

  void check(Pass pass) {
    faults.known(BookFault.UNKNOWN_NODE, pass, "entry", pass.entry(), names.nodes());
    walk(pass);
    faults.known(BookFault.UNKNOWN_WORK, pass, "after", pass.after(), names.works());
    if (pass.end() != null) {
      faults.known(BookFault.UNKNOWN_NODE, pass, "end.node", pass.end().node(), names.nodes());
      faults.notNegative(pass, "end.cable", pass.end().cable());
    }
    for (int i = 0; i < pass.sight().size(); i++) {
      Pass.Sight sight = pass.sight().get(i);
      String field = "sight[" + i + "]";
      cable(pass, field + ".from", sight.from(), pass);
      cable(pass, field + ".to", sight.to(), pass);
      faults.rising(pass, field + ".to", sight.from(), sight.to());
    }
    pass.bends().forEach(bend -> bend(bend, pass));
    pass.findings().forEach(finding -> finding(finding, pass));
    counter(pass);
  }

  private void walk(Pass pass) {
    if (pass.walk().isEmpty()) {
      faults.add(BookFault.EMPTY_WALK, pass, "walk");
    }
    String at = pass.entry();
    for (int i = 0; i < pass.walk().size(); i++) {
      String label = pass.walk().get(i).reach();
      String field = "walk[" + i + "]";
      faults.known(BookFault.UNKNOWN_REACH, pass, field, label, names.reaches());
      Reach reach = site.findReach(label).orElse(null);
      if (reach == null) {
        return;
      }
      if (!reach.from().equals(at) && !reach.to().equals(at)) {
        Argument where = new Argument.Label(at);
        faults.add(BookFault.WALK_BROKEN, pass, field, new Argument.Label(label), where);
        return;
      }
      at = reach.from().equals(at) ? reach.to() : reach.from();
    }
  }

  private void bend(Bend bend, Pass pass) {
    cable(bend, "cable", bend.cable(), pass);
    double angle = bend.angle().value();
    if (!(angle > 0) || angle > StrictMath.PI + 1e-9) {
      faults.add(
          BookFault.BEND_ANGLE, bend, "angle", new Argument.Quantity(Dimension.ANGLE, angle));
    }
  }

  private void finding(Finding finding, Pass pass) {
    switch (finding.where()) {
      case Where.AtCable(Reading cable) -> cable(finding, "cable", cable, pass);
      case Where.FromTo(Reading from, Reading to) -> {
        cable(finding, "from", from, pass);
        cable(finding, "to", to, pass);
        faults.rising(finding, "to", from, to);
      }
      case Where.AtMoment(String media, double seconds) -> {
        media(finding, "moment.media", media);
        moment(finding, "moment.at", seconds);
      }
    }
    findings.check(finding, largestBore(pass));
  }

  /** The largest bore on the walk; null where one of the reaches does not say. */
  private @Nullable Double largestBore(Pass pass) {
    Set<String> walked = Set.copyOf(pass.walk().stream().map(Pass.Leg::reach).toList());
    var reaches = site.reaches().stream().filter(r -> walked.contains(r.label())).toList();
    if (reaches.isEmpty() || reaches.stream().anyMatch(reach -> reach.bore() == null)) {
      return null;
    }
    return reaches.stream()
        .map(Reach::bore)
        .filter(java.util.Objects::nonNull)
        .map(Reading::value)
        .max(Comparator.naturalOrder())
        .orElse(null);
  }

  private void counter(Pass pass) {
    for (Pass.CounterCheck check : pass.counterChecks()) {
      cable(check, "counter", check.counter(), pass);
      faults.notNegative(check, "taped", check.taped());
    }
    pass.resets().forEach(this::reset);
    anchors(pass);
    for (Pass.Correction correction : pass.corrections()) {
      media(correction, "media", correction.media());
      cable(correction, "counter", correction.counter(), pass);
      if (correction.fromSeconds() > correction.toSeconds()) {
        faults.add(
            BookFault.FROM_AFTER_TO,
            correction,
            "to",
            new Argument.Quantity(Dimension.DURATION, correction.fromSeconds()),
            new Argument.Quantity(Dimension.DURATION, correction.toSeconds()));
      }
    }
  }

  private void anchors(Pass pass) {
    Map<String, Map<Double, Reading>> seen = new HashMap<>();
    for (Pass.Anchor anchor : pass.anchors()) {
      media(anchor, "media", anchor.media());
      cable(anchor, "counter", anchor.counter(), pass);
      moment(anchor, "at", anchor.seconds());
      Reading first =
          seen.computeIfAbsent(anchor.media(), media -> new HashMap<>())
              .putIfAbsent(anchor.seconds(), anchor.counter());
      if (first != null && first.value() != anchor.counter().value()) {
        faults.add(
            BookFault.ANCHOR_TWICE,
            anchor,
            "counter",
            new Argument.Label(anchor.media()),
            new Argument.Length(first.value()),
            new Argument.Length(anchor.counter().value()));
      }
    }
  }

  private void moment(Entry entry, String field, double seconds) {
    if (seconds < 0) {
      Argument moment = new Argument.Quantity(Dimension.DURATION, seconds);
      faults.add(BookFault.NEGATIVE_MOMENT, entry, field, moment);
    }
  }

  /** After a jump back a reading may have been taken before it or after; nothing tells which. */
  private void reset(Pass.Reset reset) {
    double before = reset.before().value();
    double after = reset.after().value();
    if (after < before) {
      faults.add(
          BookFault.RESET_BACKWARDS,
          reset,
          "after",
          new Argument.Length(before),
          new Argument.Length(after),
          new Argument.Length(before - after));
    }
  }

  private void media(Entry entry, String field, String label) {
    faults.known(BookFault.UNKNOWN_MEDIA, entry, field, label, names.media());
  }

  private void cable(Entry entry, String field, @Nullable Reading cable, Pass pass) {
    CableCheck.check(faults, entry, field, cable, pass);
  }
}
