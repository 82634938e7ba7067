package daylight.line.survey;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The door of the room: adjusts a network by least squares. */
public final class Surveyor {
  private Surveyor() {}

  /** The positions of the points of a plane network, or why there are none. */
  public static Adjustment adjust(PlaneNetwork network) {
    return new PlaneAdjuster(network).adjust();
  }

  /** The heights of the points of a level network, or why there are none. */
  public static LevelAdjustment adjust(LevelNetwork network) {
    return new LevelAdjuster(network).adjust();
  }

  /** Every tie and level of a field book, adjusted, with what there is to say of them. */
  public static Survey survey(FieldBook book, Priors priors) {
    var ties = new BookTies(book, priors);
    PlaneNetwork network = ties.network();
    Adjustment plan = adjust(network);
    LevelAdjustment levels = adjust(BookLevels.network(book, priors));
    List<Statement> doubts = new ArrayList<>(doubts(network, plan, ties.written()));
    if (levels instanceof LevelAdjusted adjusted) {
      doubts.addAll(
          new Doubts(new LikelyReadings(BookLevels.written(book), suspect -> List.of()))
              .suspects(adjusted.fit()));
    }
    return new Survey(network, plan, levels, doubts);
  }

  /**
   * What there is to say of an adjusted network.
   *
   * @param written readings as they were written, as far as that is known
   */
  public static List<Statement> doubts(
      PlaneNetwork network, Adjustment plan, Map<Correlated.Component, Written> written) {
    var retaken = new Retaken(network, plan);
    return new Doubts(new LikelyReadings(written, retaken::likely)).of(plan);
  }
}
