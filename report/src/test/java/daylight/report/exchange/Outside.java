package daylight.report.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** GDAL's and PROJ's own programs (Debian gdal-bin and proj-bin). */
final class Outside {
  private Outside() {}

  /** What a program says of an input; it must say nothing else, no warning either. */
  static String run(String input, String... command) {
    try {
      Path in = Files.createTempFile("outside", ".txt");
      Path out = Files.createTempFile("outside", ".txt");
      Path err = Files.createTempFile("outside", ".txt");
      Files.writeString(in, input);
      int code =
          new ProcessBuilder(command)
              .redirectInput(in.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start()
              .waitFor();
      String said = Files.readString(out, StandardCharsets.UTF_8);
      assertThat(Files.readString(err)).as(String.join(" ", command)).isEmpty();
      assertThat(code).as(String.join(" ", command)).isZero();
      Files.delete(in);
      Files.delete(out);
      Files.delete(err);
      return said;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** The features of a layer as GDAL reads them, as GeoJSON. */
  static List<JsonNode> features(Path file, String layer, String... more) {
    List<String> command =
        new ArrayList<>(List.of("ogr2ogr", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=12"));
    command.addAll(List.of(more));
    command.addAll(List.of("/vsistdout/", file.toString(), layer));
    try {
      JsonNode read = new ObjectMapper().readTree(run("", command.toArray(String[]::new)));
      List<JsonNode> features = new ArrayList<>();
      read.get("features").forEach(features::add);
      return features;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** East and north of positions from an origin, metres, by PROJ's azimuthal projection. */
  static List<double[]> local(double longitude, double latitude, List<double[]> positions) {
    return projected(longitude, latitude, positions, false);
  }

  /** Longitude and latitude of places so far east and north of an origin, by the same. */
  static List<double[]> onEarth(double longitude, double latitude, List<double[]> places) {
    return projected(longitude, latitude, places, true);
  }

  private static List<double[]> projected(
      double longitude, double latitude, List<double[]> pairs, boolean inverse) {
    StringBuilder input = new StringBuilder();
    pairs.forEach(
        one -> input.append(String.format(Locale.ROOT, "%.12f %.12f 0 0%n", one[0], one[1])));
    List<String> command = new ArrayList<>(List.of("cct", "-d", "12"));
    if (inverse) {
      command.add("-I");
    }
    command.addAll(
        List.of(
            "+proj=aeqd",
            "+ellps=WGS84",
            String.format(Locale.ROOT, "+lon_0=%.12f", longitude),
            String.format(Locale.ROOT, "+lat_0=%.12f", latitude)));
    List<double[]> result = new ArrayList<>();
    for (String line : run(input.toString(), command.toArray(String[]::new)).lines().toList()) {
      String[] words = line.strip().split("\\s+", -1);
      result.add(new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1])});
    }
    return result;
  }
}
