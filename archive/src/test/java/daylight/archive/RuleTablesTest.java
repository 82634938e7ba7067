package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Reported;
import daylight.line.cause.CauseTable;
import daylight.line.cause.Sign;
import daylight.line.condition.Grade;
import daylight.line.measure.Complaint;
import daylight.line.measure.Mark;
import daylight.line.urgency.Consequence;
import daylight.line.urgency.Occasion;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import daylight.line.urgency.UrgencyTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The tables of causes and of urgency: what comes along, and every complaint in its place at once.
 */
class RuleTablesTest {
  private static List<String> told(ReadData<?> read) {
    return read.complaints().stream().map(RuleTablesTest::inALine).toList();
  }

  private static String inALine(Complaint complaint) {
    return complaint.code().key() + " " + complaint.place().line() + " " + complaint.place().path();
  }

  private static String shipped(String name) throws IOException {
    try (InputStream in = Mark.class.getResourceAsStream("/daylight/line/" + name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static ReadData<CauseTable> causes(String text) {
    return DataReader.causes("ours.yaml", bytes(text), Bundled.catalogue());
  }

  @Test
  void everyKindOfComplaintHasSeveralCausesAndNoneClaimsASource() {
    CauseTable table = Bundled.causes().table();
    for (Reported.Kind kind : Reported.Kind.values()) {
      assertThat(table.rows().stream().filter(row -> row.of().contains(kind)))
          .as("%s", kind)
          .hasSizeGreaterThanOrEqualTo(2);
    }
    assertThat(table.rows()).allMatch(row -> row.mark() == Mark.COMMON_PRACTICE);
    assertThat(table.rows()).allMatch(row -> !row.asks().isEmpty());
  }

  /** So that what was found between counts for more than what only might be. */
  @Test
  void whatIsFoundSpeaksForACauseAndNothingFoundAgainstIt() {
    for (CauseTable.Row row : Bundled.causes().table().rows()) {
      for (CauseTable.SignRow sign : row.signs()) {
        if (sign.sign() == Sign.FOUND) {
          assertThat(sign.times()).as(row.cause()).isGreaterThan(1);
        }
        if (sign.sign() == Sign.NOT_FOUND) {
          assertThat(sign.times()).as(row.cause()).isLessThan(1);
        }
      }
    }
  }

  /** A larger share of the bore never speaks for a cause less than a smaller one. */
  @Test
  void moreOfItNeverSpeaksLess() {
    for (CauseTable.Row row : Bundled.causes().table().rows()) {
      for (CauseTable.SignRow one : row.signs()) {
        for (CauseTable.SignRow other : row.signs()) {
          Double a = one.shareFrom();
          Double b = other.shareFrom();
          if (a != null && b != null && a > b && one.kinds().equals(other.kinds())) {
            assertThat(one.times()).as(row.cause()).isGreaterThan(other.times());
          }
        }
      }
    }
  }

  @Test
  void aTableOfCausesThatIsWrongIsToldAllAtOnce() {
    ReadData<CauseTable> read =
        causes(
            """
            daylight-causes: 1
            id: ours
            probable-from: 1
            unlikely-to: 0.2
            near: 0 m
            shallow: 2 m
            deep: 1 m
            causes:
              - cause: roots
                of: [slow-drain, sneezes]
                where: on-the-way
                signs:
                  - {sign: found, kinds: [rootz], times: 3}
                  - {sign: when, times: 2}
                  - {sign: held, times: 0, is: [rain]}
                source: ours
                mark: common-practice
            """);

    assertThat(read.value()).isNull();
    assertThat(told(read))
        .contains(
            "form.not-a-number 3 probable-from",
            "form.not-positive 5 near",
            "form.not-a-choice 10 causes[0].of",
            "rules.kind-unknown 13 causes[0].signs[0].kinds",
            "form.missing 14 causes[0].signs[1].is",
            "rules.not-of-sign 15 causes[0].signs[2].is");
  }

  @Test
  void twoRowsOfOneCauseForOneKindOfComplaintAreToldAndSoIsALimitThatIsNotLess() {
    String row =
        "  - {cause: x, of: [smell], where: near, signs: [], asks: [vents], source: s, mark:"
            + " common-practice}\n";
    String head = "daylight-causes: 1\nid: o\nprobable-from: 5\nunlikely-to: 0.2\nnear: 3 m\n";

    assertThat(told(causes(head + "shallow: 1 m\ndeep: 2 m\ncauses:\n" + row + row)))
        .containsExactly("rules.row-twice 10 causes[1].cause");
    assertThat(told(causes(head + "shallow: 2 m\ndeep: 1 m\ncauses:\n" + row)))
        .containsExactly("rules.not-less 6 shallow");
  }

  @Test
  void theTableOfUrgencyIsReadAsItStands() {
    UrgencyTable table = Bundled.urgency();

    assertThat(table.whenUnknown()).isEqualTo(UrgencyTable.WhenUnknown.SAY);
    assertThat(table.urgency(Grade.SHORT_TERM, Consequence.SEWAGE_INSIDE))
        .isEqualTo(Urgency.AT_ONCE);
    assertThat(table.urgency(Grade.SHORT_TERM, Consequence.GROUND))
        .isEqualTo(Urgency.WITHIN_A_YEAR);
    assertThat(table.urgency(Grade.WITH_OTHER_WORKS, Consequence.GROUND)).isEqualTo(Urgency.WATCH);
  }

  @Test
  void aTableOfUrgencyThatIsMilderWhereThingsAreWorseIsRefusedRowByRow() throws IOException {
    String text =
        shipped("urgency.yaml")
            .replace(
                "class: at-once, sewage-inside: at-once", "class: at-once, sewage-inside: watch")
            .replace("class: long-term, sewage-inside: within-a-year", "class: long-term")
            .replace("near: 2 m", "near: 0 m");
    ReadData<UrgencyTable> read = DataReader.urgency("ours.yaml", bytes(text));

    assertThat(read.value()).isNull();
    assertThat(told(read))
        .anyMatch(line -> line.startsWith("rules.milder-though-worse"))
        .anyMatch(line -> line.startsWith("form.missing"))
        .anyMatch(line -> line.startsWith("form.not-positive"));
  }

  @Test
  void aClassWithoutARowAndOneWithTwoAreTold() throws IOException {
    String all = shipped("urgency.yaml");
    String last = all.lines().filter(l -> l.contains("class: with-other-works")).findFirst().get();

    assertThat(told(DataReader.urgency("ours.yaml", bytes(all.replace(last + "\n", "")))))
        .singleElement()
        .asString()
        .startsWith("rules.row-missing");
    assertThat(told(DataReader.urgency("ours.yaml", bytes(all + last + "\n"))))
        .singleElement()
        .asString()
        .startsWith("rules.row-twice");
  }

  @Test
  void theLengthsOfTimeAreReadAsTheyStandAndATableWithoutThemTellsNone() throws IOException {
    TimeLimits times = Bundled.urgency().times();
    assertThat(times.of(Urgency.AT_ONCE).orElseThrow().time()).isEqualTo(Period.ZERO);
    assertThat(times.of(Urgency.WITHIN_WEEKS).orElseThrow().time()).isEqualTo(Period.ofWeeks(6));
    assertThat(times.of(Occasion.NOTHING_FOUND).orElseThrow().time()).isEqualTo(Period.ofYears(5));
    // The calendar: a year from a leap day, and three months from the last of November.
    assertThat(times.of(Urgency.WITHIN_A_YEAR).orElseThrow().from(LocalDate.of(2024, 2, 29)))
        .isEqualTo("2025-02-28");
    assertThat(times.of(Occasion.NOT_SEEN_WHOLE).orElseThrow().from(LocalDate.of(2023, 11, 30)))
        .isEqualTo("2024-02-29");

    String all = shipped("urgency.yaml");
    String head = all.substring(0, all.indexOf("within:\n"));
    String rows = all.substring(all.indexOf("rows:\n"));
    UrgencyTable without = DataReader.urgency("ours.yaml", bytes(head + rows)).value();
    assertThat(without).isNotNull().extracting(UrgencyTable::times).isEqualTo(TimeLimits.NONE);
  }

  @Test
  void lengthsOfTimeThatAreWrongAreToldInTheirPlacesAllAtOnce() throws IOException {
    String all = shipped("urgency.yaml");
    String wrong =
        all.replace("urgency: at-once, days: 0", "urgency: at-once, days: soon")
            .replace("within-weeks, weeks: 6", "within-weeks, weeks: 6, days: 2")
            .replace("occasion: cleaned, years: 1", "occasion: cleaned")
            .replace("occasion: nothing-found, years: 5", "occasion: nothing-found, years: 1.5");
    ReadData<UrgencyTable> read = DataReader.urgency("ours.yaml", bytes(wrong));
    assertThat(read.value()).isNull();
    assertThat(told(read))
        .anyMatch(line -> line.matches("rules.not-whole \\d+ within\\[0].days"))
        .anyMatch(line -> line.matches("book-file.one-of \\d+ within\\[1].weeks"))
        .anyMatch(line -> line.matches("book-file.one-of \\d+ look-again\\[1].occasion"))
        .anyMatch(line -> line.matches("rules.not-whole \\d+ look-again\\[3].years"))
        .hasSize(4);

    assertThat(told(DataReader.urgency("ours.yaml", bytes(all.replace("weeks: 6", "years: 3")))))
        .hasSize(1)
        .allMatch(line -> line.startsWith("rules.shorter-though-milder"));
    String watch = all.lines().filter(line -> line.contains("urgency: watch,")).findFirst().get();
    assertThat(told(DataReader.urgency("ours.yaml", bytes(all.replace(watch + "\n", "")))))
        .singleElement()
        .asString()
        .startsWith("rules.row-missing");
  }
}
