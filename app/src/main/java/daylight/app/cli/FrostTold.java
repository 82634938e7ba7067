package daylight.app.cli;

import daylight.line.frost.Frost;
import daylight.line.frost.FrostDepth;
import daylight.line.frost.FrostTables;
import daylight.line.frost.Ground;
import daylight.line.frost.Input;
import daylight.line.frost.Margin;
import daylight.line.frost.Surface;
import daylight.line.frost.Winter;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/** What is said of one winter's frost. */
final class FrostTold {
  /** Standard uncertainty of what was typed, a share of it; common practice. */
  static final double DENSITY = 0.05;

  /** The same of a conductivity. */
  static final double CONDUCTIVITY = 0.1;

  /** Standard uncertainty of a surface's factor that was typed; common practice. */
  static final double FACTOR = 0.1;

  private static final double SURE = 0.95;

  private final FrostTables tables;
  private final Figured figured = new Figured("frost");
  private @Nullable Measured below;

  FrostTold(FrostTables tables) {
    this.tables = tables;
  }

  /** Something that lies so deep is asked about. */
  void below(Measured depth) {
    below = depth;
  }

  void climate(FrostTables.Climate climate) {
    figured.saying("climate", Given.text(climate.place()));
    source(climate.cited());
  }

  void soil(FrostTables.Soil soil, boolean density, boolean moisture) {
    if (density) {
      figured.saying(
          "soil-density",
          new Argument.Term("soil." + soil.id()),
          new Argument.Quantity(Dimension.DENSITY, soil.dryDensity().value()),
          new Argument.Quantity(Dimension.DENSITY, Measured.Z95 * soil.dryDensity().sd()));
    }
    if (moisture) {
      figured.saying(
          "soil-water",
          new Argument.Term("soil." + soil.id()),
          new Argument.Quantity(Dimension.SHARE, soil.moisture().value()),
          new Argument.Quantity(Dimension.SHARE, Measured.Z95 * soil.moisture().sd()));
    }
    if (density || moisture) {
      source(soil.cited());
    }
  }

  void surface(FrostTables.Cover cover) {
    figured.saying(
        cover.id().equals(FrostTables.UNKNOWN) ? "surface-unknown" : "surface",
        new Argument.Term("surface." + cover.id()),
        new Argument.Quantity(Dimension.SHARE, cover.factor().value()),
        new Argument.Quantity(Dimension.SHARE, Measured.Z95 * cover.factor().sd()));
    source(cover.cited());
  }

  void snow() {
    figured.saying(
        "snow",
        new Argument.Quantity(Dimension.CONDUCTIVITY, tables.snow().value().value()),
        new Argument.Quantity(Dimension.CONDUCTIVITY, Measured.Z95 * tables.snow().value().sd()));
    source(tables.snow().cited());
  }

  private void source(FrostTables.Cited cited) {
    Argument mark = new Argument.Term(cited.mark().key());
    if (cited.mark() == Mark.COMMON_PRACTICE) {
      figured.saying("no-source", mark);
    } else {
      figured.saying("source", Given.text(cited.source()), mark);
    }
    String note = cited.note();
    if (note != null) {
      figured.saying("note", Given.text(note));
    }
  }

  Figured figured(Winter winter, Ground ground, Surface surface) {
    figured.with(
        "winter",
        new Argument.Quantity(Dimension.DEGREE_DAYS, winter.freezingIndex().value()),
        new Argument.Quantity(Dimension.TEMPERATURE, winter.meanTemperature().value()),
        new Argument.Quantity(Dimension.DURATION, winter.season().value()));
    switch (Frost.depth(winter, ground, surface, tables.formula().value())) {
      case FrostDepth.None(FrostDepth.NoFrost why) -> figured.saying("none", word(why.key()));
      case FrostDepth.Beyond(FrostDepth.NotHeld why) -> {
        figured.saying("beyond", word(why.key()));
        figured.contradicted();
      }
      case FrostDepth.Reaches frost -> reaches(frost, ground.conductivity() == null);
    }
    return figured.saying("caution");
  }

  private void reaches(FrostDepth.Reaches frost, boolean kersten) {
    FrostDepth.Terms terms = frost.terms();
    figured.with("depth", new Argument.UncertainLength(frost.depth()));
    figured.with("stefan", new Argument.Length(terms.stefan()));
    figured.with("lambda", rounded(terms.lambda()), rounded(terms.alpha()), rounded(terms.mu()));
    figured.with(
        "conductivity", new Argument.Quantity(Dimension.CONDUCTIVITY, terms.conductivity()));
    figured.with(
        "surface-index", new Argument.Quantity(Dimension.DEGREE_DAYS, terms.surfaceIndex()));
    Input decides = frost.deciding();
    Measured deep = below;
    if (deep != null) {
      Margin margin = Margin.of(deep, frost);
      figured.with("left", new Argument.UncertainLength(margin.left()));
      figured.with("reached", new Argument.Probability(margin.reached()));
      decides = margin.deciding();
      if (margin.reached() > 1 - SURE && margin.reached() < SURE) {
        figured.contradicted();
      }
    }
    figured.saying("decides", word(decides.key()));
    if (kersten) {
      figured.saying("kersten");
    }
    figured.saying("formula", new Argument.Quantity(Dimension.SHARE, off()));
    source(tables.formula().cited());
  }

  private double off() {
    return Measured.Z95 * tables.formula().value().sd();
  }

  private static Argument rounded(double value) {
    return new Argument.Number(Math.rint(value * 1000) / 1000);
  }

  private static Argument word(String key) {
    return new Argument.Term(key);
  }
}
