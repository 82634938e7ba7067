package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.counter.Tracks;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Adjustment;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.LevelAdjustment;
import daylight.line.survey.Survey;
import daylight.line.survey.Surveyor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The door of this room: from a field book to the line.
 *
 * <p>Each line of the site is a tree of pipes with a position and a direction at every knot. What
 * is known of it is put into one nonlinear least-squares adjustment: spots of locates, exposures
 * and nodes with the full covariance of the survey; depth readings with a receiver scale for the
 * visit, distortion that neighbours share and noise of their own; levels of ground and invert;
 * counter readings with scale, slack and zero; bends seen; and that pipes are straight and about
 * level where nothing says otherwise. What the rest contradicts is put aside and told. Everything
 * comes out with covariance and with the entries it rests on. The mathematics: {@code
 * docs/estimator.md}.
 */
public final class Estimator {
  /** No camera is pushed further, metres; common practice, no source. */
  private static final double LONGEST = 1500;

  private final FieldBook book;
  private final Tracks tracks;
  private final Priors priors;
  private final Spacing spacing;
  private final List<Statement> doubts = new ArrayList<>();

  private Estimator(FieldBook book, Tracks tracks, Priors priors, Spacing spacing) {
    this.book = Ordered.of(book, tracks);
    this.tracks = tracks;
    this.priors = priors;
    this.spacing = spacing;
  }

  /**
   * Estimates every line of a site from all its visits.
   *
   * @param book what was measured
   * @param tracks what the counter in the footage showed, where it was read
   * @param priors how good each kind of measurement is where the book does not say
   * @return the line; what could not be estimated says why
   */
  public static Line estimate(FieldBook book, Tracks tracks, Priors priors) {
    return estimate(book, tracks, priors, Spacing.USUAL);
  }

  /**
   * The same with stations as near to each other as wanted.
   *
   * @param spacing how far apart stations and knots may be
   */
  public static Line estimate(FieldBook book, Tracks tracks, Priors priors, Spacing spacing) {
    return new Estimator(book, tracks, priors, spacing).estimate(book.site().reaches());
  }

  private Line estimate(List<Reach> reaches) {
    Survey surveyed = Surveyor.survey(book, priors);
    Adjustment survey = surveyed.plan();
    LevelAdjustment levels = surveyed.levels();
    doubts.addAll(surveyed.doubts());
    @Nullable Adjusted plan = survey instanceof Adjusted adjusted ? adjusted : null;
    @Nullable LevelAdjusted heights = levels instanceof LevelAdjusted adjusted ? adjusted : null;
    List<Solved> solved = new ArrayList<>();
    List<Solved> dry = new ArrayList<>();
    Map<String, Run> runs = new LinkedHashMap<>();
    List<PlacedFinding> findings = new ArrayList<>();
    List<PlacedSight> sights = new ArrayList<>();
    List<PlacedPass> passes = new ArrayList<>();
    List<LocateFit> locates = new ArrayList<>();
    List<CableGap> gaps = new ArrayList<>();
    for (Tree tree : trees()) {
      Prepared prepared = prepare(tree, plan, heights);
      Placing placing = new Placing(book, tracks, prepared.model(), prepared.solved(), spacing);
      runs.putAll(placing.runs(prepared.missing()));
      findings.addAll(placing.findings());
      sights.addAll(placing.sights());
      doubts.addAll(placing.doubts());
      passes.addAll(placing.passes());
      Solved line = prepared.solved();
      if (line != null) {
        solved.add(line);
        dry.add(line.model().gathered().ponds().isEmpty() ? line : dry(tree, plan, heights));
        Fits fits = new Fits(line);
        locates.addAll(fits.locates());
        Reckoning reckoning = new Reckoning(line);
        gaps.addAll(reckoning.gaps());
        doubts.addAll(SurfaceTies.missing(line.model()));
        doubts.addAll(fits.doubts());
        doubts.addAll(reckoning.doubts());
      }
    }
    List<Run> inOrder = reaches.stream().map(r -> required(runs.get(r.label()))).toList();
    return new Line(
        survey,
        levels,
        inOrder,
        findings,
        sights,
        passes,
        locates,
        gaps,
        doubts,
        new JointOfLines(solved, dry));
  }

  private List<Tree> trees() {
    return book.site().reaches().stream()
        .map(Reach::line)
        .distinct()
        .flatMap(line -> Tree.grow(book, line).stream())
        .toList();
  }

  /**
   * A line ready to be placed.
   *
   * @param solved its estimate; null where its course is not known
   * @param missing what is missing then; null otherwise
   */
  private record Prepared(Model model, @Nullable Solved solved, @Nullable Statement missing) {}

  private Prepared prepare(Tree tree, @Nullable Adjusted plan, @Nullable LevelAdjusted levels) {
    Gathered gathered = gathered(tree, true, plan, levels);
    double[] shared = Start.shared(gathered, book, priors);
    Model model = model(gathered, shared);
    doubts.addAll(gathered.suspicions());
    doubts.addAll(Marks.withoutCable(book, gathered.walks()));
    assumedOffsets(gathered.marks());
    Statement missing = missing(tree.line(), model, shared);
    if (missing != null) {
      doubts.addAll(Unlaid.contradictions(model, shared));
      return new Prepared(model, null, missing);
    }
    Suspicion.Cleared cleared = Suspicion.clear(Fit.fit(model, shared));
    if (!cleared.fitted().settled()) {
      doubts.add(Statement.of(CourseKey.NOT_SETTLED, new Argument.Label(tree.line())));
    }
    Solved solved = new Solved(cleared);
    return new Prepared(solved.model(), solved, null);
  }

  private Gathered gathered(
      Tree tree, boolean water, @Nullable Adjusted plan, @Nullable LevelAdjusted levels) {
    Gathered gathered = Gathered.of(book, tree, true, water, plan, levels, priors);
    return Enough.forHeights(gathered)
        ? gathered
        : Gathered.of(book, tree, false, water, plan, levels, priors);
  }

  /**
   * A line of many kilometres is a slip of the pen: it is laid out coarser, so that what
   * contradicts it is told in seconds.
   */
  private Model model(Gathered gathered, double[] shared) {
    double longer = Math.max(1, Arrays.stream(gathered.lengths().metres()).sum() / LONGEST);
    double knots = spacing.knots() * longer * longer;
    return new Model(gathered, knots, shared, SetAside.NOTHING, Wander.none());
  }

  /** The same line as if no still water had been seen. */
  private Solved dry(Tree tree, @Nullable Adjusted plan, @Nullable LevelAdjusted levels) {
    Gathered gathered = gathered(tree, false, plan, levels);
    double[] shared = Start.shared(gathered, book, priors);
    return new Solved(Suspicion.clear(Fit.fit(model(gathered, shared), shared)));
  }

  /**
   * A transmitter whose place behind the lens nobody noted makes every locate of its visit unsure.
   */
  private void assumedOffsets(List<Mark> marks) {
    for (Visit visit : book.visits()) {
      boolean used =
          marks.stream()
              .anyMatch(
                  mark ->
                      mark.visit().equals(visit.label())
                          && mark.position() instanceof Mark.Position.ByCable by
                          && by.behind() >= 0);
      if (used && visit.kit().sondeBehindLens() == null) {
        double taken = priors.recordedOrTypical(Priors.Kind.SONDE_BEHIND_LENS, null).value();
        Statement doubt = Statement.of(CourseKey.SONDE_OFFSET_ASSUMED, new Argument.Length(taken));
        if (!doubts.contains(doubt)) {
          doubts.add(doubt);
        }
      }
    }
  }

  /** A course needs two spots; it says which measurement is missing where there are fewer. */
  private static @Nullable Statement missing(String label, Model model, double[] shared) {
    List<Pinned> spotted = model.spotted();
    if (spotted.isEmpty()) {
      return Statement.of(CourseKey.NO_SPOTS, new Argument.Label(label));
    }
    if (Enough.spanOf(model, shared) < Enough.SHORTEST_BASE) {
      return Statement.of(
          CourseKey.ONE_SPOT,
          new Argument.Label(spotted.getFirst().mark().label()),
          new Argument.Label(label));
    }
    return null;
  }

  private static Run required(@Nullable Run run) {
    if (run == null) {
      throw new IllegalStateException("every reach of a book is on a tree of its line");
    }
    return run;
  }
}
