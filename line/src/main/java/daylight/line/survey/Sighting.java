package daylight.line.survey;

import java.util.List;

/**
 * One observation in plan, as written in the book: never altered by computing. Points are named by
 * their labels. Metres and radians; sd is the standard uncertainty of the reading in the unit of
 * the reading.
 */
public sealed interface Sighting {

  /** The label of the book entry this was read from, such as {@code A–L3}. */
  String entry();

  /** The points this speaks of, in the order written. */
  List<String> points();

  /** What it reads, in order. */
  default List<Quantity> quantities() {
    return switch (this) {
      case Tape _ -> List.of(Quantity.DISTANCE);
      case AlongOut _ -> List.of(Quantity.ALONG, Quantity.OUT);
      case Bearing _ -> List.of(Quantity.BEARING);
      case Angle _ -> List.of(Quantity.ANGLE);
      case Direction _ -> List.of(Quantity.DIRECTION);
      case Sketched _, Offset _ -> List.of(Quantity.X, Quantity.Y);
      case Gnss _ -> List.of(Quantity.EAST, Quantity.NORTH);
      case Fixed _, Side _ -> List.of();
    };
  }

  /**
   * A horizontal tape distance.
   *
   * @param metres zero or more
   */
  record Tape(String entry, String from, String to, double metres, double sd) implements Sighting {
    public Tape {
      Require.labels(entry, from, to);
      Require.notNegative("metres", metres, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(from, to);
    }
  }

  /**
   * So far along a wall and so far out from it. Along is zero at wallFrom and grows toward wallTo;
   * out is positive to the left of the line wallFrom→wallTo. Standing with the back to the wall,
   * along runs to the right.
   *
   * @param along metres, negative before the zero corner
   * @param out metres, negative on the right of the line
   */
  record AlongOut(
      String entry,
      String wallFrom,
      String wallTo,
      String point,
      double along,
      double out,
      double sdAlong,
      double sdOut)
      implements Sighting {
    public AlongOut {
      Require.labels(entry, wallFrom, wallTo);
      Require.labels(entry, point, wallFrom);
      Require.different("point", point, wallTo);
      Require.finite("along", along, "m");
      Require.finite("out", out, "m");
      Require.positive("sdAlong", sdAlong, "m");
      Require.positive("sdOut", sdOut, "m");
    }

    @Override
    public List<String> points() {
      return List.of(wallFrom, wallTo, point);
    }
  }

  /** A bearing, clockwise from grid north. */
  record Bearing(String entry, String from, String to, double rad, double sd) implements Sighting {
    public Bearing {
      Require.labels(entry, from, to);
      Require.finite("rad", rad, "rad");
      Require.positive("sd", sd, "rad");
    }

    @Override
    public List<String> points() {
      return List.of(from, to);
    }
  }

  /** An angle measured at a point, clockwise from one point to another. */
  record Angle(String entry, String at, String from, String to, double rad, double sd)
      implements Sighting {
    public Angle {
      Require.labels(entry, at, from);
      Require.labels(entry, at, to);
      Require.different("to", from, to);
      Require.finite("rad", rad, "rad");
      Require.positive("sd", sd, "rad");
    }

    @Override
    public List<String> points() {
      return List.of(at, from, to);
    }
  }

  /**
   * A circle reading toward a point, clockwise; all readings of one set share one unknown
   * orientation.
   *
   * @param set names the set; every direction of it is read at the same point
   */
  record Direction(String entry, String set, String from, String to, double rad, double sd)
      implements Sighting {
    public Direction {
      Require.labels(entry, from, to);
      Require.label("set", set);
      Require.finite("rad", rad, "rad");
      Require.positive("sd", sd, "rad");
    }

    @Override
    public List<String> points() {
      return List.of(from, to);
    }
  }

  /**
   * A position read in the grid itself: a point dropped on a sketch, or known coordinates.
   *
   * @param sd of x and of y alike, metres; coarse for a sketch. Where the two differ or are
   *     correlated, {@link Correlated} says so
   */
  record Sketched(String entry, String point, double x, double y, double sd) implements Sighting {
    public Sketched {
      Require.label("entry", entry);
      Require.label("point", point);
      Require.finite("x", x, "m");
      Require.finite("y", y, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }

  /**
   * The way from one point to another in the grid, as a satellite baseline gives it.
   *
   * @param x metres toward grid east
   * @param y metres toward grid north
   * @param sd of x and of y alike, metres. Where the two differ or are correlated, {@link
   *     Correlated} says so
   */
  record Offset(String entry, String from, String to, double x, double y, double sd)
      implements Sighting {
    public Offset {
      Require.labels(entry, from, to);
      Require.finite("x", x, "m");
      Require.finite("y", y, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(from, to);
    }
  }

  /**
   * A satellite fix on WGS 84, tied to the grid by an unknown shift and turn.
   *
   * @param latitudeRad north positive, within ±π/2
   * @param longitudeRad east positive
   * @param sdEast metres
   * @param sdNorth metres
   * @param corr correlation of east and north, between −0.999 and 0.999
   */
  record Gnss(
      String entry,
      String point,
      double latitudeRad,
      double longitudeRad,
      double sdEast,
      double sdNorth,
      double corr)
      implements Sighting {
    public Gnss {
      Require.label("entry", entry);
      Require.label("point", point);
      Require.between("latitudeRad", latitudeRad, -Math.PI / 2, Math.PI / 2);
      Require.finite("longitudeRad", longitudeRad, "rad");
      Require.positive("sdEast", sdEast, "m");
      Require.positive("sdNorth", sdNorth, "m");
      Require.between("corr", corr, -0.999, 0.999);
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }

  /** A control point whose grid coordinates are held. Its entry is its own label. */
  record Fixed(String point, double x, double y) implements Sighting {
    public Fixed {
      Require.label("point", point);
      Require.finite("x", x, "m");
      Require.finite("y", y, "m");
    }

    @Override
    public String entry() {
      return point;
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }

  /** On which side of the line wallFrom→wallTo a point lies; decides between mirror positions. */
  record Side(String entry, String point, String wallFrom, String wallTo, Hand hand)
      implements Sighting {
    public Side {
      Require.labels(entry, wallFrom, wallTo);
      Require.labels(entry, point, wallFrom);
      Require.different("point", point, wallTo);
    }

    @Override
    public List<String> points() {
      return List.of(wallFrom, wallTo, point);
    }
  }
}
