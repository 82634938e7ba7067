package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Letterhead;
import daylight.report.Dense;
import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import daylight.report.draw.Subject;
import daylight.report.draw.Yards;
import daylight.report.page.CrewCards;
import daylight.report.page.Paper;
import daylight.report.page.Sender;
import daylight.report.shots.Picture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The short report and the cards of those who dig, with and without a letterhead. */
class EditionsTest {

  static List<Arguments> handouts() throws Exception {
    List<Arguments> all = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      for (Sender sender : List.of(Sender.NOBODY, somebody())) {
        all.add(of("usual", Example.usual(), paper, sender));
        all.add(of("deadly", Example.deadly(), paper, sender));
        all.add(of("dense", Dense.handout(3), paper, sender));
        all.add(of("named", Example.named("水 Workshop 🚽"), paper, sender));
      }
    }
    return all;
  }

  private static Arguments of(String name, Handout handout, Paper paper, Sender sender) {
    return Arguments.of(name, Filmed.on(paper, handout, true).from(sender));
  }

  private static Sender somebody() throws Exception {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 90, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
    Letterhead letterhead =
        new Letterhead(
            "Fernbrook Drain (invented)",
            List.of("12 Nowhere Road", "555-0100"),
            List.of("Contractor INV-0042"),
            "logo.jpg",
            "#7a1f5c",
            List.of("Payment within 30 days."),
            List.of("One year."),
            "USD",
            List.of(new Letterhead.Price("roots", "Cut roots", 250, 400)));
    return new Sender(letterhead, new Picture(300, 90, jpeg.toByteArray()));
  }

  @ParameterizedTest(name = "{0} {index}")
  @MethodSource("handouts")
  void theShortReportIsTwoPagesThatSayWhatIsToBeDone(String name, Handout handout)
      throws Exception {
    byte[] pdf = PaperReport.brief(handout.subject(), handout.sender(), handout.paper());

    try (PDDocument paper = Reading.open(pdf)) {
      assertThat(paper.getNumberOfPages()).isEqualTo(2);
      String read = String.join("\n", Reading.lines(paper, 0));
      assertThat(read)
          .containsSubsequence(
              "What you told us", "Where does it run?", "What now?", "What to do, and how soon");
    }
    conforms(pdf);
  }

  @ParameterizedTest(name = "{0} {index}")
  @MethodSource("handouts")
  void whereNobodyIsToDigTheCardsSaySo(String name, Handout handout) throws Exception {
    byte[] pdf =
        PaperReport.write(CrewCards.of(handout.subject(), handout.sender()), handout.paper());

    try (PDDocument paper = Reading.open(pdf)) {
      assertThat(paper.getNumberOfPages()).isEqualTo(1);
      assertThat(Reading.text(paper))
          .containsAnyOf("Nothing that was seen asks for a dig", "Nowhere, while the stop order");
    }
    conforms(pdf);
  }

  /** With its sketch each card is still one page that begins with the ticket. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void aSketchLeavesACardItsPage(Paper paper) throws Exception {
    for (Subject yard : List.of(Yards.without(), Yards.ticketed())) {
      byte[] pdf = PaperReport.crew(yard, Sender.NOBODY, paper);

      try (PDDocument cards = Reading.open(pdf)) {
        assertThat(cards.getNumberOfPages()).isEqualTo(1);
        assertThat(Reading.lines(cards, 0).getFirst()).containsIgnoringCase("ticket");
        assertThat(Reading.text(cards)).contains("tape from A: 11.4 m");
      }
      conforms(pdf);
    }
  }

  private static void conforms(byte[] pdf) throws Exception {
    assertThat(Conformance.broken(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
    assertThat(Conformance.broken(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
  }
}
