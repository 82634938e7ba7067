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
import java.util.concurrent.TimeUnit;

/** GDAL's and PROJ's own programs (Debian gdal-bin and proj-bin). */
final class Outside {
  private static final long LIMIT_S = 60;

  private Outside() {}

  /**
   * What a program says of an input; it must say nothing else, no warning either, and be done
   * within a minute.
   */
  static String run(String input, String... command) {
    String said = String.join(" ", command);
    try {
      Path in = Files.createTempFile("outside", ".txt");
      Path out = Files.createTempFile("outside", ".txt");
      Path err = Files.createTempFile("outside", ".txt");
      try {
        Files.writeString(in, input);
        Process process =
            new ProcessBuilder(command)
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        boolean done = process.waitFor(LIMIT_S, TimeUnit.SECONDS);
        if (!done) {
          process.destroyForcibly().waitFor();
        }
        String result = Files.readString(out, StandardCharsets.UTF_8);
        String complaint = Files.readString(err, StandardCharsets.UTF_8);
        String all = said + " said:\n" + result + complaint;
        assertThat(done).as("not done in %d s: %s", LIMIT_S, all).isTrue();
        assertThat(process.exitValue()).as("%s", all).isZero();
        assertThat(complaint).as("%s", said).isEmpty();
        return result;
      } finally {
        Files.delete(in);
        Files.delete(out);
        Files.delete(err);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(said, e);
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
