package daylight.line.frost;

import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is usual of soils, surfaces, snow and climates: data with their sources.
 *
 * @param soils by the words people use
 * @param surfaces by the words people use; the one with the id {@code unknown} stands for one that
 *     was not noted, the one with the id {@code snow} for the top of snow
 * @param snow how well lying snow conducts
 * @param climates of a few well-known places
 * @param formula how far off the formula's depths may be, as a factor about 1
 */
public record FrostTables(
    List<Soil> soils, List<Cover> surfaces, Row snow, List<Climate> climates, Row formula) {
  /** The id of the surface that was not noted. */
  public static final String UNKNOWN = "unknown";

  /** The id of the surface that snow has. */
  public static final String SNOW = "snow";

  public FrostTables {
    soils = List.copyOf(soils);
    surfaces = List.copyOf(surfaces);
    climates = List.copyOf(climates);
  }

  /** Where a figure is from. */
  public record Cited(String source, Mark mark, @Nullable String note) {}

  /** One figure. */
  public record Row(Measured value, Cited cited) {}

  /**
   * One soil.
   *
   * @param names words people use for it
   * @param dryDensity kilograms per cubic metre
   * @param moisture by dry weight, where it was not measured
   */
  public record Soil(
      String id,
      List<String> names,
      Ground.Grain grain,
      Measured dryDensity,
      Measured moisture,
      Cited cited) {
    public Soil {
      names = List.copyOf(names);
    }
  }

  /**
   * One surface.
   *
   * @param names words people use for it
   * @param factor what share of the air's freezing index it gets
   */
  public record Cover(String id, List<String> names, Measured factor, Cited cited) {
    public Cover {
      names = List.copyOf(names);
    }
  }

  /**
   * One place.
   *
   * @param months means of January to December, °C
   */
  public record Climate(String id, String place, List<Double> months, Cited cited) {
    public Climate {
      months = List.copyOf(months);
    }

    /** The cold of its mean winter. */
    public Monthly monthly() {
      return Monthly.of(months);
    }
  }

  /** The soil of which a text speaks; the longest name that is in it decides. */
  public Optional<Soil> soil(String text) {
    return spokenOf(text, soils, Soil::names, Soil::id);
  }

  /** The surface of which a text speaks. */
  public Optional<Cover> surface(String text) {
    return spokenOf(text, surfaces, Cover::names, Cover::id);
  }

  /** The place of that id or name. */
  public Optional<Climate> climate(String text) {
    String plain = plain(text);
    return climates.stream()
        .filter(one -> plain(one.id()).equals(plain) || plain(one.place()).startsWith(plain))
        .findFirst();
  }

  /** The surface of that id, which the tables have. */
  public Cover surfaceOf(String id) {
    return surfaces.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private interface Words<T, R> {
    R of(T row);
  }

  private static <T> Optional<T> spokenOf(
      String text, List<T> rows, Words<T, List<String>> names, Words<T, String> id) {
    String within = " " + plain(text) + " ";
    T best = null;
    int longest = 0;
    for (T row : rows) {
      int length = within.contains(" " + plain(id.of(row)) + " ") ? id.of(row).length() : 0;
      for (String name : names.of(row)) {
        length =
            within.contains(" " + plain(name) + " ") ? Math.max(length, name.length()) : length;
      }
      if (length > longest) {
        best = row;
        longest = length;
      }
    }
    return Optional.ofNullable(best);
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").strip();
  }
}
