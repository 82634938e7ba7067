package daylight.line.course;

import static daylight.line.course.Draft.id;
import static daylight.line.course.Draft.metres;

import daylight.line.book.Bend;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Where;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A pass in the making. */
public final class Push {
  private final String label;
  private final String entry;
  private final List<Pass.Leg> walk;
  private final List<Pass.Sight> sight = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Bend> bends = new ArrayList<>();
  private final List<Pass.CounterCheck> checks = new ArrayList<>();
  private final List<Pass.Reset> resets = new ArrayList<>();
  private final List<Pass.Anchor> anchors = new ArrayList<>();
  private final List<Pass.Correction> corrections = new ArrayList<>();
  private Pass.Zero zero = new Pass.Zero.Reads(metres(0));
  private Pass.Head head = Pass.Head.SELF_RIGHTING;
  private Pass.@Nullable End end;

  public Push(String label, String entry, String... reaches) {
    this.label = label;
    this.entry = entry;
    this.walk = List.of(reaches).stream().map(reach -> new Pass.Leg(reach, true)).toList();
  }

  public Push zero(Pass.Zero read) {
    zero = read;
    return this;
  }

  public Push head(Pass.Head stands) {
    head = stands;
    return this;
  }

  public Push end(double cable, Pass.Why why, @Nullable String node) {
    end = new Pass.End(metres(cable), why, node);
    return this;
  }

  public Push sight(double from, double to, Pass.Clarity clarity) {
    sight.add(new Pass.Sight(metres(from), metres(to), clarity));
    return this;
  }

  public Push bend(double cable, double angle, Bend.Sense sense) {
    String name = label + "-B" + (bends.size() + 1);
    Reading turned = new Reading(angle, null, angle + " rad");
    bends.add(new Bend(id("bend", name), metres(cable), turned, sense));
    return this;
  }

  public Push check(double counter, double taped) {
    String name = label + "-K" + (checks.size() + 1);
    checks.add(new Pass.CounterCheck(id("check", name), metres(counter), metres(taped)));
    return this;
  }

  public Push reset(double before, double after) {
    String name = label + "-R" + (resets.size() + 1);
    resets.add(new Pass.Reset(id("reset", name), metres(before), metres(after)));
    return this;
  }

  public Push anchor(String media, double seconds, double counter) {
    String name = label + "-A" + (anchors.size() + 1);
    anchors.add(new Pass.Anchor(id("anchor", name), media, seconds, metres(counter)));
    return this;
  }

  /** Between two moments the machine misread; null where it should have read nothing. */
  public Push correction(String media, double from, double to, @Nullable Double counter) {
    String name = label + "-C" + (corrections.size() + 1);
    Reading read = counter == null ? null : metres(counter);
    corrections.add(new Pass.Correction(id("correction", name), media, from, to, read));
    return this;
  }

  /** The lens passed a node. */
  public Push node(double cable, String node, Finding.Moving moving) {
    return finding("junction", new Where.AtCable(metres(cable)), moving, Map.of(), Map.of(), node);
  }

  public Push seen(String kind, double cable, Map<String, Double> sizes) {
    return finding(
        kind, new Where.AtCable(metres(cable)), Finding.Moving.PUSHING, sizes, Map.of(), null);
  }

  public Push stretch(String kind, double from, double to, Map<String, Double> sizes) {
    return finding(
        kind,
        new Where.FromTo(metres(from), metres(to)),
        Finding.Moving.PUSHING,
        sizes,
        Map.of(),
        null);
  }

  public Push finding(
      String kind,
      Where where,
      Finding.Moving moving,
      Map<String, Double> sizes,
      Map<String, String> words,
      @Nullable String node) {
    TreeMap<String, Reading> quantities = new TreeMap<>();
    sizes.forEach((name, size) -> quantities.put(name, metres(size)));
    findings.add(
        new Finding(
            id("finding", label + "-F" + (findings.size() + 1)),
            kind,
            where,
            moving,
            null,
            quantities,
            new TreeMap<>(words),
            node,
            List.of(),
            List.of(),
            null));
    return this;
  }

  public Pass pass() {
    return new Pass(
        id("pass", label),
        entry,
        walk,
        zero,
        head,
        end,
        sight,
        findings,
        bends,
        checks,
        resets,
        anchors,
        corrections,
        null,
        null,
        null);
  }
}
