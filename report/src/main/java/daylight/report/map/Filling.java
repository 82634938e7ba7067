package daylight.report.map;

import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.SiteTie;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A row as it is filled in; what is null stays out of it. */
final class Filling {
  /** A micrometre where it is metres. */
  private static final int DECIMALS = 6;

  /** A hundredth of a millimetre on the ground. */
  private static final int DEGREE_DECIMALS = 10;

  private final Layer layer;
  private final @Nullable SiteTie earth;
  private final SortedMap<String, Object> values = new TreeMap<>();
  private @Nullable Shape shape;

  Filling(Layer layer, @Nullable SiteTie earth) {
    this.layer = layer;
    this.earth = earth;
  }

  private Filling put(String name, @Nullable Object value) {
    if (value != null) {
      values.put(name, value);
    }
    return this;
  }

  /** A text; one of blanks alone says nothing. */
  Filling text(String name, @Nullable String text) {
    return put(name, text == null || text.isBlank() ? null : Plain.of(text));
  }

  Filling number(String name, @Nullable Double value) {
    return put(name, value == null ? null : rounded(value, DECIMALS));
  }

  Filling whole(String name, long value) {
    return put(name, value);
  }

  Filling yesNo(String name, boolean value) {
    return put(name, value);
  }

  Filling day(String name, @Nullable LocalDate day) {
    return put(name, day);
  }

  /** A value, and its standard uncertainty under the same name with {@code _sd}. */
  Filling measured(String name, @Nullable Measured measured) {
    return measured == null
        ? this
        : number(name, measured.value()).number(name + "_sd", measured.sd());
  }

  /** The place of a point on the grid, and on the earth where the site is tied to it. */
  Filling spot(PlanPoint at) {
    number("x", at.x()).number("y", at.y());
    if (earth != null) {
      SiteTie.Geographic on = earth.geographic(at);
      put("longitude", rounded(StrictMath.toDegrees(on.longitudeRad()), DEGREE_DECIMALS));
      put("latitude", rounded(StrictMath.toDegrees(on.latitudeRad()), DEGREE_DECIMALS));
    }
    return this;
  }

  /** A bearing clockwise from grid north, and from true north where that is known. */
  Filling bearing(String name, PlanPoint at, double radians) {
    double full = 2 * Math.PI;
    degrees(name, radians - full * Math.floor(radians / full));
    return earth == null ? this : degrees(name + "_true", earth.trueBearing(at, radians));
  }

  /** An axis, which has two bearings: the one from 0 to a half turn. */
  private void axis(String name, PlanPoint at, double radians) {
    degrees(name, radians);
    if (earth != null) {
      double bearing = earth.trueBearing(at, radians);
      degrees(name + "_true", bearing < Math.PI ? bearing : bearing - Math.PI);
    }
  }

  Filling degrees(String name, double radians) {
    return number(name, StrictMath.toDegrees(radians));
  }

  /** The ellipse that holds a position with 95 %. */
  Filling ellipse(PlanPoint at, Covariance2 covariance) {
    ErrorEllipse ellipse = ErrorEllipse.of(covariance, 0.95);
    number("ellipse_major", ellipse.semiMajor()).number("ellipse_minor", ellipse.semiMinor());
    axis("ellipse_azimuth", at, ellipse.azimuth());
    return this;
  }

  Filling shape(@Nullable Shape given) {
    shape = given;
    return this;
  }

  Row done() {
    return new Row(layer, values, shape);
  }

  private static double rounded(double value, int decimals) {
    double near = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    // Minus nothing is nothing.
    return near == 0 ? 0 : near;
  }
}
