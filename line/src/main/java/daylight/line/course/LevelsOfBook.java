package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Reading;
import daylight.line.survey.LevelNetwork;
import daylight.line.survey.LevelSighting;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The level network that a field book holds. A point of it is a mark: {@code L1/ground}. */
final class LevelsOfBook {
  private LevelsOfBook() {}

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
  static String name(String point, Level.Part part) {
    return point + "/" + part.name().toLowerCase(Locale.ROOT);
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
