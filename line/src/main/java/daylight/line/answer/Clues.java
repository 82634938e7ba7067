package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.book.Test;
import daylight.line.cause.Clue;
import daylight.line.cause.Sign;
import daylight.line.course.PlacedFinding;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Key;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import java.util.Locale;

/** Says what speaks for a cause or against it, and lays down its figures. */
final class Clues {
  private final FieldBook book;
  private final Laid laid;
  private final Argument complainedOf;

  /**
   * @param complainedOf what people call the place where the complaint shows
   */
  Clues(FieldBook book, Laid laid, Argument complainedOf) {
    this.book = book;
    this.laid = laid;
    this.complainedOf = complainedOf;
  }

  Statement say(Clue clue) {
    return switch (clue) {
      case Clue.Found found -> found(found.finding());
      case Clue.Elsewhere elsewhere -> elsewhere(elsewhere);
      case Clue.NotFound not ->
          Statement.of(
              OpeningKey.NOT_FOUND,
              laid.figure(
                  FigureKey.SEEN_SHARE, new Argument.Quantity(Dimension.SHARE, not.share()), null));
      case Clue.Stopped stopped ->
          Statement.of(
              AnswerKey.CLEAR_STOPPED,
              laid.figure(
                  FigureKey.STATION, new Argument.Length(stopped.end().cable().value()), null),
              node(stopped.pass().entry()),
              new Argument.Term("why." + stopped.end().why().name().toLowerCase(Locale.ROOT)));
      case Clue.Slope slope -> slope(slope);
      case Clue.Tried tried -> tried(tried);
      case Clue.Filled filled ->
          Statement.of(
              filled.sign() == Sign.HELD ? OpeningKey.HELD : OpeningKey.FELL,
              place(book, filled.test().at()),
              new Argument.Text(filled.by().title()));
      case Clue.Depth depth ->
          Statement.of(
              OpeningKey.LIES_DEEP,
              laid.figure(
                  FigureKey.DEPTH, new Argument.UncertainLength(depth.depth()), depth.place()),
              laid.station(depth.place()),
              laid.from(depth.place()));
      case Clue.Shows shows ->
          Statement.of(
              OpeningKey.SHOWS,
              new Argument.Term("when." + shows.when().name().toLowerCase(Locale.ROOT)));
    };
  }

  private Argument node(String label) {
    return new Argument.Text(Case.named(book, label));
  }

  private Statement found(PlacedFinding placed) {
    Argument kind = laid.finding(placed);
    Place to = placed.to();
    if (to != null) {
      return Statement.of(
          OpeningKey.FOUND_ALONG,
          kind,
          laid.station(placed.from()),
          laid.station(to),
          laid.from(placed.from()));
    }
    Reading share = placed.finding().quantities().get("share");
    return share == null
        ? Statement.of(
            OpeningKey.FOUND, kind, laid.station(placed.from()), laid.from(placed.from()))
        : Statement.of(
            OpeningKey.FOUND_SHARE,
            kind,
            laid.station(placed.from()),
            laid.from(placed.from()),
            laid.figure(
                FigureKey.FILLED,
                new Argument.Quantity(Dimension.SHARE, share.value()),
                placed.from()));
  }

  private Statement elsewhere(Clue.Elsewhere elsewhere) {
    PlacedFinding placed = elsewhere.finding();
    return Statement.of(
        switch (elsewhere.where()) {
          case ON_THE_WAY -> OpeningKey.ELSEWHERE_WAY;
          case NEAR -> OpeningKey.ELSEWHERE_NEAR;
          case AT_OUTLET -> OpeningKey.ELSEWHERE_OUTLET;
        },
        laid.finding(placed),
        laid.station(placed.from()),
        laid.from(placed.from()),
        complainedOf);
  }

  private Statement slope(Clue.Slope slope) {
    FallStretch stretch = slope.stretch();
    Double below = stretch.belowLimit();
    boolean backward = slope.sign() == Sign.BACKWARD;
    double chance = backward || below == null ? stretch.adverse() : below;
    Argument figure =
        laid.figure(
            backward ? FigureKey.BACKWARD : FigureKey.CHANCE,
            new Argument.Probability(chance),
            stretch.from());
    return slope.sign() == Sign.FALLS
        ? Statement.of(OpeningKey.FALLS, figure)
        : Statement.of(
            backward ? OpeningKey.BACKWARD : OpeningKey.TOO_FLAT,
            laid.station(stretch.from()),
            laid.station(stretch.to()),
            laid.from(stretch.from()),
            figure);
  }

  private Statement tried(Clue.Tried tried) {
    Test.Seen seen = tried.seen();
    Argument in = place(book, tried.test().at());
    if (seen == null) {
      return Statement.of(OpeningKey.SMOKE_NOWHERE, in);
    }
    Argument out = place(book, seen.where());
    Reading after = seen.after();
    Key key =
        switch (tried.sign()) {
          case ARRIVED -> after == null ? AnswerKey.TEST_ARRIVED : AnswerKey.TEST_ARRIVED_AFTER;
          case NOT_ARRIVED -> AnswerKey.TEST_DID_NOT_ARRIVE;
          default -> OpeningKey.SMOKE_CAME;
        };
    return key == AnswerKey.TEST_ARRIVED_AFTER && after != null
        ? Statement.of(
            key,
            in,
            out,
            laid.figure(
                FigureKey.AFTER, new Argument.Quantity(Dimension.DURATION, after.value()), null))
        : Statement.of(key, in, out);
  }

  private static String called(String kind, String label) {
    return kind.equalsIgnoreCase(label) ? label : kind + " (" + label + ")";
  }

  /** Where the complaint shows, as people call it. */
  static Argument place(FieldBook book, String at) {
    return book.site().surroundings().fixtures().stream()
        .filter(one -> book.site().findNode(at).isEmpty() && one.label().equals(at))
        .<Argument>map(one -> new Argument.Text(called(one.kind(), at)))
        .findFirst()
        .or(
            () ->
                book.site().landmarks().stream()
                    .filter(one -> one.label().equals(at) && one.what() != null)
                    .<Argument>map(one -> new Argument.Text(one.what() + " (" + at + ")"))
                    .findFirst())
        .orElseGet(() -> new Argument.Text(Case.named(book, at)));
  }
}
