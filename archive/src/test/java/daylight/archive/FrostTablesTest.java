package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.frost.FrostTables;
import daylight.line.frost.Monthly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables that frost is worked out with, against what they were taken from. */
class FrostTablesTest {
  private static final FrostTables TABLES = Bundled.frost();
  private static final double DAYS = 365.25 / 12;

  /** UFC 3-130-06, Table 2-4, for freezing (looked up). */
  @ParameterizedTest
  @CsvSource({
    "snow, 1.0",
    "concrete, 0.75",
    "asphalt, 0.7",
    "bare-soil, 0.7",
    "shaded, 0.9",
    "turf, 0.5",
    "trees, 0.3"
  })
  void surfacesAreThoseOfTheManual(String id, double factor) {
    assertThat(TABLES.surfaceOf(id).factor().value()).isCloseTo(factor, within(1e-9));
  }

  /** The mean of the year as each source gives it beside its months, °C. */
  @ParameterizedTest
  @CsvSource({
    "chicago, 9.94",
    "madison, 8.33",
    "albert-lea, 6.78",
    "aitkin, 4.39",
    "toronto, 9.2",
    "ottawa, 6.0",
    "winnipeg, 2.6"
  })
  void monthsHaveTheMeanThatTheirSourceGives(String id, double mean) {
    assertThat(monthly(id).meanTemperature()).isCloseTo(mean, within(0.07));
  }

  /**
   * The approximate index of Boyd (1979), by yamz.net (looked up): days of each month that is below
   * freezing times how far. The area under the curve through the months is less, by up to a sixth
   * where only three of them freeze, for the curve cuts the coldest one short.
   */
  @Test
  void indexesAreNearTheSumsOverFrozenMonths() {
    for (FrostTables.Climate climate : TABLES.climates()) {
      double sum = climate.months().stream().filter(t -> t < 0).mapToDouble(t -> -t * DAYS).sum();
      double ours = climate.monthly().freezingIndex();
      assertThat(ours).as(climate.id()).isCloseTo(sum, within(0.17 * sum));
      assertThat(climate.monthly().season() / 86_400).as(climate.id()).isBetween(60.0, 230.0);
    }
  }

  private static Monthly monthly(String id) {
    return TABLES.climate(id).orElseThrow().monthly();
  }

  @ParameterizedTest
  @CsvSource({
    "silty clay, silty-clay",
    "Silty Clay, silty-clay",
    "heavy wet clay, clay",
    "stiff clay with stones, clay",
    "sandy loam, sandy-silt",
    "silty sand, sand",
    "sand and gravel, gravel"
  })
  void soilsAreFoundInTheWordsOfTheBook(String words, String id) {
    assertThat(TABLES.soil(words)).hasValueSatisfying(soil -> assertThat(soil.id()).isEqualTo(id));
  }

  @Test
  void wordsThatNoTableKnowsAreNotGuessed() {
    assertThat(TABLES.soil("builder's fill")).isEmpty();
    assertThat(TABLES.soil("clayish")).isEmpty();
    assertThat(TABLES.surface("rubber matting")).isEmpty();
    assertThat(TABLES.climate("nowhere")).isEmpty();
    assertThat(TABLES.surface("asphalt drive").orElseThrow().id()).isEqualTo("asphalt");
    assertThat(TABLES.surface("the lawn").orElseThrow().id()).isEqualTo("turf");
  }

  @Test
  void everyRowNamesASourceThatIsListed() throws IOException {
    String listed = Files.readString(Path.of("..", "SOURCES.md"));
    List<FrostTables.Cited> all = new ArrayList<>();
    TABLES.soils().forEach(row -> all.add(row.cited()));
    TABLES.surfaces().forEach(row -> all.add(row.cited()));
    TABLES.climates().forEach(row -> all.add(row.cited()));
    all.add(TABLES.snow().cited());
    all.add(TABLES.formula().cited());
    assertThat(all).allSatisfy(one -> assertThat(listed).contains("`" + one.source() + "`"));
  }
}
