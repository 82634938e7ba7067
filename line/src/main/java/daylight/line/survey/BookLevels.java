package daylight.line.survey;

import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The level network that a field book holds. A point of it is a mark: {@code L1/ground}. */
public final class BookLevels {
  private BookLevels() {}

  static LevelNetwork network(FieldBook book, Priors priors) {
    List<LevelSighting> sightings = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Level level : visit.levels()) {
        sightings.add(sighting(level, priors));
      }
    }
    return new LevelNetwork(sightings);
  }

  /** The name of a mark in the network. */
  public static String name(String point, Level.Part part) {
    return point + "/" + part.name().toLowerCase(Locale.ROOT);
  }

  /** Every reading as it was written. */
  static Map<Correlated.Component, Written> written(FieldBook book) {
    Map<Correlated.Component, Written> written = new HashMap<>();
    for (Visit visit : book.visits()) {
      for (Level level : visit.levels()) {
        Quantity quantity =
            switch (level) {
              case Level.Rod _ -> Quantity.ROD;
              case Level.Height _ -> Quantity.HEIGHT;
              case Level.Rise _ -> Quantity.RISE;
            };
        Reading reading =
            switch (level) {
              case Level.Rod rod -> rod.rod();
              case Level.Height height -> height.height();
              case Level.Rise rise -> rise.rise();
            };
        written.put(
            new Correlated.Component(level.label(), quantity),
            new Written(reading, Dimension.LENGTH, book.units().level()));
      }
    }
    return written;
  }

  private static String name(Level.Mark mark) {
    return name(mark.point(), mark.part());
  }

  private static LevelSighting sighting(Level level, Priors priors) {
    return switch (level) {
      case Level.Rod rod ->
          new LevelSighting.Rod(
              rod.label(), rod.setUp(), name(rod.mark()), rod.rod().value(), sd(rod.rod(), priors));
      case Level.Height height ->
          new LevelSighting.Height(
              height.label(),
              name(height.mark()),
              height.height().value(),
              sd(height.height(), priors));
      case Level.Rise rise ->
          new LevelSighting.Rise(
              rise.label(),
              name(rise.from()),
              name(rise.to()),
              rise.rise().value(),
              sd(rise.rise(), priors));
    };
  }

  private static double sd(Reading reading, Priors priors) {
    Double stated = reading.sd();
    return stated != null ? stated : priors.sd(Priors.Kind.LEVEL, 0);
  }
}
