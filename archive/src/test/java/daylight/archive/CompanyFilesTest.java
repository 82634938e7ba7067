package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.answer.Rules;
import daylight.line.book.Catalogue;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.fall.FallRules;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A company's own files over the data that come with Daylight: what they change, what they leave.
 */
class CompanyFilesTest {
  @TempDir private Path folder = Path.of("");

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("ours.yaml"), text);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The complaints, as code, place and path; each must name the file. */
  private static List<String> told(List<Complaint> complaints) {
    assertThat(complaints).allMatch(c -> "ours.yaml".equals(c.place().file()));
    return complaints.stream()
        .map(
            c ->
                "%s %d:%d %s"
                    .formatted(
                        c.code().key(), c.place().line(), c.place().column(), c.place().path()))
        .toList();
  }

  private static List<String> priors(String text) {
    ReadData<Priors> read = DataReader.priors("ours.yaml", bytes(text), Bundled.priors());
    assertThat(read.value()).isNull();
    return told(read.complaints());
  }

  private static List<String> catalogue(String text) {
    ReadData<Catalogue> read = DataReader.catalogue("ours.yaml", bytes(text), Bundled.catalogue());
    assertThat(read.value()).isNull();
    return told(read.complaints());
  }

  private static List<String> rules(String text) {
    ReadData<FallRules> read = DataReader.fallRules("ours.yaml", bytes(text));
    assertThat(read.value()).isNull();
    return told(read.complaints());
  }

  private static List<String> limits(String text) {
    ReadData<Rules.Limits> read = DataReader.limits("ours.yaml", bytes(text), Bundled.limits());
    assertThat(read.value()).isNull();
    return told(read.complaints());
  }

  @Test
  void aRowOfPriorsReplacesTheWholeRowAndKeepsWhereItComesFrom() throws IOException {
    Priors base = Bundled.priors();
    ReadData<Priors> read =
        DataReader.priors(
            file(
                """
                daylight-priors: 1
                priors:
                  - {kind: sonde-behind-lens, a: 10 mm, typical: 14 in, typical-sd: 1 in, source: our-reel, mark: derived, note: measured on the bench}
                  - {kind: depth-reading, b: 2 %, source: our-receiver, mark: from-memory}
                """),
            base);
    assertThat(read.complaints()).isEmpty();
    Priors ours = Objects.requireNonNull(read.value());
    assertThat(ours.of(Priors.Kind.SONDE_BEHIND_LENS))
        .isEqualTo(
            new Priors.Prior(
                Priors.Kind.SONDE_BEHIND_LENS,
                0.01,
                0,
                0,
                1,
                1,
                new Priors.Typical(14 * 0.0254, 0.0254),
                "our-reel",
                Mark.DERIVED,
                "measured on the bench"));
    // A row that is replaced keeps nothing of the base, not even its multipliers.
    assertThat(ours.of(Priors.Kind.DEPTH_READING).poor()).isEqualTo(1);
    assertThat(ours.of(Priors.Kind.DEPTH_READING).note()).isNull();
    for (Priors.Kind kind : Priors.Kind.values()) {
      if (kind != Priors.Kind.SONDE_BEHIND_LENS && kind != Priors.Kind.DEPTH_READING) {
        assertThat(ours.of(kind)).isEqualTo(base.of(kind));
      }
    }
  }

  @Test
  void everyRowOfPriorsSaysHowItWasComeBy() {
    assertThat(Bundled.priors().rows())
        .allMatch(row -> row.mark() == Mark.COMMON_PRACTICE)
        .allMatch(row -> row.source().equals("common-practice"));
    assertThat(Bundled.priors().of(Priors.Kind.OUT).note()).isEqualTo("squared by eye");
    assertThat(Bundled.priors().of(Priors.Kind.ANGLE).note()).isNull();
  }

  @Test
  void whatIsWrongWithPriorsIsToldInItsPlace() {
    assertThat(
            priors(
                """
                daylight-priors: 1
                priors:
                  - {kind: tape, a: 1 mm, source: x, mark: looked-up, sigma: 3}
                  - {kind: out, a: 1 mm, mark: looked-up}
                  - {kind: along, a: 1 mm, source: x}
                  - {kind: angle, a: 1 mm, source: x, mark: looked-up}
                  - {kind: gnss, a: 1 m, source: x, mark: looked-up}
                  - {kind: gnss, a: 2 m, source: x, mark: guessed}
                  - {kind: level, a: -1 mm, source: x, mark: looked-up}
                  - {kind: bore, a: 1 mm, typical: 4 in, source: x, mark: looked-up}
                prior: []
                """))
        .containsExactly(
            "form.unknown-key 3:55 priors[0].sigma",
            "form.missing 4:5 priors[1].source",
            "form.missing 5:5 priors[2].mark",
            "form.not-a-quantity 6:22 priors[3].a",
            "form.not-a-choice 8:43 priors[5].mark",
            "form.not-positive 9:22 priors[6].a",
            "form.missing 10:5 priors[7].typical-sd",
            "form.unknown-key 11:1 prior");
  }

  @Test
  void oneKindHasOneRow() {
    assertThat(
            priors(
                """
                daylight-priors: 1
                priors:
                  - {kind: gnss, a: 1 m, source: x, mark: looked-up}
                  - {kind: gnss, a: 2 m, source: x, mark: looked-up}
                """))
        .containsExactly("form.duplicate-key 4:12 priors[1].kind");
  }

  @Test
  void aCompanysKindStandsInTheBasesPlace() throws IOException {
    Catalogue base = Bundled.catalogue();
    ReadData<Catalogue> read =
        DataReader.catalogue(
            file(
                """
                daylight-catalogue: 1
                kinds:
                  - {id: roots, bears: structure, hazard: care, quantities: {mass: volume}}
                  - {id: toy, bears: operation, stretch: yes, words: [whose], symbol: toy}
                """),
            base);
    assertThat(read.complaints()).isEmpty();
    Catalogue ours = Objects.requireNonNull(read.value());
    assertThat(ours.kinds()).hasSize(base.kinds().size() + 1);
    Catalogue.Kind roots = ours.find("roots").orElseThrow();
    assertThat(roots.bears()).isEqualTo(Catalogue.Bears.STRUCTURE);
    assertThat(roots.quantities()).containsOnly(java.util.Map.entry("mass", Dimension.VOLUME));
    assertThat(roots.symbol()).isEqualTo("roots");
    assertThat(ours.find("crack")).isEqualTo(base.find("crack"));
  }

  @Test
  void whatIsWrongWithACatalogueIsToldInItsPlace() {
    assertThat(
            catalogue(
                """
                daylight-catalogue: 1
                kinds:
                  - {bears: operation}
                  - {id: toy}
                  - {id: top, bears: operation, colour: red}
                  - {id: tip, bears: operations, hazard: some, stretch: maybe}
                  - {id: tap, bears: feature, quantities: {size: lengths}}
                  - {id: tub, bears: feature, words: [cable]}
                  - {id: tan, bears: feature}
                  - {id: tan, bears: feature}
                """))
        .containsExactly(
            "form.missing 3:5 kinds[0].id",
            "form.missing 4:5 kinds[1].bears",
            "form.unknown-key 5:33 kinds[2].colour",
            "form.not-a-choice 6:22 kinds[3].bears",
            "form.not-a-choice 6:42 kinds[3].hazard",
            "form.not-a-choice 6:57 kinds[3].stretch",
            "form.not-a-choice 7:50 kinds[4].quantities.size",
            "form.duplicate-key 8:38 kinds[5].words",
            "form.duplicate-key 10:10 kinds[7].id");
  }

  @Test
  void aTableOfOnesOwnSetsTheLimitAndKeepsItsNote() throws IOException {
    ReadData<FallRules> read =
        DataReader.fallRules(
            file(
                """
                daylight-fall-rules: 1
                id: ours
                title: What we lay to
                edition: "2026"
                note: agreed with the county
                rows:
                  - {bore-to: 4 in, uses: [storm], slope: 1 %, clause: "1", source: our-book, mark: common-practice}
                  - {bore-from: 5 in, slope: "1:150", clause: "2", source: our-book, mark: derived}
                """));
    assertThat(read.complaints()).isEmpty();
    FallRules ours = Objects.requireNonNull(read.value());
    assertThat(ours.title()).isEqualTo("What we lay to (2026)");
    assertThat(ours.note()).isEqualTo("agreed with the county");
    var storm = ours.limit(0.1, Reach.Use.STORM).orElseThrow();
    assertThat(storm.slope()).isCloseTo(0.01, within(1e-15));
    assertThat(storm.mark()).isEqualTo(Mark.COMMON_PRACTICE);
    assertThat(ours.limit(0.1, Reach.Use.SANITARY)).isEmpty();
    assertThat(ours.limit(0.2, Reach.Use.SANITARY).orElseThrow().slope())
        .isCloseTo(1 / 150.0, within(1e-15));
    assertThat(Bundled.fallRules("npc").note()).contains("from memory");
  }

  @Test
  void whatIsWrongWithATableIsToldInItsPlace() {
    assertThat(
            rules(
                """
                daylight-fall-rules: 1
                title: ours
                rows:
                  - {slope: 1 in, clause: x, source: x, mark: looked-up}
                  - {slope: 0 %, clause: x, mark: looked-up}
                  - {slope: 1 %, source: x, mark: looked-up, use: storm}
                  - {clause: x, source: x, mark: looked-up, uses: [strom]}
                  - {bore-from: 6 in, bore-to: 4 in, slope: 1 %, clause: x, source: x}
                """))
        .containsExactly(
            "form.missing 1:1 id",
            "form.not-a-quantity 4:13 rows[0].slope",
            "form.missing 5:5 rows[1].source",
            "form.not-positive 5:13 rows[1].slope",
            "form.missing 6:5 rows[2].clause",
            "form.unknown-key 6:46 rows[2].use",
            "form.missing 7:5 rows[3].slope",
            "form.not-a-choice 7:51 rows[3].uses",
            "form.missing 8:5 rows[4].mark",
            "book.from-after-to 8:32 rows[4].bore-to");
    assertThat(rules("daylight-fall-rules: 1\nid: ours\ntitle: ours\n"))
        .containsExactly("form.missing 1:1 rows");
  }

  /**
   * 29 CFR 1926.651(c)(2) asks for a way out from 4 ft, 29 CFR 1926.652(a)(1) for a protective
   * system from 5 ft. Stein & Stein, Table 4.7.4.3.1-1 (unitracc.de), puts fixed obstacles below 5
   * % of the section into the lowest class. The share seen is common practice, no source.
   */
  @Test
  void theLimitsAreThoseOfTheirSources() {
    Rules.Limits limits = Bundled.limits();
    assertThat(limits.seenShare()).isCloseTo(0.95, within(1e-12));
    assertThat(limits.trenchNotice()).isCloseTo(4 * 0.3048, within(1e-12));
    assertThat(limits.trenchProtect()).isCloseTo(5 * 0.3048, within(1e-12));
    assertThat(limits.obstruction()).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void aLimitOfOnesOwnLeavesTheOthers() throws IOException {
    ReadData<Rules.Limits> read =
        DataReader.limits(
            file(
                """
                daylight-limits: 1
                limits:
                  - {what: trench-protect, depth: 1.2 m, source: our-county, mark: looked-up}
                """),
            Bundled.limits());
    assertThat(read.complaints()).isEmpty();
    Rules.Limits base = Bundled.limits();
    assertThat(read.value())
        .isEqualTo(
            new Rules.Limits(
                base.seenShare(),
                base.obstruction(),
                base.trenchNotice(),
                1.2,
                base.digMargin(),
                base.nearMark()));
  }

  @Test
  void whatIsWrongWithLimitsIsToldInItsPlace() {
    assertThat(
            limits(
                """
                daylight-limits: 1
                limits:
                  - {what: seen-shares, share: 90 %, source: x, mark: looked-up}
                  - {what: seen-share, share: 3 ft, source: x, mark: looked-up}
                  - {what: seen-share, share: 120 %, source: x, mark: looked-up}
                  - {what: seen-share, depth: 3 ft, source: x, mark: looked-up}
                  - {what: obstruction, share: 5 %, depth: 1 ft, source: x, mark: looked-up}
                  - {what: trench-notice, depth: 0 ft, source: x, mark: looked-up}
                  - {what: trench-notice, depth: 4, source: x, mark: looked-up}
                  - {what: trench-notice, depth: 4 ft, mark: looked-up}
                  - {what: trench-notice, depth: 4 ft, source: x, mark: heard}
                  - {what: trench-notice, depth: 4 ft, source: x, mark: looked-up, why: so}
                  - {what: trench-notice, depth: 4 ft, source: x, mark: looked-up}
                  - {what: trench-notice, depth: 4 ft, source: x, mark: looked-up}
                """))
        .containsExactly(
            "form.not-a-choice 3:12 limits[0].what",
            "form.not-a-quantity 4:31 limits[1].share",
            "form.not-a-quantity 5:31 limits[2].share",
            "form.missing 6:5 limits[3].share",
            "form.unknown-key 7:37 limits[4].depth",
            "form.not-positive 8:34 limits[5].depth",
            "form.not-a-quantity 9:34 limits[6].depth",
            "form.missing 10:5 limits[7].source",
            "form.not-a-choice 11:57 limits[8].mark",
            "form.unknown-key 12:68 limits[9].why",
            "form.duplicate-key 14:12 limits[11].what");
  }

  @Test
  void withoutABaseEveryLimitMustBeThere() {
    ReadData<Rules.Limits> read =
        DataReader.limits(
            "ours.yaml",
            bytes(
                """
                daylight-limits: 1
                limits:
                  - {what: seen-share, share: 90 %, source: x, mark: looked-up}
                  - {what: trench-notice, depth: 4 ft, source: x, mark: looked-up}
                """),
            null);
    assertThat(read.value()).isNull();
    assertThat(told(read.complaints())).hasSize(4).containsOnly("form.missing 3:3 limits");
  }

  @Test
  void aFileOfAnotherKindOrVersionOrNoneIsRefused() {
    assertThat(limits("daylight-priors: 1\nlimits: []\n"))
        .containsExactly(
            "form.missing 1:1 daylight-limits", "form.unknown-key 1:1 daylight-priors");
    assertThat(priors("daylight-priors: 2\npriors: []\n"))
        .containsExactly("book-file.version-unknown 1:18 daylight-priors");
    assertThat(catalogue("- toy\n")).containsExactly("form.wrong-shape 1:1 ");
    Path none = folder.resolve("none.yaml");
    ReadData<Priors> missing = DataReader.priors(none, Bundled.priors());
    assertThat(missing.value()).isNull();
    assertThat(missing.complaints()).hasSize(1);
    assertThat(missing.complaints().getFirst().place().file()).isEqualTo(none.toString());
  }
}
