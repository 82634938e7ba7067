package daylight.report.view;

import daylight.line.book.Finding;
import daylight.line.book.Place;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Printed;
import daylight.line.survey.ErrorEllipse;
import daylight.report.draw.Captions;
import daylight.report.draw.Coverage;
import daylight.report.draw.Drawn;
import daylight.report.draw.PlanDrawing;
import daylight.report.draw.ProfileDrawing;
import daylight.report.draw.Spot;
import daylight.report.draw.StripDrawing;
import daylight.report.draw.Subject;
import daylight.report.words.FindingWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The door: the drawings of a line with the table by which one cursor runs through them. */
public final class Views {
  private final Subject subject;
  private final Words words;
  private final UnaryOperator<String> pictures;
  private final Coverage coverage;
  private final List<Stretch> stretches = new ArrayList<>();
  private final List<Sample> samples = new ArrayList<>();
  private final Map<String, TreeMap<Double, Integer>> byReach = new HashMap<>();
  private final List<Thing> things = new ArrayList<>();
  private final Map<Side, List<Face>> faces = new EnumMap<>(Side.class);

  /**
   * A route among the samples.
   *
   * @param from its first sample
   * @param to its last
   */
  record Stretch(Route route, int from, int to) {}

  private Views(Subject subject, UnaryOperator<String> pictures) {
    this.subject = subject;
    this.words = subject.words();
    this.pictures = pictures;
    this.coverage = Coverage.of(subject);
    for (Ways.Way way : Ways.of(subject)) {
      int from = samples.size();
      way.places().forEach(this::take);
      stretches.add(new Stretch(way.route(), from, samples.size() - 1));
    }
    name();
  }

  /** Draws a line from three sides, each on one sheet as high as it takes. */
  public static Views of(Subject subject) {
    return new Views(subject, _ -> "")
        .drawn(Side.PLAN, List.of(PlanDrawing.drawn(subject)))
        .drawn(Side.PROFILE, List.of(ProfileDrawing.drawn(subject)))
        .drawn(Side.STRIP, List.of(StripDrawing.drawn(subject)));
  }

  /**
   * Draws it on sheets of paper, as many as it takes.
   *
   * @param pictures the id of the picture of a finding, by its label; empty where there is none
   */
  public static Views onSheets(Subject subject, UnaryOperator<String> pictures) {
    return new Views(subject, pictures)
        .drawn(Side.PLAN, PlanDrawing.drawnSheets(subject))
        .drawn(Side.PROFILE, ProfileDrawing.drawnSheets(subject))
        .drawn(Side.STRIP, StripDrawing.drawnSheets(subject));
  }

  private Views drawn(Side side, List<Drawn> sheets) {
    List<Face> all = new ArrayList<>();
    for (Drawn sheet : sheets) {
      String name = all.isEmpty() ? side.word() : side.word() + "-" + (all.size() + 1);
      List<Optional<Spot>> spots =
          samples.stream().map(sample -> sheet.at(sample.place())).toList();
      all.add(new Face(name, sheet.sheet(), spots));
    }
    faces.put(side, all);
    return this;
  }

  /** The sheets of a side, of which there is at least one. */
  public List<Face> faces(Side side) {
    return Objects.requireNonNull(faces.get(side));
  }

  /** All sheets that show a place of the line. */
  List<Face> showing() {
    return faces.values().stream().flatMap(List::stream).filter(Face::shows).toList();
  }

  /** Whether there is any place along it to go to. */
  public boolean isEmpty() {
    return samples.isEmpty();
  }

  /** The id of what tells more of a finding on a page. */
  public static String finding(Finding finding) {
    return "finding-" + finding.id().uuid();
  }

  Subject subject() {
    return subject;
  }

  List<Stretch> stretches() {
    return stretches;
  }

  List<Sample> samples() {
    return samples;
  }

  List<Thing> things() {
    return things;
  }

  /** The sample nearest to a place; empty where its reach has none. */
  Optional<Integer> nearest(Place place) {
    TreeMap<Double, Integer> along = byReach.get(place.reach());
    if (along == null) {
      return Optional.empty();
    }
    Map.Entry<Double, Integer> below = along.floorEntry(place.distance());
    Map.Entry<Double, Integer> above = along.ceilingEntry(place.distance());
    boolean ahead =
        below == null
            || (above != null
                && above.getKey() - place.distance() < place.distance() - below.getKey());
    return Optional.ofNullable(ahead ? above : below).map(Map.Entry::getValue);
  }

  private void take(Place place) {
    byReach
        .computeIfAbsent(place.reach(), _ -> new TreeMap<>())
        .put(place.distance(), samples.size());
    samples.add(sample(place));
  }

  private Sample sample(Place place) {
    Optional<Run.Path.Found> path =
        subject
            .line()
            .findRun(place.reach())
            .map(Run::path)
            .filter(Run.Path.Found.class::isInstance)
            .map(Run.Path.Found.class::cast);
    return new Sample(
        place,
        subject.distance(place),
        path.flatMap(found -> depth(found.nearest(place.distance()).depth())),
        path.map(found -> found.nearest(place.distance()).spread())
            .map(spread -> ErrorEllipse.of(spread, 0.95).semiMajor())
            .map(words::length),
        coverage.at(place));
  }

  private Optional<String> depth(@Nullable Measured depth) {
    if (depth == null) {
      return Optional.empty();
    }
    Printed printed = words.length(depth);
    return Optional.of(printed.value() + " " + printed.plusMinus());
  }

  /** Gathers what has a name: nodes, what was seen, what was found from the ground. */
  private void name() {
    for (Stretch stretch : stretches) {
      List<Run> runs = stretch.route().runs();
      node(runs.getFirst(), runs.getFirst().reach().upstream(), 0);
      for (Run run : runs) {
        node(run, run.reach().downstream(), Route.extent(run));
      }
    }
    FindingWords said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    for (PlacedFinding placed : Captions.findings(subject)) {
      Place to = placed.to() == null ? placed.from() : placed.to();
      String what = placed.finding().label() + " " + said.what(placed);
      String picture = pictures.apply(placed.finding().label());
      add(finding(placed.finding()), what, picture, placed.from(), to);
    }
    for (LocateFit fit : subject.line().locates()) {
      String what = words.say("web.line.locate", new Argument.Label(fit.entry().label()));
      add("entry-" + fit.entry().uuid(), what, "", fit.place(), fit.place());
    }
    things.sort(Comparator.comparingInt(Thing::from).thenComparingInt(Thing::to));
  }

  private void node(Run run, String label, double distance) {
    if (subject.reached(run, label)) {
      Place at = run.at(distance);
      add("", Captions.node(subject, label), "", at, at);
    }
  }

  private void add(String id, String says, String picture, Place from, Place to) {
    Optional<Integer> first = nearest(from);
    Optional<Integer> last = nearest(to);
    if (first.isPresent() && last.isPresent()) {
      things.add(
          new Thing(
              id,
              says,
              picture,
              Math.min(first.get(), last.get()),
              Math.max(first.get(), last.get())));
    }
  }
}
