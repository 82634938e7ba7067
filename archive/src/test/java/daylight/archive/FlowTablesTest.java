package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Material;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Roughness;
import daylight.line.measure.Complaint;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Figures of pipes, against the tables they were taken from; and what is wrong in a file. */
class FlowTablesTest {
  private static final double INCH = 0.0254;

  private final FlowTables tables = Bundled.flow();

  /** Schedule 40 inside diameters as a copy of the table of ASTM D1785 gives them (looked up). */
  @ParameterizedTest
  @CsvSource({"1.25, 1.380", "1.5, 1.610", "2, 2.067", "3, 3.068", "4, 4.026", "6, 6.065"})
  void scheduleForty(double nominal, double inside) {
    assertThat(tables.bore("schedule-40", nominal * INCH).orElseThrow().inside())
        .isCloseTo(inside * INCH, within(1e-9));
    assertThat(tables.bore("schedule-40", 5 * INCH)).isEmpty();
    assertThat(tables.bore("sdr-35", 1.5 * INCH)).isEmpty();
  }

  /** Every drain is of some material, so each has an n; and the range holds the figure. */
  @ParameterizedTest
  @EnumSource(Material.class)
  void everyMaterialHasItsRoughness(Material material) {
    FlowTables.Wall wall =
        tables.wall(material, FlowTables.State.USED, FrictionLaw.MANNING).orElseThrow();
    assertThat(wall.from()).isLessThanOrEqualTo(wall.typical());
    assertThat(wall.roughness().figure().sd()).isPositive();
    assertThat(wall.origin().source()).isNotBlank();
  }

  @Test
  void theNearestStateIsTaken() {
    Roughness bad =
        tables
            .wall(Material.PVC, FlowTables.State.BAD, FrictionLaw.MANNING)
            .orElseThrow()
            .roughness();
    // 0.009 to 0.013 holds 95 %.
    assertThat(bad.figure().value()).isEqualTo(0.010);
    assertThat(bad.figure().sd()).isCloseTo(0.004 / 3.92, within(1e-6));
    assertThat(
            tables
                .wall(Material.CAST_IRON, FlowTables.State.NEW, FrictionLaw.DARCY_WEISBACH)
                .orElseThrow()
                .typical())
        .isCloseTo(0.26e-3, within(1e-12));
    assertThat(tables.fitting("check-valve").orElseThrow().loss().value()).isEqualTo(2);
    assertThat(tables.surface("roof").orElseThrow().runoff().value()).isEqualTo(0.9);
  }

  @Test
  void everythingWrongInAFileIsToldAtOnce() {
    String file =
        """
        daylight-flow: 1
        walls:
          - {material: pvc, state: used, law: manning, typical: 0.010, from: 0.011, to: 0.013, source: ours, mark: derived}
          - {material: pvc, state: used, law: manning, typical: 10, from: 0.009, to: 0.013, source: ours, mark: derived}
          - {material: glass, state: used, law: manning, typical: 0.010, from: 0.009, to: 0.013, source: ours, mark: derived}
          - {material: steel, state: used, law: darcy-weisbach, height: 0 mm, from-height: 0.1 mm, to-height: 0.4 mm, source: ours, mark: derived}
        fittings:
          - {id: bend, typical: 1, from: 1, to: 1, source: ours, mark: derived}
          - {id: elbow, typical: 1, from: 0.5, to: 2, source: ours, mark: derived}
          - {id: elbow, typical: 1, from: 0.5, to: 2, source: ours, mark: derived}
        bores:
          - {series: ours, nominal: 4 in, inside: 4, source: ours, mark: derived}
        """;
    ReadData<FlowTables> read = DataReader.flow("ours.yaml", file.getBytes(StandardCharsets.UTF_8));
    assertThat(read.value()).isNull();
    assertThat(read.complaints())
        .extracting(FlowTablesTest::said)
        .containsExactlyInAnyOrder(
            "3 rules.not-less",
            "4 form.not-a-number",
            "5 form.not-a-choice",
            "6 form.not-positive",
            "8 rules.not-less",
            "10 rules.row-twice",
            "12 form.not-a-quantity",
            "1 form.missing");
  }

  private static String said(Complaint complaint) {
    return complaint.place().line() + " " + complaint.code().key();
  }

  @Test
  void aCompanysFileIsRead() {
    String file =
        """
        daylight-flow: 1
        walls: [{material: unknown, state: used, law: manning, typical: 0.013, from: 0.01, to: 0.02, source: ours, mark: derived}]
        fittings: []
        bores: []
        surfaces: [{id: roof, typical: 1, from: 0.9, to: 1, source: ours, mark: derived}]
        """;
    ReadData<FlowTables> read = DataReader.flow("ours.yaml", file.getBytes(StandardCharsets.UTF_8));
    assertThat(read.complaints()).isEqualTo(List.of());
    assertThat(read.value()).isNotNull();
  }
}
