package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.measure.Dimension;

/** Every key of a network file. */
final class NetworkShape {
  static final String KEY = "daylight-network";

  /** What bare angles mean. */
  enum Angles {
    DEGREES,
    GON
  }

  static final Section UNITS =
      Section.named("units").plain("distance", Shape.Kind.UNIT).oneOf("angle", Angles.class);
  static final Section ORIGIN =
      Section.named("origin")
          .plain("latitude", Shape.Kind.NUMBER)
          .plain("longitude", Shape.Kind.NUMBER);
  static final Section POINT =
      Section.named("point")
          .words("point")
          .plain("east", Shape.Kind.NUMBER)
          .plain("north", Shape.Kind.NUMBER)
          .plain("fixed", Shape.Kind.YES_NO);
  static final Section EAST_NORTH =
      Section.named("east-north")
          .plain("east", Shape.Kind.NUMBER)
          .plain("north", Shape.Kind.NUMBER);
  static final Section OBSERVATION =
      Section.named("observation")
          .words("label", "from", "to", "at", "point", "set")
          .texts("wall")
          .amount("distance", Dimension.LENGTH, Bare.DISTANCE)
          .amount("along", Dimension.LENGTH, Bare.DISTANCE)
          .amount("out", Dimension.LENGTH, Bare.DISTANCE)
          .amount("angle", Dimension.ANGLE)
          .amount("direction", Dimension.ANGLE)
          .amount("azimuth", Dimension.ANGLE)
          .amount("bearing", Dimension.ANGLE)
          .part("vector", EAST_NORTH)
          .part("coordinates", EAST_NORTH)
          .part("gnss", ORIGIN)
          .part("side", BookShape.SIDE)
          .amount("sd", Dimension.LENGTH, Bare.DISTANCE)
          .amount("sd-along", Dimension.LENGTH, Bare.DISTANCE)
          .amount("sd-out", Dimension.LENGTH, Bare.DISTANCE)
          .amount("sd-east", Dimension.LENGTH, Bare.DISTANCE)
          .amount("sd-north", Dimension.LENGTH, Bare.DISTANCE)
          .plain("correlation", Shape.Kind.NUMBER);
  static final Section COVARIANCE =
      Section.named("covariance")
          .texts("of")
          .with("matrix", new Shape.Rows(new Shape.Rows(new Shape.Plain(Shape.Kind.NUMBER))));
  static final Section NETWORK =
      Section.named("network")
          .words(KEY, "title")
          .part("units", UNITS)
          .texts("base")
          .part("origin", ORIGIN)
          .rows("points", POINT)
          .rows("observations", OBSERVATION)
          .rows("covariances", COVARIANCE);

  private NetworkShape() {}
}
