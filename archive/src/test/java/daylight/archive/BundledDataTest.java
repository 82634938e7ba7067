package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Catalogue;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallRules;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The data that come with Daylight, against the figures they were taken from; and overriding. */
class BundledDataTest {
  private static final double INCH = 0.0254;

  /** Common practice, no source; the marks of the file say so. */
  @ParameterizedTest
  @CsvSource({
    "TAPE, 20, 0.014142",
    "COUNTER_SCALE, 5, 0.01",
    "SLACK, 30, 0.15",
    "LOCATE_SPOT, 1, 0.070711",
    "DEPTH_READING, 1, 0.042426",
    "DEPTH_DISTORTION, 2, 0.08",
    "ALONG, 20, 0.022361",
    "OUT, 1.5, 0.042426",
    "BEND_ANGLE, 0, 0.087266",
    "FALL, 0, 0.05",
    "WATER_DEPTH, 0.1, 0.014142",
    "GNSS, 0, 3"
  })
  void priorsAreWhatIsSaidOnSite(Priors.Kind kind, double size, double sd) {
    assertThat(Bundled.priors().sd(kind, size)).isCloseTo(sd, within(1e-6));
  }

  @Test
  void onlyWhatTheReceiverShowsGetsWorseWithItsSignal() {
    for (Priors.Prior prior : Bundled.priors().rows()) {
      boolean received =
          List.of(
                  Priors.Kind.LOCATE_SPOT,
                  Priors.Kind.DEPTH_READING,
                  Priors.Kind.DEPTH_DISTORTION,
                  Priors.Kind.NULL_MARK)
              .contains(prior.kind());
      assertThat(prior.fair()).isEqualTo(received ? 1.5 : 1);
      assertThat(prior.poor()).isEqualTo(received ? 3 : 1);
    }
    assertThat(Bundled.priors().of(Priors.Kind.DEPTH_DISTORTION).correlationLength()).isEqualTo(3);
  }

  @Test
  void theCatalogueKnowsTheTradesWords() {
    Catalogue catalogue = Bundled.catalogue();
    assertThat(catalogue.kinds()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(catalogue.find("foreign-pipe").orElseThrow().hazard())
        .isEqualTo(Catalogue.Hazard.STOP);
    Catalogue.Kind water = catalogue.find("standing-water").orElseThrow();
    assertThat(water.quantities())
        .containsEntry("depth", Dimension.LENGTH)
        .containsEntry("share", Dimension.SHARE);
    assertThat(water.words()).contains("still");
    assertThat(water.stretch()).isTrue();
    assertThat(catalogue.find("material-change").orElseThrow().words()).contains("becomes");
    // Main code BAJ of EN 13508-2 for a displaced joint: from memory, not checked.
    assertThat(catalogue.find("displaced-joint").orElseThrow().letters()).isEqualTo("BAJ");
  }

  /**
   * International Plumbing Code, Table 704.1, as adopted in Chicago Table 18-29-704.1
   * (codelibrary.amlegal.com); IRC P3005.3 as quoted at forum.nachi.org; UPC 708.0 as quoted at
   * thebuildingcodeforum.com; Ontario Building Code 7.4.8.1 (buildingcode.online/1059.html);
   * National Plumbing Code of Canada 2.4.8.1 and Ten States Standards 33.41 from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "ipc, 2, 48",
    "ipc, 2.5, 48",
    "ipc, 3, 96",
    "ipc, 6, 96",
    "ipc, 8, 192",
    "ipc, 12, 192",
    "irc, 2.5, 48",
    "irc, 4, 96",
    "upc, 4, 48",
    "obc, 3, 50",
    "npc, 3, 50",
    "npc, 4, 100",
    "ten-states, 8, 250"
  })
  void smallestSlopesAreOneIn(String rules, double inches, double run) {
    FallLimit limit =
        Bundled.fallRules(rules).limit(inches * INCH, Reach.Use.SANITARY).orElseThrow();
    assertThat(limit.slope()).isCloseTo(1 / run, within(1e-12));
  }

  @Test
  void aTableSaysNothingWhereItsCodeSaysNothing() {
    FallRules ipc = Bundled.fallRules("ipc-704.1");
    assertThat(ipc.limit(7 * INCH, Reach.Use.STORM)).isEmpty();
    assertThat(ipc.limit(4 * INCH, Reach.Use.PUMPED)).isEmpty();
    assertThat(Bundled.fallRules("obc").limit(4 * INCH, Reach.Use.STORM)).isEmpty();
    assertThat(Bundled.fallRules("ten-states").limit(9 * INCH, Reach.Use.STORM)).isEmpty();
  }

  @Test
  void everyTableIsReadAndNamesItself() {
    for (String id : Bundled.fallRulesIds()) {
      FallRules rules = Bundled.fallRules(id);
      assertThat(rules.id()).isEqualTo(id);
      assertThat(rules.title()).isNotBlank();
      assertThat(rules.rows()).isNotEmpty();
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Bundled.fallRules("none"));
  }

  @Test
  void aCompanysFileReplacesTheRowsItHas() {
    Priors base = Bundled.priors();
    ReadData<Priors> read =
        DataReader.priors(
            "ours.yaml",
            bytes(
                """
                daylight-priors: 1
                priors:
                  - {kind: gnss, a: 30 mm, source: our-receiver, mark: looked-up}
                """),
            base);
    assertThat(read.complaints()).isEmpty();
    Priors ours = Objects.requireNonNull(read.value());
    assertThat(ours.sd(Priors.Kind.GNSS, 0)).isEqualTo(0.03);
    assertThat(ours.of(Priors.Kind.TAPE)).isEqualTo(base.of(Priors.Kind.TAPE));
  }

  @Test
  void aCompanysKindsAreAddedToTheCatalogue() {
    ReadData<Catalogue> read =
        DataReader.catalogue(
            "ours.yaml",
            bytes(
                """
                daylight-catalogue: 1
                kinds:
                  - {id: toy, bears: operation, quantities: {size: length}, symbol: toy}
                """),
            Bundled.catalogue());
    Catalogue ours = Objects.requireNonNull(read.value());
    assertThat(ours.find("toy")).isPresent();
    assertThat(ours.find("roots")).isPresent();
  }

  @Test
  void whatIsWrongIsToldInItsPlaceAndGivesNoHalfTable() {
    ReadData<Priors> read =
        DataReader.priors(
            "ours.yaml",
            bytes(
                """
                daylight-priors: 1
                priors:
                  - {kind: tapes, a: 1 mm, source: x, mark: looked-up}
                  - {kind: gnss, a: 3°, source: x, mark: looked-up}
                  - {kind: tape, fair: 0.5, a: 1 mm, mark: looked-up}
                  - {kind: level, source: x, mark: looked-up}
                """),
            Bundled.priors());
    assertThat(read.value()).isNull();
    assertThat(read.complaints().stream().map(BundledDataTest::inALine))
        .containsExactly(
            "form.not-a-choice 3:12 priors[0].kind",
            "form.not-a-quantity 4:21 priors[1].a",
            "form.missing 5:5 priors[2].source",
            "form.not-a-number 5:24 priors[2].fair",
            "form.missing 6:5 priors[3].a");
  }

  @Test
  void aKindMayNotTakeAKeyThatEveryFindingHas() {
    ReadData<Catalogue> read =
        DataReader.catalogue(
            "ours.yaml",
            bytes(
                """
                daylight-catalogue: 1
                kinds: [{id: toy, bears: operation, quantities: {clock: clock}}]
                """),
            null);
    assertThat(read.complaints().stream().map(BundledDataTest::inALine))
        .containsExactly("form.duplicate-key 2:57 kinds[0].quantities.clock");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String inALine(Complaint complaint) {
    String place = complaint.place().line() + ":" + complaint.place().column();
    return complaint.code().key() + " " + place + " " + complaint.place().path();
  }
}
