package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Tree;
import daylight.line.book.Bend;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the pushes of a visit, and supplies one where the book has readings but no pass. */
final class PassReader {
  private static final List<String> PUSHED = List.of("end", "sight", "findings", "bends");

  private final Clerk clerk;
  private final SiteDraft site;
  private final Moments moments;
  private final FindingReader findings;

  PassReader(Clerk clerk, SiteDraft site, Moments moments) {
    this.clerk = clerk;
    this.site = site;
    this.moments = moments;
    this.findings = new FindingReader(clerk);
  }

  List<Pass> passes(Fields visit) {
    List<Fields> rows = visit.rows("passes");
    boolean shorthand = PUSHED.stream().anyMatch(visit::has);
    if (rows.isEmpty()) {
      return shorthand || hasCable(visit) ? supplied(visit) : List.of();
    }
    if (rows.size() > 1) {
      PUSHED.stream()
          .filter(visit::has)
          .forEach(key -> visit.complain(FileTrouble.WHICH_PASS, key, new Argument.Text(key)));
      shorthand = false;
    }
    List<Pass> passes = new ArrayList<>();
    for (Fields row : rows) {
      Id id = clerk.name(row, "pass", "P");
      passes.add(pass(row, id, shorthand ? List.of(row, visit) : List.of(row)));
    }
    return passes;
  }

  private static boolean hasCable(Fields visit) {
    return visit.tree("locates") instanceof Tree.Items rows
        && rows.items().stream()
            .anyMatch(row -> row instanceof Tree.Keys keys && keys.members().containsKey("cable"));
  }

  /** The one push of a book that does not speak of pushes: from the only entry, zeroed there. */
  private List<Pass> supplied(Fields visit) {
    Reach reach = site.onlyReach();
    if (reach == null) {
      // Cable readings without a pass are found later, each in its place.
      PUSHED.stream()
          .filter(visit::has)
          .findFirst()
          .ifPresent(key -> visit.complain(FileTrouble.PASS_NEEDED, key));
      return List.of();
    }
    String entry = site.onlyAccess();
    Id id = clerk.supplied("pass", "P", visit.places());
    Pushed pushed = pushed(List.of(visit));
    Reading zero = new Reading(0, null, "0 m");
    return List.of(
        new Pass(
            id,
            entry == null ? reach.from() : entry,
            List.of(new Pass.Leg(reach.label(), true)),
            new Pass.Zero.Reads(zero),
            Pass.Head.UNKNOWN,
            pushed.end(),
            pushed.sight(),
            pushed.findings(),
            pushed.bends(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            null,
            null,
            null));
  }

  private Pass pass(Fields row, Id id, List<Fields> pushes) {
    List<Pass.Leg> walk = walk(row);
    Pushed pushed = pushed(pushes);
    CounterReader counter = new CounterReader(clerk);
    return new Pass(
        id,
        entry(row, walk),
        walk,
        zero(row.part("zero")),
        row.choice("head", Pass.Head.class, Pass.Head.UNKNOWN),
        pushed.end(),
        pushed.sight(),
        pushed.findings(),
        pushed.bends(),
        counter.checks(row),
        counter.resets(row),
        counter.anchors(row),
        counter.corrections(row),
        row.words("after"),
        moments.read(row, "start"),
        row.words("remark"));
  }

  private String entry(Fields row, List<Pass.Leg> walk) {
    String only = site.onlyAccess();
    if (row.has("entry") || only == null) {
      return row.wantedWords("entry");
    }
    return walk.isEmpty() ? row.wantedWords("entry") : only;
  }

  private List<Pass.Leg> walk(Fields row) {
    Reach only = site.onlyReach();
    if (!row.has("walk") && only != null) {
      return List.of(new Pass.Leg(only.label(), true));
    }
    if (!row.has("walk")) {
      row.complain(FormTrouble.MISSING, "walk", new Argument.Text("walk"));
    }
    List<Pass.Leg> walk = new ArrayList<>();
    row.eachItem(
        "walk",
        (tree, place) -> {
          if (tree instanceof Tree.Text reach) {
            walk.add(new Pass.Leg(reach.text(), true));
            return;
          }
          Fields leg = row.item(tree, place, "walk");
          if (leg != null) {
            var turn = leg.choice("turn", BookShape.Turn.class, BookShape.Turn.SEEN);
            walk.add(new Pass.Leg(leg.wantedWords("reach"), turn == BookShape.Turn.SEEN));
          }
        });
    return walk;
  }

  private static Pass.Zero zero(@Nullable Fields zero) {
    if (zero == null) {
      return new Pass.Zero.Unknown("not recorded");
    }
    Reading reads = zero.reading("reads");
    if (reads != null && zero.has("unknown")) {
      zero.complain(
          FileTrouble.ONE_OF, "unknown", new Argument.Choices(List.of("reads", "unknown")));
    }
    return reads == null
        ? new Pass.Zero.Unknown(SiteReader.unknown(zero))
        : new Pass.Zero.Reads(reads);
  }

  /** What was met on the way of one push. */
  private record Pushed(
      Pass.@Nullable End end, List<Pass.Sight> sight, List<Finding> findings, List<Bend> bends) {}

  private Pushed pushed(List<Fields> pushes) {
    Pass.End end = null;
    List<Pass.Sight> sight = new ArrayList<>();
    List<Finding> seen = new ArrayList<>();
    List<Bend> bends = new ArrayList<>();
    for (Fields push : pushes) {
      Pass.End here = end(push.part("end"));
      end = here == null ? end : here;
      push.rows("sight").forEach(row -> sight(row, sight));
      push.rows("findings").forEach(row -> findings.read(row, seen));
      push.rows("bends").forEach(row -> clerk.keep(bends, row, bend(row)));
    }
    return new Pushed(end, sight, seen, bends);
  }

  private static Pass.@Nullable End end(@Nullable Fields end) {
    if (end == null) {
      return null;
    }
    Pass.End read =
        new Pass.End(
            end.wantedReading("cable"),
            end.choice("why", Pass.Why.class, Pass.Why.UNKNOWN),
            end.words("node"));
    return end.sound() ? read : null;
  }

  private static void sight(Fields row, List<Pass.Sight> sight) {
    Pass.Sight read =
        new Pass.Sight(
            row.wantedReading("from"),
            row.wantedReading("to"),
            row.wantedChoice("clarity", Pass.Clarity.class));
    if (row.sound()) {
      sight.add(read);
    }
  }

  private Bend bend(Fields row) {
    return new Bend(
        clerk.name(row, "bend", "bend-"),
        row.wantedReading("cable"),
        row.wantedReading("angle"),
        row.choice("sense", Bend.Sense.class, Bend.Sense.UNKNOWN));
  }
}
