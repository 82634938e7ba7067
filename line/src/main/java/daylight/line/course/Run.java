package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The estimated path of one reach, from its upstream node to its downstream node.
 *
 * @param reach the reach as the book knows it
 * @param length along the pipe in metres; null when nothing measured it
 * @param path where it lies, or why that is not known
 */
public record Run(Reach reach, @Nullable Measured length, Path path) {
  /** Where a reach lies, as far as is known. */
  public sealed interface Path {
    /** It is known: stations by rising distance, at least two. */
    record Found(List<Station> stations) implements Path {
      public Found {
        stations = List.copyOf(stations);
      }

      /** The station nearest to a distance from the upstream node. */
      public Station nearest(double distance) {
        Station best = stations.getFirst();
        for (Station station : stations) {
          if (Math.abs(station.place().distance() - distance)
              < Math.abs(best.place().distance() - distance)) {
            best = station;
          }
        }
        return best;
      }
    }

    /** It is not known, and what is missing. */
    record NotFound(Statement missing) implements Path {}
  }

  /** The stations of this run; none where its path is not known. */
  public List<Station> stations() {
    return path instanceof Path.Found found ? found.stations() : List.of();
  }

  /** A place on this run. */
  public Place at(double distance) {
    return new Place(reach.label(), distance);
  }
}
