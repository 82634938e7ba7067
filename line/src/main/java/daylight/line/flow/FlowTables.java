package daylight.line.flow;

import daylight.line.book.Material;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Figures of pipes that nobody measures on site: data, each row with its source. A range is taken
 * to hold 95 % of what is met.
 *
 * @param walls how rough walls are
 * @param fittings what fittings lose
 * @param bores inside diameters by the size a pipe is sold by
 * @param surfaces how much of the rain runs off
 */
public record FlowTables(
    List<Wall> walls, List<Fitting> fittings, List<Bore> bores, List<Surface> surfaces) {
  public FlowTables {
    walls = List.copyOf(walls);
    fittings = List.copyOf(fittings);
    bores = List.copyOf(bores);
    surfaces = List.copyOf(surfaces);
  }

  /** How a wall is after some time in the ground. */
  public enum State {
    /** As laid. */
    NEW,
    /** After years in use, in fair order; what is taken where nobody says. */
    USED,
    /** Scaled, rusted or worn. */
    BAD
  }

  /** Where a row comes from. */
  public record Origin(String source, Mark mark, @Nullable String note) {}

  /**
   * How rough a wall is.
   *
   * @param law by which law of friction
   * @param typical the figure taken
   * @param from the least met
   * @param to the greatest met
   */
  public record Wall(
      Material material,
      State state,
      FrictionLaw law,
      double typical,
      double from,
      double to,
      Origin origin) {
    /** As a figure with its uncertainty. */
    public Roughness roughness() {
      return new Roughness(law, spread(typical, from, to));
    }
  }

  /**
   * What a fitting loses: a share of speed² ÷ 2g.
   *
   * @param id its name
   * @param typical the coefficient taken
   */
  public record Fitting(String id, double typical, double from, double to, Origin origin) {
    /** As a figure with its uncertainty. */
    public Measured loss() {
      return spread(typical, from, to);
    }
  }

  /**
   * The inside diameter of a pipe by the size it is sold by.
   *
   * @param series the standard and class
   * @param nominal the size it is sold by, metres
   * @param inside its inside diameter, metres
   */
  public record Bore(String series, double nominal, double inside, Origin origin) {}

  /**
   * How much of the rain runs off a surface.
   *
   * @param id its name
   * @param typical the share taken
   */
  public record Surface(String id, double typical, double from, double to, Origin origin) {
    /** As a figure with its uncertainty. */
    public Measured runoff() {
      return spread(typical, from, to);
    }
  }

  private static Measured spread(double typical, double from, double to) {
    return new Measured(typical, (to - from) / (2 * Measured.Z95));
  }

  /**
   * How rough a wall is by a law: in the state asked for, else in the one that is nearest to it. A
   * material that is not known has the row of {@link Material#UNKNOWN}.
   */
  public Optional<Wall> wall(Material material, State state, FrictionLaw law) {
    return walls.stream()
        .filter(wall -> wall.material() == material && wall.law() == law)
        .min((one, other) -> Integer.compare(away(one.state(), state), away(other.state(), state)));
  }

  private static int away(State one, State other) {
    return Math.abs(rank(one) - rank(other));
  }

  private static int rank(State state) {
    return switch (state) {
      case NEW -> 0;
      case USED -> 1;
      case BAD -> 2;
    };
  }

  /** The fitting of a name. */
  public Optional<Fitting> fitting(String id) {
    return fittings.stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The surface of a name. */
  public Optional<Surface> surface(String id) {
    return surfaces.stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The names of the series of sizes. */
  public List<String> series() {
    return bores.stream().map(Bore::series).distinct().toList();
  }

  /** The pipe of a size, to a tenth of a millimetre, in a series. */
  public Optional<Bore> bore(String series, double nominal) {
    return bores.stream()
        .filter(one -> one.series().equals(series) && Math.abs(one.nominal() - nominal) < 1e-4)
        .findFirst();
  }
}
