package daylight.app.cli;

import daylight.line.book.Place;
import daylight.line.fall.Draws;
import daylight.line.fall.Ponder;
import daylight.line.fall.Ponding;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.report.Handout;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;

/** How likely it is that water stands at a place. */
@Command(
    name = "ponding",
    mixinStandardHelpOptions = true,
    description = {
      "How likely water stands at a place because of the grade alone: up to the highest bottom that it",
      "has to pass on its way out. Profiles are drawn from what the heights are known by; the seed goes",
      "along. A dam or water standing against the outlet is not in it. Leaves with 1 where nothing",
      "tells heights there."
    })
final class FigurePonding extends BookFigure {
  @Override
  void read(Given given) {}

  @Override
  @Nullable Figured figured(Given given, Handout handout) {
    Optional<Place> at = at(given, handout.line()).map(PlaceWritten::place);
    if (at.isEmpty()) {
      return null;
    }
    Ponding ponding = Ponder.of(handout.line(), Draws.USUAL);
    Figured figured = new Figured("ponding");
    Optional<Ponding.Spot> spot = ponding.at(at.get());
    if (spot.isEmpty()) {
      return figured.saying("not-known").contradicted();
    }
    Argument film = new Argument.Small(Ponding.FILM);
    figured.with("deeper", new Argument.Probability(spot.get().deeper()), film);
    range(figured, "depth", spot.get().depth());
    Optional<Ponding.Pool> pool = ponding.pool(spot.get().place());
    pool.ifPresent(water -> told(figured, water));
    if (pool.isEmpty()) {
      open(ponding, spot.get().place()).ifPresent(o -> told(figured, o));
    }
    figured.saying(
        "drawn",
        new Argument.Count(ponding.draws().count()),
        new Argument.Count(ponding.draws().seed()));
    return figured.saying("grade-alone");
  }

  private static Optional<Ponding.Open> open(Ponding ponding, Place place) {
    return ponding.open().stream()
        .filter(o -> o.from().reach().equals(place.reach()))
        .filter(o -> o.from().distance() <= place.distance())
        .filter(o -> place.distance() <= o.to().distance())
        .findFirst();
  }

  private static void told(Figured figured, Ponding.Pool pool) {
    figured.with(
        "pool",
        new Argument.Probability(pool.probability()),
        new Argument.Label(pool.from().reach()),
        new Argument.Length(pool.from().distance()),
        new Argument.Length(pool.to().distance()));
    range(figured, "pool-depth", pool.depth());
    Ponding.Range volume = pool.volume();
    if (volume != null) {
      figured.with("volume", volume(volume.middle()), volume(volume.low()), volume(volume.high()));
    } else {
      figured.saying("no-bore");
    }
    figured.with(
        "lip", new Argument.Length(pool.lip().distance()), new Argument.Label(pool.lip().reach()));
  }

  private static void told(Figured figured, Ponding.Open open) {
    figured.saying(
        "open",
        new Argument.Label(open.from().reach()),
        new Argument.Length(open.from().distance()),
        new Argument.Length(open.to().distance()));
    figured.saying("would-help");
  }

  private static void range(Figured figured, String name, Ponding.Range range) {
    figured.with(
        name,
        new Argument.Small(range.middle()),
        new Argument.Small(range.low()),
        new Argument.Small(range.high()));
  }

  private static Argument volume(double cubicMetres) {
    return new Argument.Quantity(Dimension.VOLUME, cubicMetres);
  }
}
