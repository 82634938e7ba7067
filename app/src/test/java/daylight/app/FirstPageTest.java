package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.answer.DigPlace;
import daylight.line.dig.DigTicket;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.draw.Subject;
import daylight.report.page.Sender;
import daylight.report.page.ShortReport;
import daylight.report.paper.PaperReport;
import daylight.report.words.DigWords;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/**
 * The page that an owner reads, of every book of the corpus: in plain language, and on one page.
 *
 * <p>Flesch-Kincaid grade: 0.39 words a sentence + 11.8 syllables a word − 15.59 (Kincaid,
 * Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75; from memory). A sentence ends,
 * as Flesch counted (from memory), also at a colon or semicolon; a cell of a table is one by
 * itself.
 */
class FirstPageTest {
  private static final double GRADE = 9;
  private static final Pattern WORD = Pattern.compile("\\p{L}+(?:[-’']\\p{L}+)*");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  static Stream<CorpusBook> books() {
    return CorpusBook.all().stream();
  }

  @ParameterizedTest
  @MethodSource("books")
  void readsAsPlainLanguage(CorpusBook book) throws Exception {
    Subject subject = subject(book, Language.EN);

    List<String> sentences = sentences(subject);
    assertThat(sentences).hasSizeGreaterThan(8);
    assertThat(grade(sentences)).as(String.join("\n", sentences)).isLessThanOrEqualTo(GRADE);
  }

  @ParameterizedTest
  @MethodSource("books")
  void isOnePageAndThePlanAnother(CorpusBook book) throws Exception {
    for (Language language : Language.values()) {
      Job.Outcome.Answered answered = answered(book, language);
      byte[] pdf =
          PaperReport.brief(
              answered.handout().subject(), Sender.NOBODY, answered.handout().paper());
      try (PDDocument paper = Loader.loadPDF(pdf)) {
        assertThat(paper.getNumberOfPages()).as(language.code()).isEqualTo(2);
      }
    }
  }

  /** Two sentences with the grades that are published beside them (both from memory). */
  @Test
  void gradesAreCountedAsOthersCountThem() {
    assertThat(grade(List.of("The cat sat on the mat"))).isCloseTo(-1.45, within(0.01));
    assertThat(
            grade(
                List.of(
                    "The Australian platypus is seemingly a hybrid of a mammal and reptilian"
                        + " creature")))
        .isCloseTo(11.3, within(0.1));
  }

  @Test
  void withoutATicketTheCardSaysNotToDig() {
    Words words = Words.of(Language.EN, Shown.METRES);
    DigWords.Row row = DigWords.of(new DigTicket.None());

    assertThat(words.say(row.key(), row.arguments().toArray(Argument[]::new)))
        .startsWith("No ticket on record: do not dig");
  }

  /** Whoever holds a card by itself reads first whether anybody may dig at all. */
  @ParameterizedTest
  @MethodSource("books")
  void everyCardIsASheetThatBeginsWithItsTicket(CorpusBook book) throws Exception {
    for (Language language : Language.values()) {
      Job.Outcome.Answered answered = answered(book, language);
      Subject subject = answered.handout().subject();
      List<DigPlace> digs =
          subject.answers().digs().stream().filter(dig -> !dig.cleaned()).toList();
      byte[] pdf = PaperReport.crew(subject, Sender.NOBODY, answered.handout().paper());
      try (PDDocument paper = Loader.loadPDF(pdf)) {
        assertThat(paper.getNumberOfPages()).isEqualTo(Math.max(1, digs.size()));
        for (int page = 1; page <= digs.size(); page++) {
          DigWords.Row row = DigWords.of(digs.get(page - 1).ticket());
          String ticket = subject.words().say(row.key(), row.arguments().toArray(Argument[]::new));
          assertThat(read(paper, page)).startsWith(plain(ticket));
        }
      }
    }
  }

  private static String read(PDDocument paper, int page) throws IOException {
    PDFTextStripper reader = new PDFTextStripper();
    reader.setSortByPosition(true);
    reader.setStartPage(page);
    reader.setEndPage(page);
    return plain(reader.getText(paper));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
  }

  private static Subject subject(CorpusBook book, Language language) {
    return answered(book, language).handout().in(language, Shown.FEET_INCHES).subject();
  }

  private static Job.Outcome.Answered answered(CorpusBook book, Language language) {
    Job.Outcome outcome = Job.answerWithoutFootage(book.file(), Job.Settings.USUAL.in(language));
    assertThat(outcome).isInstanceOf(Job.Outcome.Answered.class);
    return (Job.Outcome.Answered) outcome;
  }

  private static List<String> sentences(Subject subject) throws Exception {
    String main = ShortReport.first(subject, Sender.NOBODY, 8, 8).main().write();
    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(main.getBytes(StandardCharsets.UTF_8)));
    List<String> sentences = new ArrayList<>();
    for (String element : List.of("p", "td", "li")) {
      NodeList all = page.getElementsByTagName(element);
      for (int i = 0; i < all.getLength(); i++) {
        for (String sentence : all.item(i).getTextContent().split("[.;:?!](?:\\s+|$)", -1)) {
          if (WORD.matcher(sentence).results().count() > 2) {
            sentences.add(sentence.strip());
          }
        }
      }
    }
    return sentences;
  }

  private static double grade(List<String> sentences) {
    List<String> words =
        sentences.stream()
            .flatMap(sentence -> WORD.matcher(sentence).results())
            .map(word -> word.group().toLowerCase(Locale.ROOT))
            .toList();
    double syllables = words.stream().mapToInt(FirstPageTest::syllables).sum();
    return 0.39 * words.size() / sentences.size() + 11.8 * syllables / words.size() - 15.59;
  }

  /** Groups of vowels, without a silent e at the end: the usual way to count them by machine. */
  private static int syllables(String word) {
    String spoken = word.endsWith("e") && !word.endsWith("le") ? word.replaceAll("e$", "") : word;
    return (int) Math.max(1, VOWELS.matcher(spoken).results().count());
  }
}
