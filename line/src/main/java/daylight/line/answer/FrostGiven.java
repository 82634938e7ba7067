package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Surroundings;
import daylight.line.frost.FrostTables;
import daylight.line.frost.Ground;
import daylight.line.frost.Input;
import daylight.line.frost.Surface;
import daylight.line.frost.Winter;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the book gives of winter, soil and surface, and what is usual where it gives nothing. */
final class FrostGiven {
  private static final String MANUAL = "ufc-3-130-06";

  private final Telling tell;
  private final FrostTables tables;
  private final Priors priors;
  private final Surroundings.@Nullable Climate climate;
  private final Surroundings.@Nullable Soil soil;
  private FrostTables.@Nullable Soil row;
  private FrostTables.@Nullable Cover cover;
  private @Nullable Known known;

  /** Enough to work the frost out. */
  record Known(Winter winter, Ground ground, Surface surface) {}

  FrostGiven(Case one, Telling tell) {
    this.tell = tell;
    this.tables = one.rules().frost();
    this.priors = one.rules().priors();
    this.climate = one.book().site().surroundings().climate();
    this.soil = one.book().site().surroundings().soil();
  }

  /** Empty where something is missing, which is told. */
  Optional<Known> read() {
    Winter winter = winter();
    Ground ground = ground();
    if (winter == null || ground == null) {
      return Optional.empty();
    }
    Known found = new Known(winter, ground, surface());
    known = found;
    return Optional.of(found);
  }

  private @Nullable Winter winter() {
    Reading index = climate == null ? null : climate.freezingIndex();
    Reading mean = climate == null ? null : climate.meanTemperature();
    Reading season = climate == null ? null : climate.season();
    if (index == null) {
      tell.missing(AnswerKey.MISSING_FROST);
      return null;
    }
    if (mean == null) {
      tell.missing(AnswerKey.MISSING_MEAN_TEMPERATURE);
    }
    if (season == null || !(season.value() > 0)) {
      tell.missing(AnswerKey.MISSING_SEASON);
      return null;
    }
    return mean == null
        ? null
        : new Winter(
            measured(Priors.Kind.FREEZING_INDEX, index),
            measured(Priors.Kind.MEAN_TEMPERATURE, mean),
            measured(Priors.Kind.SEASON, season));
  }

  private Measured measured(Priors.Kind kind, Reading reading) {
    double sd = priors.sd(kind, reading);
    // A winter without cold has none, whatever the doubt.
    return new Measured(reading.value(), sd > 0 ? sd : 1e-9);
  }

  private @Nullable Ground ground() {
    if (soil == null) {
      tell.missing(AnswerKey.MISSING_SOIL);
      return null;
    }
    FrostTables.Soil found = tables.soil(soil.kind()).orElse(null);
    if (found == null) {
      List<String> ids = tables.soils().stream().map(FrostTables.Soil::id).toList();
      tell.missing(
          AnswerKey.MISSING_SOIL_NAME, new Argument.Text(soil.kind()), new Argument.Choices(ids));
      return null;
    }
    row = found;
    Reading water = soil.water();
    Measured moisture = water == null ? found.moisture() : measured(Priors.Kind.SOIL_WATER, water);
    return new Ground(found.grain(), found.dryDensity(), moisture, null);
  }

  private Surface surface() {
    Reading snow = climate == null ? null : climate.snow();
    if (snow != null && snow.value() > 0) {
      cover = tables.surfaceOf(FrostTables.SNOW);
      return new Surface(
          cover.factor(),
          new Surface.Snow(measured(Priors.Kind.SNOW_DEPTH, snow), tables.snow().value()));
    }
    String named = soil == null ? null : soil.surface();
    cover =
        (named == null ? Optional.<FrostTables.Cover>empty() : tables.surface(named))
            .orElseGet(() -> tables.surfaceOf(FrostTables.UNKNOWN));
    return new Surface(cover.factor(), null);
  }

  /** Tells what it was worked out from, each with where it is from. */
  void tell() {
    Known is = known;
    FrostTables.Soil ground = row;
    FrostTables.Cover above = cover;
    if (is == null || ground == null || above == null) {
      return;
    }
    String source = climate == null ? null : climate.source();
    tell.reason(
        AnswerKey.FREEZE_WINTER,
        figure(FigureKey.FREEZING_INDEX, Dimension.DEGREE_DAYS, is.winter().freezingIndex()),
        figure(FigureKey.MEAN_TEMPERATURE, Dimension.TEMPERATURE, is.winter().meanTemperature()),
        figure(FigureKey.SEASON, Dimension.DURATION, is.winter().season()),
        new Argument.Choices(source == null ? List.of() : List.of(source)));
    boolean measured = soil != null && soil.water() != null;
    tell.reason(
        measured ? AnswerKey.FREEZE_SOIL_MEASURED : AnswerKey.FREEZE_SOIL,
        new Argument.Term("soil." + ground.id()),
        figure(FigureKey.SOIL_WATER, Dimension.SHARE, is.ground().moisture()),
        new Argument.Term(ground.cited().mark().key()));
    boolean unknown = above.id().equals(FrostTables.UNKNOWN);
    String noted = soil == null ? null : soil.surface();
    AnswerKey unheard =
        noted == null ? AnswerKey.FREEZE_SURFACE_UNKNOWN : AnswerKey.FREEZE_SURFACE_WORD;
    if (unknown && noted != null) {
      tell.missing(AnswerKey.MISSING_SURFACE);
    }
    tell.reason(
        unknown ? unheard : AnswerKey.FREEZE_SURFACE,
        unknown && noted != null
            ? new Argument.Text(noted)
            : new Argument.Term("surface." + above.id()),
        figure(FigureKey.SURFACE_SHARE, Dimension.SHARE, above.factor()),
        new Argument.Term(above.cited().mark().key()));
    Surface.Snow snow = is.surface().snow();
    if (snow == null) {
      tell.reason(AnswerKey.FREEZE_NO_SNOW);
    } else {
      tell.reason(
          AnswerKey.FREEZE_SNOW,
          tell.figure(FigureKey.SNOW, new Argument.UncertainLength(snow.depth()), null),
          new Argument.Term(tables.snow().cited().mark().key()));
    }
    if (above.cited().source().equals(MANUAL)) {
      tell.rule(
          "UFC 3-130-06",
          "Table 2-4",
          new Argument.Quantity(Dimension.SHARE, above.factor().value()),
          MANUAL);
    }
  }

  private Argument figure(FigureKey what, Dimension dimension, Measured value) {
    return tell.figure(what, new Argument.Quantity(dimension, value.value()), null);
  }

  /** Names what would make an input surer. */
  void missing(Input input, Place at) {
    switch (input) {
      case COVER -> tell.missing(AnswerKey.MISSING_COVER, tell.station(at), tell.from(at));
      case FREEZING_INDEX, SEASON -> tell.missing(AnswerKey.MISSING_WINTERS);
      case MEAN_TEMPERATURE, FORMULA -> tell.missing(AnswerKey.MISSING_GROUND_TEMPERATURE);
      case MOISTURE -> tell.missing(AnswerKey.MISSING_SOIL_WATER);
      case DRY_DENSITY, CONDUCTIVITY -> tell.missing(AnswerKey.MISSING_SOIL_TEST);
      case SURFACE -> tell.missing(AnswerKey.MISSING_SURFACE);
      case SNOW, SNOW_CONDUCTIVITY -> tell.missing(AnswerKey.MISSING_SNOW);
    }
    boolean unknown = cover != null && cover.id().equals(FrostTables.UNKNOWN);
    if (unknown) {
      tell.missing(AnswerKey.MISSING_SURFACE);
    }
  }
}
