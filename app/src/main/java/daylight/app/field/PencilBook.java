package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Entered;
import daylight.line.book.Catalogue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The entries of a book that a pencil sheet makes: those that the pages of the push and the walk
 * would have written with a thumb. What cannot be is told cell by cell, and its row is left out.
 */
final class PencilBook extends PencilCells {
  /** Which cell a key of a finding is typed into, where their names differ. */
  private static final Map<String, String> FINDING =
      Map.of("kind", "kind", "cable", "at", "from", "at", "to", "until", "clock", "clock");

  private final UUID site;
  private final PushForm push;
  private final Labels labels;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, @Nullable String> later = new LinkedHashMap<>();

  PencilBook(
      Caller caller,
      BookNow book,
      BookNow.Row visit,
      UUID site,
      Pencil pencil,
      PushForm push,
      Trouble trouble) {
    super(caller, book, visit, pencil, trouble);
    this.site = site;
    this.push = push;
    this.labels = new Labels(book);
  }

  /** Everything that is written on the sheet, in the order in which each names the one before. */
  List<Step> steps() {
    pencil.walk().forEach(row -> labels.reserve(row.text("label")));
    pencil.marks().forEach(this::mark);
    List<Step> seen = new ArrayList<>();
    pencil.push().forEach(row -> seen.addAll(finding(row)));
    boolean pushed = isPushed(seen);
    boolean begun = pushed && pass();
    if (begun || !pushed) {
      steps.addAll(seen);
    }
    List<String> wall = wall();
    for (Pencil.Row row : pencil.walk()) {
      Optional<Step> spot = locate(row, wall);
      if (begun || row.text("cable").isEmpty()) {
        spot.ifPresent(steps::add);
      }
    }
    camera();
    if (steps.isEmpty() && trouble.isEmpty()) {
      trouble.at(pencil.push().getFirst().name("kind"), phrases.say("pencil.nothing"));
    }
    return steps;
  }

  /** The camera is of the visit, not of the push. */
  private void camera() {
    String camera = pencil.text("camera");
    if (!camera.isEmpty() && visit.text("kit", "camera").filter(camera::equals).isEmpty()) {
      ObjectNode keys = EntryJson.keys(visit);
      keys.withObject("/kit").put("camera", camera);
      steps.add(
          new Step(
              EntryJson.changed(visit.entry(), site, "visits", visit.number(), keys),
              null,
              Map.of(),
              "camera"));
    }
  }

  private boolean isPushed(List<Step> seen) {
    return !seen.isEmpty()
        || !later.isEmpty()
        || !pencil.text("end-cable").isEmpty()
        || pencil.walk().stream().anyMatch(row -> !row.text("cable").isEmpty());
  }

  // The push.

  /** Which push the rows belong to: one that is noted, or the one that this sheet begins. */
  private UUID passId() {
    return chosenPass().map(BookNow.Row::entry).orElseGet(push::pass);
  }

  private Optional<BookNow.Row> chosenPass() {
    return Office.id(pencil.text("push"))
        .flatMap(book::find)
        .filter(row -> row.section().equals("passes"));
  }

  private String passLabel() {
    return PushForm.label(book, passId(), "P");
  }

  /** Begins the push, or adds to one that is noted; false where it cannot be begun. */
  private boolean pass() {
    ObjectNode more = EntryJson.object();
    length("end-cable")
        .ifPresent(
            cable -> {
              String why = pencil.text("end-why");
              more.putObject("end").put("cable", cable).put("why", why.isEmpty() ? "unknown" : why);
            });
    Optional<BookNow.Row> now = book.find(passId());
    String remark = now.flatMap(row -> row.text("remark")).orElse("");
    String told = PencilLater.with(remark, later);
    if (!told.equals(remark)) {
      more.put("remark", told.isEmpty() ? null : told);
    }
    int base = now.map(BookNow.Row::number).orElse(0);
    if (chosenPass().isPresent()) {
      if (!more.isEmpty()) {
        ObjectNode keys = EntryJson.keys(now.orElseThrow());
        keys.setAll(more);
        step(EntryJson.changed(passId(), visit.entry(), "passes", base, keys));
      }
      return true;
    }
    Optional<String> zero = push.zero().isEmpty() ? Optional.of("") : length("zero");
    if (zero.isEmpty() || trouble.of("end-cable") != null) {
      return false;
    }
    push.with(zero.get()).entries(book, site, visit.entry(), base, more).forEach(this::step);
    return true;
  }

  private void step(Entered entered) {
    Map<String, String> cells =
        switch (entered.section()) {
          case "passes" ->
              Map.of("reads", "zero", "walk", "reach", "cable", "end-cable", "why", "end-why");
          case "reaches" -> Map.of("bore", "bore", "from", "entry");
          default -> Map.of("what", "what");
        };
    String otherwise = entered.section().equals("reaches") ? "reach" : "entry";
    steps.add(new Step(entered, null, cells, otherwise));
  }

  /** A finding, a bend with its angle, or (empty) a line of the remark for one without distance. */
  private List<Step> finding(Pencil.Row row) {
    if (row.isEmpty()) {
      return emptied(row);
    }
    Optional<Catalogue.Kind> kind = words.kind(row.text("kind"));
    if (kind.isEmpty()) {
      String text = row.text("kind");
      tell(row, "kind", text.isEmpty() ? "pencil.kind.wanted" : "pencil.kind", text);
    }
    ObjectNode keys = EntryJson.object();
    Optional<String> at = length(row, "at");
    Optional<String> until = length(row, "until");
    Optional<String> time = checked(row, "time", "pencil.time", PencilWords::time);
    checked(row, "clock", "pencil.clock", PencilWords::clock)
        .ifPresent(clock -> keys.put("clock", clock));
    String size = row.text("size");
    if (kind.isPresent() && !size.isEmpty()) {
      words
          .sizes(kind.get(), size)
          .ifPresentOrElse(
              sizes -> sizes.forEach(keys::put),
              () ->
                  tell(
                      row,
                      "size",
                      sizeless(kind.get()),
                      size,
                      phrases.kind(kind.get().id()),
                      words.told(kind.get())));
    }
    if (!row.text("until").isEmpty() && row.text("at").isEmpty()) {
      tell(row, "at", "pencil.from");
    } else if (row.text("at").isEmpty() && row.text("time").isEmpty()) {
      tell(row, "at", "pencil.place");
    }
    if (kind.isEmpty() || isTroubled(row)) {
      return List.of();
    }
    return seen(row, kind.get(), keys, at.orElse(null), until.orElse(null), time.orElse(null));
  }

  private static String sizeless(Catalogue.Kind kind) {
    return kind.quantities().isEmpty() && kind.words().isEmpty()
        ? "pencil.size.none"
        : "pencil.size";
  }

  private List<Step> seen(
      Pencil.Row row,
      Catalogue.Kind kind,
      ObjectNode sizes,
      @Nullable String at,
      @Nullable String until,
      @Nullable String time) {
    if (at != null && until == null && kind.id().equals("bend") && sizes.has("angle")) {
      later.putIfAbsent(row.id().toString(), null);
      return bend(row, sizes, at);
    }
    ObjectNode keys = EntryJson.object();
    keys.put("label", labels.of(row.id(), "F")).put("kind", kind.id());
    if (!pencil.text("pulling").isEmpty()) {
      keys.put("moving", "pulling");
    }
    String id = row.id().toString();
    if (at == null) {
      keys.setAll(sizes);
      String remark = row.text("remark");
      keys.put("remark", remark.isEmpty() ? null : remark);
      later.put(id, PencilLater.line(id, time == null ? "" : time, keys));
      return emptied(row);
    }
    later.putIfAbsent(id, null);
    if (until == null) {
      keys.put("cable", at);
    } else {
      boolean forward = PencilWords.metres(at).orElse(0.0) <= PencilWords.metres(until).orElse(0.0);
      keys.put("from", forward ? at : until).put("to", forward ? until : at);
    }
    keys.setAll(sizes);
    String said = row.text("remark");
    String timed = time == null ? said : (said + " " + phrases.say("pencil.picture", time)).strip();
    keys.put("remark", timed.isEmpty() ? null : timed);
    return List.of(entered(row, row.id(), passId(), "findings", keys, FINDING, "size"));
  }

  /** By a bend with an angle the course is drawn, so it stands among the bends of the push. */
  private List<Step> bend(Pencil.Row row, ObjectNode sizes, String at) {
    ObjectNode keys = EntryJson.object().put("label", labels.of(row.id(), "bend-"));
    keys.put("cable", at);
    keys.set("angle", sizes.get("angle"));
    keys.set("sense", sizes.get("sense"));
    return List.of(entered(row, row.id(), passId(), "bends", keys, FINDING, "size"));
  }

  /** What the archive has of a row that says nothing more is withdrawn. */
  private List<Step> emptied(Pencil.Row row) {
    if (row.isEmpty() && row.letter() == 'p') {
      book.find(passId())
          .flatMap(pass -> pass.text("remark"))
          .filter(remark -> remark.contains("(" + row.text("id") + ")"))
          .ifPresent(remark -> later.put(row.text("id"), null));
    }
    return withdrawn(row);
  }

  // The walk.

  private void mark(Pencil.Row row) {
    if (row.isEmpty()) {
      steps.addAll(emptied(row));
      return;
    }
    String label = row.text("label");
    if (label.isEmpty()) {
      tell(row, "label", "pencil.mark.wanted");
      return;
    }
    ObjectNode keys = EntryJson.object().put("label", label);
    keys.put("kind", row.text("kind").isEmpty() ? null : row.text("kind"));
    keys.put("what", row.text("what").isEmpty() ? null : row.text("what"));
    Map<String, String> columns = Map.of("label", "label", "what", "what", "kind", "kind");
    steps.add(entered(row, row.id(), site, "landmarks", keys, columns, "label"));
  }

  /**
   * The wall at one's back where a row names none: the one that carries the grid. Where there is
   * none yet its two ends are named, as the page of the walk does.
   */
  private List<String> wall() {
    List<BookNow.Row> marks = book.in("landmarks").toList();
    List<String> ends = new ArrayList<>();
    marks.stream()
        .filter(row -> row.text("base").filter(Set.of("yes", "true")::contains).isPresent())
        .map(BookNow.Row::label)
        .forEach(ends::add);
    marks.stream().map(BookNow.Row::label).filter(one -> !ends.contains(one)).forEach(ends::add);
    pencil.marks().stream()
        .map(row -> row.text("label"))
        .filter(one -> !one.isEmpty() && !ends.contains(one))
        .forEach(ends::add);
    boolean wanted =
        pencil.walk().stream()
            .anyMatch(row -> !row.text("along").isEmpty() && row.text("wall").isEmpty());
    if (wanted && ends.isEmpty()) {
      for (String end : List.of("a", "b")) {
        String label = end.toUpperCase(Locale.ROOT);
        ObjectNode keys = EntryJson.object().put("label", label).put("kind", "corner");
        keys.put("what", phrases.say(end.equals("a") ? "walk.js.wall.zero" : "walk.js.wall.end"));
        keys.put("base", "yes");
        UUID entry = pencil.id("wall-" + end);
        steps.add(
            new Step(
                EntryJson.fresh(entry, site, "landmarks", keys),
                null,
                Map.of(),
                pencil.walk().getFirst().name("wall")));
        ends.add(label);
      }
    }
    return ends.size() < 2 ? List.of() : List.copyOf(ends.subList(0, 2));
  }

  private Optional<Step> locate(Pencil.Row row, List<String> wall) {
    if (row.isEmpty()) {
      return emptied(row).stream().findFirst();
    }
    ObjectNode keys = EntryJson.object();
    String label = row.text("label");
    keys.put("label", label.isEmpty() ? labels.of(row.id(), "L") : label);
    keys.put("pass", row.text("cable").isEmpty() ? null : passLabel());
    String surface = row.text("surface");
    keys.put("surface", surface.isEmpty() ? null : words.surface(surface));
    checked(row, "time", "pencil.time", PencilWords::time)
        .ifPresent(time -> keys.put("time", time));
    for (String column : List.of("cable", "along", "out", "depth", "receiver-height")) {
      length(row, column).ifPresent(length -> keys.put(column, length));
    }
    if (row.text("along").isEmpty() != row.text("out").isEmpty()) {
      tell(row, row.text("along").isEmpty() ? "along" : "out", "walk.js.check.both");
    }
    Set<String> known = known();
    known.addAll(wall);
    wall(row, keys, wall, known);
    ties(row, keys, known);
    keys.put("remark", row.text("remark").isEmpty() ? null : row.text("remark"));
    if (isTroubled(row)) {
      return Optional.empty();
    }
    Map<String, String> columns = new HashMap<>();
    Pencil.WALK.forEach(column -> columns.put(column, column));
    for (String one : List.of("1", "2")) {
      columns.put(row.text("to" + one), "tie" + one);
    }
    return Optional.of(entered(row, row.id(), visit.entry(), "locates", keys, columns, "label"));
  }

  private void wall(Pencil.Row row, ObjectNode keys, List<String> usual, Set<String> known) {
    String text = row.text("wall");
    if (row.text("along").isEmpty()) {
      return;
    }
    List<String> ends =
        text.isEmpty() ? usual : List.of(text.strip().split("\\s*[-–,/\\s]\\s*", -1));
    if (ends.size() != 2 || !known.containsAll(ends) || ends.get(0).equals(ends.get(1))) {
      tell(row, "wall", "pencil.wall", text);
    } else {
      ends.forEach(keys.withArray("wall")::add);
    }
  }

  private void ties(Pencil.Row row, ObjectNode keys, Set<String> known) {
    for (String one : List.of("1", "2")) {
      String to = row.text("to" + one);
      Optional<String> tape = length(row, "tie" + one);
      if (to.isEmpty() != row.text("tie" + one).isEmpty()) {
        tell(row, to.isEmpty() ? "to" + one : "tie" + one, "pencil.tie");
      } else if (!to.isEmpty() && !known.contains(to)) {
        tell(row, "to" + one, "pencil.mark", to);
      } else if (!to.isEmpty() && keys.path("ties").has(to)) {
        tell(row, "to" + one, "pencil.tie.twice", to);
      } else {
        tape.ifPresent(length -> keys.withObject("/ties").put(to, length));
      }
    }
  }
}
