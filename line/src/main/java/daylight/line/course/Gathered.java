package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.normal.Gradient;
import daylight.line.sonde.Trap;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.LevelAdjusted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is observed or assumed of one line, before its pipes are laid out.
 *
 * @param suspicions the traps that locates look like
 * @param ponds the still waters seen
 * @param plan what the surveyed spots err by together and apart; null without a survey
 * @param levelled the heights of marks that were levelled
 * @param heights what those err by together and apart; null without levels
 * @param surveyed which entries the readings of survey and levels are
 */
record Gathered(
    FieldBook book,
    Layout layout,
    Lengths lengths,
    Walks walks,
    List<Mark> marks,
    List<Statement> suspicions,
    List<Turn> turns,
    List<Pond> ponds,
    @Nullable Adjusted survey,
    @Nullable Common plan,
    @Nullable LevelAdjusted levels,
    List<LevelledMark> levelled,
    @Nullable Common heights,
    Priors priors,
    Surveyed surveyed) {

  /**
   * A height that was levelled.
   *
   * @param name of it in the level network
   * @param above how far what was levelled lies above the invert, metres; of no meaning for ground
   */
  record LevelledMark(Mark mark, Level.Part part, String name, double above) {}

  /**
   * Gathers it.
   *
   * @param heights whether heights are asked for
   * @param water whether still water that was seen counts
   */
  static Gathered of(
      FieldBook book,
      Tree tree,
      boolean heights,
      boolean water,
      @Nullable Adjusted survey,
      @Nullable LevelAdjusted levels,
      Priors priors) {
    Lengths lengths = Lengths.guess(book, tree, priors);
    Layout layout = new Layout(tree, lengths.metres(), heights);
    Walks walks = new Walks(book, layout, priors);
    Marks.Found found = Marks.gather(book, layout, lengths, walks, priors, levels);
    List<Mark> marks = found.marks();
    Common plan = survey == null ? null : plan(marks, survey);
    List<LevelledMark> levelled =
        levels == null || !heights ? List.of() : levelled(marks, layout, levels);
    Common common = levels == null || !heights ? null : heights(levelled, levels);
    for (int column = 0; plan != null && column < plan.columns(); column++) {
      layout.named(planError(column));
    }
    for (int column = 0; common != null && column < common.columns(); column++) {
      layout.named(heightError(column));
    }
    double[] start = Start.shared(layout, walks, marks, book, priors, levels);
    List<Turn> turns = Turn.of(book, lengths, walks, priors, start);
    List<Pond> ponds = heights && water ? Pond.of(book, layout, walks, priors, start) : List.of();
    ponds.forEach(pond -> layout.named(pond.name()));
    layout.close();
    return new Gathered(
        book,
        layout,
        lengths,
        walks,
        marks,
        together(found.suspicions()),
        turns,
        ponds,
        survey,
        plan,
        levels,
        levelled,
        common,
        priors,
        Surveyed.of(book));
  }

  /** That a pipe is of iron is said once, and not of each of its locates. */
  private static List<Statement> together(List<Statement> statements) {
    Map<List<Object>, List<Argument>> same = new LinkedHashMap<>();
    for (Statement statement : statements) {
      if (statement.key() != Trap.IRON_PIPE) {
        continue;
      }
      List<Argument> rest = statement.arguments().subList(1, statement.arguments().size());
      same.computeIfAbsent(List.of(statement.key(), rest), key -> new ArrayList<>())
          .add(statement.arguments().getFirst());
    }
    List<Statement> together = new ArrayList<>();
    for (Statement statement : statements) {
      if (statement.key() != Trap.IRON_PIPE) {
        together.add(statement);
        continue;
      }
      List<Argument> rest = statement.arguments().subList(1, statement.arguments().size());
      List<Argument> of = same.remove(List.of(statement.key(), rest));
      if (of != null) {
        List<Argument> arguments = new ArrayList<>(rest);
        arguments.addFirst(of.size() == 1 ? of.getFirst() : new Argument.Several(of));
        together.add(new Statement(statement.key(), arguments));
      }
    }
    return together;
  }

  /** The name of the unknown for one thing that surveyed spots err by together. */
  static String planError(int column) {
    return "plan/" + column;
  }

  /** The name of the unknown for one thing that levelled heights err by together. */
  static String heightError(int column) {
    return "height/" + column;
  }

  /** Points of the survey that are no marks, in order of label: the marks hang on them. */
  private static List<String> helpers(List<Mark> spotted, Adjusted survey) {
    Set<String> labels = new LinkedHashSet<>(survey.points().keySet());
    spotted.forEach(mark -> labels.remove(mark.label()));
    return List.copyOf(labels);
  }

  private static Common plan(List<Mark> marks, Adjusted survey) {
    List<Mark> spotted = marks.stream().filter(mark -> spotted(mark, survey)).toList();
    List<String> labels = new ArrayList<>(spotted.stream().map(Mark::label).toList());
    List<String> helpers = helpers(spotted, survey);
    labels.addAll(helpers);
    int n = labels.size();
    DMatrixRMaj covariance = new DMatrixRMaj(2 * n, 2 * n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        Covariance2 c = survey.covariance(labels.get(i), labels.get(j));
        covariance.set(2 * i, 2 * j, c.xx());
        covariance.set(2 * i, 2 * j + 1, c.xy());
        covariance.set(2 * i + 1, 2 * j, c.yx());
        covariance.set(2 * i + 1, 2 * j + 1, c.yy());
      }
    }
    return Common.of(covariance, spotted.size(), helpers.size(), 2);
  }

  /**
   * Takes a surveyed point off a place: its shared errors off the place's derivatives, its own
   * added to a covariance (xx, xy, yy).
   */
  void take(String point, Gradient[] place, double[] own) {
    if (survey == null || plan == null) {
      throw new IllegalStateException("asked only where something was surveyed");
    }
    List<Mark> spotted = marks.stream().filter(this::spotted).toList();
    List<String> labels = new ArrayList<>(spotted.stream().map(Mark::label).toList());
    labels.addAll(helpers(spotted, survey));
    int at = labels.indexOf(point);
    for (int axis = 0; axis < 2; axis++) {
      double[] row = plan.row(at, 2, axis);
      for (int column = 0; column < row.length; column++) {
        place[axis].add(layout.named(planError(column)), -row[column]);
      }
    }
    own[0] += plan.own()[at][0];
    own[1] += plan.own()[at][1];
    own[2] += plan.own()[at][3];
  }

  private static List<LevelledMark> levelled(
      List<Mark> marks, Layout layout, LevelAdjusted levels) {
    List<LevelledMark> list = new ArrayList<>();
    for (Mark mark : marks) {
      for (Level.Part part : Level.Part.values()) {
        String name = LevelsOfBook.name(mark.label(), part);
        Double above = above(mark, part, layout);
        if (levels.heights().containsKey(name) && above != null) {
          list.add(new LevelledMark(mark, part, name, above));
        }
      }
    }
    return list;
  }

  /** How far a part lies above the invert; null where that part of the mark tells nothing. */
  private static @Nullable Double above(Mark mark, Level.Part part, Layout layout) {
    return switch (part) {
      case GROUND -> mark.ground() ? Double.valueOf(0) : null;
      case INVERT -> Double.valueOf(0);
      case CROWN ->
          HeightEquations.bore(
              layout.tree(), mark.place(layout, new double[layout.shared()]).limb());
      case WATER -> null;
    };
  }

  /** Levels of one set-up err together: the set-ups are among what the heights hang on. */
  private static Common heights(List<LevelledMark> levelled, LevelAdjusted levels) {
    List<String> names = new ArrayList<>(levelled.stream().map(LevelledMark::name).toList());
    Set<String> others = new LinkedHashSet<>(levels.heights().keySet());
    names.forEach(others::remove);
    names.addAll(others);
    int points = names.size();
    names.addAll(levels.setups().keySet());
    int n = names.size();
    DMatrixRMaj covariance = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        String a = names.get(i);
        String b = names.get(j);
        double c;
        if (i < points) {
          c = j < points ? levels.covariance(a, b) : levels.covarianceWithSetup(b, a);
        } else {
          c = j < points ? levels.covarianceWithSetup(a, b) : levels.covarianceOfSetups(a, b);
        }
        covariance.set(i, j, c);
      }
    }
    return Common.of(covariance, levelled.size(), n - levelled.size(), 1);
  }

  private static boolean spotted(Mark mark, Adjusted survey) {
    return survey.points().containsKey(mark.label());
  }

  /** Whether the spot of a mark is known in plan. */
  boolean spotted(Mark mark) {
    return survey != null && spotted(mark, survey);
  }

  /** Whether a height of a mark is known by level. */
  boolean levelled(Mark mark, Level.Part part) {
    return levels != null && levels.heights().containsKey(LevelsOfBook.name(mark.label(), part));
  }

  /** The turns whose plane is free. */
  List<Turn> freeTurns() {
    return turns.stream().filter(turn -> turn.sense() == Bend.Sense.UNKNOWN).toList();
  }
}
