package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.line.book.Priors;
import daylight.line.frost.FrostTables;
import daylight.line.frost.Ground;
import daylight.line.frost.Monthly;
import daylight.line.frost.Surface;
import daylight.line.frost.Winter;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How deep the frost of a winter goes, and whether it gets to a pipe. */
@Command(
    name = "frost",
    mixinStandardHelpOptions = true,
    description = {
      "How deep the frost of a winter goes, and how likely it gets to something that lies so deep.",
      "",
      "From the freezing index of the air, the mean temperature of the year and the length of the",
      "frost season, or the mean winter of a place that is known; the soil, what covers it and snow",
      "that lies all winter. Modified Berggren formula with the exact factor. Leaves with 1 where the",
      "formula does not hold, or where it cannot be told whether frost gets to --cover."
    })
final class FigureFrost extends SondeFigure {
  @Option(
      names = "--freezing-index",
      paramLabel = "DEGREE-DAYS",
      description = "Freezing index of the air: 2500 F-days or 1390 C-days.")
  private @Nullable String index;

  @Option(
      names = "--mean-temperature",
      paramLabel = "TEMPERATURE",
      description = "Mean temperature of the year: 45 °F.")
  private @Nullable String mean;

  @Option(names = "--season", paramLabel = "TIME", description = "How long it freezes: 120 d.")
  private @Nullable String season;

  @Option(
      names = "--climate",
      paramLabel = "PLACE",
      description = "The mean winter of a place, in place of what is not given of these three.")
  private @Nullable String climate;

  @Option(names = "--soil", paramLabel = "SOIL", description = "What the ground is: silty clay.")
  private @Nullable String soil;

  @Option(
      names = "--moisture",
      paramLabel = "SHARE",
      description = "Its water by dry weight: 20 %%. Usual for the soil where not given.")
  private @Nullable String moisture;

  @Option(
      names = "--dry-density",
      paramLabel = "DENSITY",
      description = "Its density without water: 100 lb/ft3. Usual for the soil where not given.")
  private @Nullable String density;

  @Option(
      names = "--conductivity",
      paramLabel = "CONDUCTIVITY",
      description =
          "Mean of frozen and thawed: 0.76 Btu/hftF. From density and water where not given.")
  private @Nullable String conductivity;

  @Option(
      names = "--surface",
      paramLabel = "SURFACE",
      description = "What covers the ground: lawn, asphalt, bare soil.")
  private @Nullable String surface;

  @Option(
      names = "--n-factor",
      paramLabel = "NUMBER",
      description = "The share of the air's index that the surface gets, in place of --surface.")
  private @Nullable String factor;

  @Option(names = "--snow", paramLabel = "LENGTH", description = "Snow that lies all winter.")
  private @Nullable String snow;

  @Option(
      names = "--cover",
      paramLabel = "LENGTH",
      description = "How deep the pipe's top, or its water, lies below the ground.")
  private @Nullable String cover;

  @Option(
      names = "--cover-give-or-take",
      paramLabel = "LENGTH",
      description = "How far off the cover may be, 19 times of 20.")
  private @Nullable String coverOff;

  @Option(
      names = "--frost-data",
      paramLabel = "FILE",
      description = "Soils, surfaces and climates of your own in place of those of Daylight.")
  private @Nullable Path data;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    FrostTables tables =
        data == null
            ? Bundled.frost()
            : FigureChoices.taken(given, "--frost-data", DataReader.frost(data), Bundled.frost());
    FrostTold told = new FrostTold(tables);
    Winter winter = winter(given, priors, tables, told);
    Ground ground = ground(given, priors, tables, told);
    Surface above = surface(given, priors, tables, told);
    Reading deep = given.lengthFromZero("--cover", cover);
    Reading off = given.positiveLength("--cover-give-or-take", coverOff);
    if (winter == null || ground == null || above == null || !given.sound()) {
      return null;
    }
    if (deep != null) {
      double usual = priors.sd(Priors.Kind.EXPOSURE, deep);
      told.below(new Measured(deep.value(), given.sd(off, usual)));
    }
    return told.figured(winter, ground, above);
  }

  private @Nullable Winter winter(Given given, Priors priors, FrostTables tables, FrostTold told) {
    Reading cold = given.quantity(Dimension.DEGREE_DAYS, "--freezing-index", index);
    Reading year = given.quantity(Dimension.TEMPERATURE, "--mean-temperature", mean);
    Reading lasts =
        given.positive("--season", given.quantity(Dimension.DURATION, "--season", season));
    Monthly place = null;
    if (climate != null) {
      Optional<FrostTables.Climate> known = tables.climate(climate);
      if (known.isPresent()) {
        place = known.get().monthly();
        told.climate(known.get());
      } else {
        List<String> ids = tables.climates().stream().map(FrostTables.Climate::id).toList();
        unknown(given, "--climate", climate, ids);
      }
    } else {
      given.need("--freezing-index", index);
      given.need("--mean-temperature", mean);
      given.need("--season", season);
    }
    if (!given.sound()) {
      return null;
    }
    double days = cold != null || place == null ? value(cold) : place.freezingIndex();
    double degrees = year != null || place == null ? value(year) : place.meanTemperature();
    double seconds = lasts != null || place == null ? value(lasts) : place.season();
    return new Winter(
        doubted(priors, Priors.Kind.FREEZING_INDEX, days, cold),
        doubted(priors, Priors.Kind.MEAN_TEMPERATURE, degrees, year),
        doubted(priors, Priors.Kind.SEASON, Math.max(1, seconds), lasts));
  }

  private static double value(@Nullable Reading reading) {
    return reading == null ? 0 : reading.value();
  }

  private static Measured doubted(
      Priors priors, Priors.Kind kind, double value, @Nullable Reading reading) {
    Double stated = reading == null ? null : reading.sd();
    double sd = stated == null ? priors.sd(kind, value) : stated;
    // Where there is no cold there is none, whatever the doubt.
    return new Measured(value, sd > 0 ? sd : 1e-9);
  }

  private @Nullable Ground ground(Given given, Priors priors, FrostTables tables, FrostTold told) {
    Reading water = given.quantity(Dimension.SHARE, "--moisture", moisture);
    Reading dry =
        given.positive(
            "--dry-density", given.quantity(Dimension.DENSITY, "--dry-density", density));
    Reading conducts =
        given.positive(
            "--conductivity",
            given.quantity(Dimension.CONDUCTIVITY, "--conductivity", conductivity));
    FrostTables.Soil row = null;
    if (soil == null) {
      if (moisture == null || density == null || conductivity == null) {
        given.complain("--soil", "figure.frost.soil-or-all");
      }
    } else {
      row = tables.soil(soil).orElse(null);
      if (row == null) {
        unknown(given, "--soil", soil, tables.soils().stream().map(FrostTables.Soil::id).toList());
      } else {
        told.soil(row, dry == null, water == null);
      }
    }
    Measured is =
        water != null
            ? new Measured(water.value(), priors.sd(Priors.Kind.SOIL_WATER, water))
            : row == null ? null : row.moisture();
    Measured heavy =
        dry != null
            ? new Measured(dry.value(), FrostTold.DENSITY * dry.value())
            : row == null ? null : row.dryDensity();
    if (!given.sound() || is == null || heavy == null) {
      return null;
    }
    Measured k =
        conducts == null
            ? null
            : new Measured(conducts.value(), FrostTold.CONDUCTIVITY * conducts.value());
    return new Ground(row == null ? Ground.Grain.FINE : row.grain(), heavy, is, k);
  }

  private @Nullable Surface surface(
      Given given, Priors priors, FrostTables tables, FrostTold told) {
    Double n = given.number("--n-factor", factor, 0.01, 3);
    Reading deep = given.lengthFromZero("--snow", snow);
    if (n != null && surface != null) {
      given.complain("--n-factor", "figure.frost.one-surface");
    }
    Optional<FrostTables.Cover> named =
        surface == null ? Optional.empty() : tables.surface(surface);
    if (surface != null && named.isEmpty()) {
      List<String> ids =
          tables.surfaces().stream()
              .map(FrostTables.Cover::id)
              .filter(id -> !id.equals(FrostTables.UNKNOWN))
              .toList();
      unknown(given, "--surface", surface, ids);
    }
    if (!given.sound()) {
      return null;
    }
    Surface.Snow above =
        deep == null || !(deep.value() > 0)
            ? null
            : new Surface.Snow(
                new Measured(deep.value(), priors.sd(Priors.Kind.SNOW_DEPTH, deep)),
                tables.snow().value());
    boolean lies = above != null;
    if (lies) {
      told.snow();
    }
    if (n != null) {
      return new Surface(new Measured(n, FrostTold.FACTOR), above);
    }
    FrostTables.Cover cover =
        lies
            ? tables.surfaceOf(FrostTables.SNOW)
            : named.orElse(tables.surfaceOf(FrostTables.UNKNOWN));
    told.surface(cover);
    return new Surface(cover.factor(), above);
  }

  private static void unknown(Given given, String option, String text, List<String> known) {
    Optional<String> near = Nearest.of(text.toLowerCase(Locale.ROOT), known);
    given.complain(
        option,
        "figure.frost.unknown",
        Given.text(text),
        new Argument.Choices(near.map(List::of).orElse(List.of())),
        new Argument.Choices(known));
  }
}
