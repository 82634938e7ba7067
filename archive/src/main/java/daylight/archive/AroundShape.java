package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.line.measure.Dimension;

/** Every key of what a line has to live with: winter, soil, what comes in and what pumps it. */
final class AroundShape {
  static final Section CLIMATE =
      Section.named("climate")
          .amount("freezing-index", Dimension.DEGREE_DAYS)
          .amount("mean-temperature", Dimension.TEMPERATURE)
          .amount("season", Dimension.DURATION)
          .amount("rain", Dimension.RAINFALL)
          .amount("snow", Dimension.LENGTH)
          .words("source");
  static final Section SOIL =
      Section.named("soil").words("kind").amount("water", Dimension.SHARE).words("surface");
  static final Section ROOF = BookShape.entry("roof").words("node").amount("area", Dimension.AREA);
  static final Section FIXTURE =
      BookShape.entry("fixture").words("node", "kind").amount("flow", Dimension.FLOW);
  static final Section CURVE_POINT =
      Section.named("curve-point")
          .amount("flow", Dimension.FLOW)
          .amount("head", Dimension.LENGTH, Bare.LEVEL);
  static final Section PUMP =
      BookShape.entry("pump")
          .words("node")
          .rows("curve", CURVE_POINT)
          .amount("area", Dimension.AREA)
          .amount("start", Dimension.LENGTH, Bare.LEVEL)
          .amount("stop", Dimension.LENGTH, Bare.LEVEL)
          .amount("lift", Dimension.LENGTH, Bare.LEVEL)
          .texts("fittings");
  static final Section SURROUNDINGS =
      Section.named("surroundings")
          .part("climate", CLIMATE)
          .part("soil", SOIL)
          .rows("roofs", ROOF)
          .rows("fixtures", FIXTURE)
          .rows("pumps", PUMP);

  private AroundShape() {}
}
