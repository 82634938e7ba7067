package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Complaint;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose report it is: read, refused, shown, and left out where it cannot be shown. */
class LetterheadTest {
  private static final Path BOOK = CorpusBook.of("S33").file();

  @TempDir private Path folder = Path.of("");

  private Job.Outcome answer(String letterhead) throws IOException {
    Path file = Files.writeString(folder.resolve("letterhead.yaml"), letterhead);
    RuleChoice rules =
        RuleChoice.of("ipc-704.1", false, of -> of.equals("letterhead") ? file : null);
    return Job.answer(BOOK, new Job.Settings(Language.EN, null, null, rules, null));
  }

  private static List<String> told(List<Complaint> complaints) {
    Words words = Words.of(Language.EN, Shown.METRES);
    return complaints.stream().map(words::complaint).toList();
  }

  private SortedMap<String, byte[]> files(Job.Outcome outcome) {
    assertThat(outcome).isInstanceOf(Job.Outcome.Answered.class);
    return ((Job.Outcome.Answered) outcome).files();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument paper = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(paper);
    }
  }

  private static String html(SortedMap<String, byte[]> files) {
    return new String(
        java.util.Objects.requireNonNull(files.get("report.html")), StandardCharsets.UTF_8);
  }

  @Test
  void theExampleStandsAtTheHeadOfEveryEdition() throws IOException {
    String example =
        Files.readString(SourceTree.ofThisProject().file("docs/examples/letterhead.yaml"));
    SortedMap<String, byte[]> files = files(answer(example));

    for (String name : List.of("report.pdf", "report-short.pdf")) {
      byte[] pdf = java.util.Objects.requireNonNull(files.get(name), name);
      assertThat(text(pdf))
          .contains("Fernbrook Drain and Camera (invented)", "INV-0042")
          .contains("Cut roots and rinse: 250 to 400 USD", "They are no offer");
    }
    assertThat(html(files)).contains("Payment within 30 days", "One year on work done by us");
  }

  @Test
  void everythingThatIsWrongIsToldAtOnceWithItsPlace() throws IOException {
    Job.Outcome outcome =
        answer(
            """
            daylight-letterhead: 1
            logo: ../logo.png
            colour: "#ffff00"
            prices:
              - {kind: rots, what: Cut, from: 1, to: 2}
              - {kind: roots, what: Cut, from: 5, to: 2}
              - {kind: roots, what: Cut again, from: many, to: 2}
            slogan: We care
            """);

    assertThat(outcome).isInstanceOf(Job.Outcome.Refused.class);
    assertThat(told(((Job.Outcome.Refused) outcome).complaints()))
        .anySatisfy(one -> assertThat(one).contains("yaml:2:", "outside the folder"))
        .anySatisfy(one -> assertThat(one).contains("yaml:3:", "too pale"))
        .anySatisfy(one -> assertThat(one).contains("yaml:5:", "rots"))
        .anySatisfy(one -> assertThat(one).contains("yaml:6:", "less than the least"))
        .anySatisfy(one -> assertThat(one).contains("yaml:7:", "has its price already"))
        .anySatisfy(one -> assertThat(one).contains("yaml:7:", "many"))
        .anySatisfy(one -> assertThat(one).contains("money"))
        .anySatisfy(one -> assertThat(one).contains("yaml:8:", "slogan"));
  }

  /** The greys on both sides of 4.5 to 1 on white, 4.54 and 4.48, as published widely (memory). */
  @Test
  void whatIsTooPaleIsDecidedByThePublishedLimit() throws IOException {
    String dark = "daylight-letterhead: 1\ncolour: \"#767676\"\n";
    assertThat(html(files(answer(dark)))).contains("#767676");
    assertThat(answer(dark.replace("767676", "777777"))).isInstanceOf(Job.Outcome.Refused.class);
  }

  @Test
  void aLogoThatIsMissingOrNoPictureIsToldAndTheReportComes() throws IOException {
    String letterhead = "daylight-letterhead: 1\nname: Fernbrook (invented)\nlogo: logo.png\n";
    SortedMap<String, byte[]> missing = files(answer(letterhead));
    assertThat(html(missing)).contains("there is no file “logo.png”").doesNotContain("alt=\"Logo");

    Files.writeString(folder.resolve("logo.png"), "no picture at all");
    assertThat(html(files(answer(letterhead)))).contains("cannot be read as a picture");
  }

  @Test
  void aLogoOfFortyMegapixelsIsMadeSmall() throws IOException {
    BufferedImage large = new BufferedImage(8000, 5000, BufferedImage.TYPE_BYTE_GRAY);
    ImageIO.write(large, "png", folder.resolve("logo.png").toFile());
    SortedMap<String, byte[]> files =
        files(answer("daylight-letterhead: 1\nname: Fernbrook (invented)\nlogo: logo.png\n"));

    assertThat(html(files)).contains("alt=\"Logo: Fernbrook (invented)\" width=\"720\"");
  }
}
