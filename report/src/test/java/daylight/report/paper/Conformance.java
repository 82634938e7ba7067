package daylight.report.paper;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * What veraPDF, an independent validator, says against a document. PDF/A-2a is ISO 19005-2:2011,
 * PDF/UA-1 is ISO 14289-1:2014, of which a machine can check a part.
 */
final class Conformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Conformance() {}

  /** The rules that a document breaks, with what is wrong. */
  static List<String> broken(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      return result.getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
          .map(
              assertion ->
                  assertion.getRuleId().getClause()
                      + "-"
                      + assertion.getRuleId().getTestNumber()
                      + " "
                      + assertion.getMessage()
                      + " at "
                      + assertion.getLocation().getContext())
          .toList();
    }
  }
}
