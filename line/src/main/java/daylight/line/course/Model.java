package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Everything that is observed or assumed of one line, ready to be put into equations. */
record Model(
    FieldBook book,
    Layout layout,
    Lengths lengths,
    Walks walks,
    List<Mark> marks,
    List<Turn> turns,
    @Nullable Adjusted survey,
    @Nullable LevelAdjusted levels,
    Priors priors) {

  /** The same with these bends on it. */
  Model with(List<Turn> seen) {
    return new Model(book, layout, lengths, walks, marks, seen, survey, levels, priors);
  }

  /** Whether the spot of a mark is known in plan. */
  boolean spotted(Mark mark) {
    return survey != null && survey.points().containsKey(mark.label());
  }

  /** Whether a height of a mark is known by level. */
  boolean levelled(Mark mark, Level.Part part) {
    return levels != null && levels.heights().containsKey(LevelsOfBook.name(mark.label(), part));
  }

  /**
   * The equations at one vector of unknowns.
   *
   * @param hands for each turn of free plane, which way it is tried: −1 left, +1 right
   */
  Equations equations(double[] x, int[] hands) {
    Equations equations = new Equations(x.length);
    Shape shape = new Shape(layout, x);
    new PipeEquations(this, equations, x).add(hands);
    new CableEquations(this, equations, x).add();
    new SpotEquations(this, equations, x, shape).add();
    if (layout.heights()) {
      new HeightEquations(this, equations, x, shape).add();
    }
    return equations;
  }

  /** The turns whose plane is free. */
  List<Turn> freeTurns() {
    return turns.stream().filter(turn -> turn.sense() == Bend.Sense.UNKNOWN).toList();
  }

  Material material(int limb) {
    return layout.tree().limbs().get(limb).reach().material();
  }

  /** The visits of the book, each with what its instruments were. */
  List<Visit> visits() {
    return book.visits();
  }
}
