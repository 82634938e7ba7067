package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Dense;
import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import daylight.report.page.Paper;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Held against ISO 19005-2 (PDF/A-2a) and ISO 14289-1 (PDF/UA-1) by an independent validator. */
class ConformanceTest {

  static List<Arguments> reports() {
    List<Arguments> reports = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      for (boolean filmed : new boolean[] {false, true}) {
        reports.add(Arguments.of("usual", Filmed.on(paper, Example.usual(), filmed)));
        reports.add(Arguments.of("deadly", Filmed.on(paper, Example.deadly(), filmed)));
        reports.add(Arguments.of("dense", Filmed.on(paper, Dense.handout(3), filmed)));
      }
    }
    return reports;
  }

  @ParameterizedTest(name = "{0} {index}")
  @MethodSource("reports")
  void everyReportConformsToBothStandards(String name, Handout handout) throws Exception {
    byte[] pdf = PaperReport.write(Filmed.edition(handout), handout.paper());

    assertThat(Conformance.broken(pdf, PDFAFlavour.PDFA_2_A)).as(name).isEmpty();
    assertThat(Conformance.broken(pdf, PDFAFlavour.PDFUA_1)).as(name).isEmpty();
  }

  @Test
  void aReportWithoutItsColourProfileIsNoArchiveCopy() throws Exception {
    byte[] broken = without(COSName.OUTPUT_INTENTS);

    assertThat(Conformance.broken(broken, PDFAFlavour.PDFA_2_A)).isNotEmpty();
  }

  @Test
  void aReportWithoutItsStructureReadsToNobody() throws Exception {
    byte[] broken = without(COSName.STRUCT_TREE_ROOT);

    assertThat(Conformance.broken(broken, PDFAFlavour.PDFUA_1)).isNotEmpty();
  }

  private static byte[] without(COSName part) throws Exception {
    byte[] pdf = PaperReport.write(Filmed.edition(Example.usual()), Paper.LETTER);
    try (PDDocument document = Reading.open(pdf)) {
      document.getDocumentCatalog().getCOSObject().removeItem(part);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }
}
