package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.course.Contribution;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.Outlook;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Wanted;
import daylight.line.dig.DigTarget;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Why a figure of the line is as sure as it is, and what would make it surer.
 *
 * @param of what it is a figure of
 * @param figure which figure
 * @param now as it is known now, metres; how far a pipe may lie off is a doubt about nothing
 * @param rests the readings and assumptions behind it, largest share of its variance first
 * @param best the further measurement that tells most about it for its minutes; null where none
 *     that could be made would tell more
 */
public record Why(
    Of of, Wanted figure, Measured now, List<Contribution> rests, NextBest.@Nullable Option best) {
  public Why {
    rests = List.copyOf(rests);
  }

  /** What the figures of a page are figures of. */
  public sealed interface Of {
    /** The figure that an answer turns on. */
    record OfAnswer(String line, Question question) implements Of {}

    /** A place where the ground may have to be opened: the label of what one would dig for. */
    record OfDig(String finding) implements Of {}

    /** A locate or an exposure. */
    record OfLocate(Id entry) implements Of {}

    /** An end of a reach; an outlet is where it comes out. */
    record OfNode(Node node) implements Of {}

    /** A stretch whose fall was judged. */
    record OfStretch(FallStretch stretch) implements Of {}

    /** A whole reach. */
    record OfReach(Id reach) implements Of {}
  }

  /**
   * Every figure of a page that has an uncertainty: what each answer turns on; place and depth at
   * digs, locates and ends of reaches; the fall of each stretch that was judged; lengths.
   */
  public static List<Why> all(FieldBook book, Line line, Answers answers) {
    return new Asking(line).all(book, answers);
  }

  /** One figure; empty where it is not known. */
  public static Optional<Why> of(Line line, Of of, Wanted figure) {
    return new Asking(line).one(of, figure);
  }

  /** Figures of one line, asked in order. */
  private static final class Asking {
    private final Line line;
    private final Outlook outlook;
    private final List<Why> list = new ArrayList<>();

    Asking(Line line) {
      this.line = line;
      this.outlook = line.outlook();
    }

    List<Why> all(FieldBook book, Answers answers) {
      for (Answers.LineAnswers judged : answers.lines()) {
        for (Answer answer : judged.answers()) {
          Wanted leading = answer.leading();
          if (leading != null) {
            add(new Of.OfAnswer(judged.line(), answer.question()), leading);
          }
        }
      }
      for (DigPlace dig : answers.digs()) {
        if (dig.dig() instanceof DigTarget target) {
          there(new Of.OfDig(dig.finding().finding().label()), target.place());
        }
      }
      for (LocateFit fit : line.locates()) {
        there(new Of.OfLocate(fit.entry()), fit.place());
      }
      nodes(book);
      for (FallStretch stretch : answers.fall().stretches()) {
        add(new Of.OfStretch(stretch), new Wanted.Fall(stretch.from(), stretch.to()));
      }
      for (Run run : line.runs()) {
        if (run.length() != null) {
          add(new Of.OfReach(run.reach().id()), new Wanted.Length(run.reach().label()));
        }
      }
      return list;
    }

    /** The ends of reaches that have a course, each once. */
    private void nodes(FieldBook book) {
      Set<String> seen = new HashSet<>();
      for (Run run : line.runs()) {
        if (!run.stations().isEmpty()) {
          node(book, run.reach().upstream(), run.at(0), seen);
          if (run.length() != null) {
            node(book, run.reach().downstream(), run.at(Route.extent(run)), seen);
          }
        }
      }
    }

    private void node(FieldBook book, String label, Place at, Set<String> seen) {
      if (seen.add(label)) {
        book.site().findNode(label).ifPresent(node -> there(new Of.OfNode(node), at));
      }
    }

    private void there(Of of, Place at) {
      add(of, new Wanted.Widest(at));
      add(of, new Wanted.Depth(at));
    }

    private void add(Of of, Wanted figure) {
      one(of, figure).ifPresent(list::add);
    }

    Optional<Why> one(Of of, Wanted figure) {
      if (!placed(figure)) {
        return Optional.empty();
      }
      return outlook
          .now(figure)
          .map(
              now ->
                  new Why(
                      of,
                      figure,
                      now,
                      outlook.why(figure),
                      NextBest.of(line, outlook, figure).stream().findFirst().orElse(null)));
    }

    /** Where a reach runs must be known before anything is asked of a place on it. */
    private boolean placed(Wanted figure) {
      return line.findRun(figure.reach()).filter(run -> !run.stations().isEmpty()).isPresent();
    }
  }
}
