package daylight.report.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.archive.form.FormTrouble;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Evidence;
import daylight.line.book.BookFault;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Measured;
import daylight.line.measure.Refusal;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Argument DOOR = new Argument.Text("the door");

  private final Words words = Words.of(Language.EN, Shown.FEET_INCHES);
  private final Words metric = Words.of(Language.EN, Shown.METRES);

  @Test
  void aComplaintNamesFileLineColumnAndEntryAndWhatWouldBeTaken() {
    Complaint complaint =
        new Complaint(
            FormTrouble.NOT_A_QUANTITY,
            new FilePlace("book.yaml", 12, 9, "visits[0].locates[3].depth"),
            List.of(
                new Argument.Text("3.x ft"),
                new Argument.Term("dimension.length"),
                new Argument.Reason(Refusal.NOT_A_NUMBER),
                new Argument.Choices(List.of("3.5 ft", "3' 6\""))));

    assertThat(words.complaint(complaint))
        .isEqualTo(
            "book.yaml:12:9 visits[0].locates[3].depth: “3.x ft” is not a length: it is not a"
                + " number; try 3.5 ft or 3' 6\"");
  }

  @Test
  void aComplaintWithoutASuggestionMakesNone() {
    Complaint complaint =
        new Complaint(
            BookFault.UNKNOWN_POINT,
            FilePlace.at("T4"),
            List.of(new Argument.Label("Q"), new Argument.Choices(List.of())));

    assertThat(words.complaint(complaint)).isEqualTo("T4: no point is called “Q”");
  }

  @Test
  void anUncertainLengthSaysGiveOrTakeInTheReadersUnit() {
    Statement statement =
        Statement.of(
            AnswerKey.NOW_FIRST_DEEP,
            new Argument.Term("kind.roots"),
            new Argument.Length(9.75),
            DOOR,
            new Argument.UncertainLength(new Measured(0.9144, 0.05)));

    assertThat(words.say(statement))
        .isEqualTo(
            "Do first: roots, 32' 0\" from the door, 3' 0\" (give or take 4\") below the ground.");
    assertThat(metric.say(statement)).contains("9.75 m").contains("0.91 m (give or take 0.10 m)");
  }

  @Test
  void anUncertainSlopeRoundsItsDoubtUp() {
    // 1.96 × 0.00151 = 0.00296, shown as 0.3 %; 1.96 × 0.00154 = 0.00302 must not become 0.3 %.
    assertThat(words.slope(new Measured(0.0142, 0.00151)).plusMinus()).isEqualTo("± 0.3 %");
    assertThat(words.slope(new Measured(0.0142, 0.00154)).plusMinus()).isEqualTo("± 0.4 %");
  }

  @Test
  void aProbabilityIsSaidInWordsAndPerCent() {
    assertThat(words.figure(new Argument.Probability(0.97))).isEqualTo("nearly certain (97 %)");
    assertThat(words.figure(new Argument.Probability(0.5))).isEqualTo("about even (50 %)");
    assertThat(words.figure(new Argument.Probability(0.001))).isEqualTo("very unlikely (< 1 %)");
  }

  @Test
  void severalThingsAreJoinedAsPeopleDo() {
    Argument a = new Argument.Label("L1");
    Argument b = new Argument.Label("L2");
    Argument c = new Argument.Label("L3");

    assertThat(words.figure(new Argument.Several(List.of(a)))).isEqualTo("L1");
    assertThat(words.figure(new Argument.Several(List.of(a, b)))).isEqualTo("L1 and L2");
    assertThat(words.figure(new Argument.Several(List.of(a, b, c)))).isEqualTo("L1, L2 and L3");
    assertThat(words.figure(new Argument.Choices(List.of("x", "y")))).isEqualTo("x or y");
  }

  @Test
  void oneIsNotSaidAsMany() {
    Argument crack = new Argument.Term("kind.crack");
    Argument at = new Argument.Length(3.048);

    assertThat(
            words.say(
                Statement.of(AnswerKey.SOUND_DEFECTS, new Argument.Count(1), crack, at, DOOR)))
        .isEqualTo("A defect was seen: crack, 10' 0\" from the door.");
    assertThat(
            words.say(
                Statement.of(AnswerKey.SOUND_DEFECTS, new Argument.Count(3), crack, at, DOOR)))
        .startsWith("3 defects were seen.");
  }

  @Test
  void daysAndNamesAreWritten() {
    assertThat(words.figure(new Argument.Day(LocalDate.of(2026, 4, 14))))
        .isEqualTo("April 14, 2026");
    assertThat(words.name(Material.CAST_IRON)).isEqualTo("cast iron");
    assertThat(words.name(Node.Kind.ACCESS)).isEqualTo("access point");
  }

  @Test
  void aKindOutsideTheCatalogueIsShownAsItIsWritten() {
    assertThat(words.kind("badger")).isEqualTo("badger");
    assertThat(words.figure(new Argument.Term("kind.badger"))).isEqualTo("badger");
  }

  @Test
  void aCrackIsNotMeasuredInFeet() {
    EvidenceWords evidence = new EvidenceWords(words, place -> "6' 1\"");
    Evidence crack =
        new Evidence.Seen(
            "F7", "crack", new Place("R3", 1.85), new Argument.Quantity(Dimension.LENGTH, 0.0015));

    assertThat(evidence.say(crack)).isEqualTo("Crack (F7) at 6' 1\": 1/16 in");
  }

  @Test
  void textsOfPeopleAreNeverTakenForMessages() {
    Statement statement =
        Statement.of(AnswerKey.WHERE_OUTLET, new Argument.Text("{1} [x] $1 \\ end"));

    assertThat(words.say(statement)).isEqualTo("It comes out at {1} [x] $1 \\ end.");
  }

  @Test
  void refusesAKeyWithoutMessageAndAFigureThatIsNotThere() {
    assertThatThrownBy(() -> words.word("no.such"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no message for the key no.such");
    assertThatThrownBy(() -> words.say(Statement.of(AnswerKey.NOW_FIRST, DOOR)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("answer.now_first: the message needs figure 1, given were 1");
  }
}
