package daylight.report.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads a PDF back. */
final class Reading {
  private Reading() {}

  static PDDocument open(byte[] pdf) throws IOException {
    return Loader.loadPDF(pdf);
  }

  static String text(PDDocument document) throws IOException {
    return new PDFTextStripper().getText(document);
  }

  /** The lines of one page, from the top. */
  static List<String> lines(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(true);
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    return stripper.getText(document).lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
  }

  /** What a reader aloud gets of a page: tagged content alone, in the order of the page. */
  static String told(PDDocument document, int page) throws IOException {
    PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
    extractor.processPage(document.getPage(page));
    StringBuilder told = new StringBuilder();
    for (PDMarkedContent content : extractor.getMarkedContents()) {
      if (!content.getTag().equals("Artifact")) {
        content.getContents().stream()
            .filter(TextPosition.class::isInstance)
            .forEach(letter -> told.append(((TextPosition) letter).getUnicode()));
        told.append('\n');
      }
    }
    return told.toString().strip();
  }

  /** Every letter of one page with its place. */
  static List<TextPosition> letters(PDDocument document, int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            letters.add(text);
          }
        };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    stripper.getText(document);
    return letters;
  }

  static List<String> bookmarks(PDDocument document) throws IOException {
    List<String> titles = new ArrayList<>();
    for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
      assertLeads(document, item);
      titles.add(item.getTitle());
    }
    return titles;
  }

  private static void assertLeads(PDDocument document, PDOutlineItem item) throws IOException {
    if (item.findDestinationPage(document) == null) {
      throw new AssertionError("leads nowhere: " + item.getTitle());
    }
  }

  /** The structure elements of a type, in reading order. */
  static List<PDStructureElement> tagged(PDDocument document, String type) {
    List<PDStructureElement> found = new ArrayList<>();
    collect(document.getDocumentCatalog().getStructureTreeRoot(), type, found);
    return found;
  }

  private static void collect(PDStructureNode node, String type, List<PDStructureElement> found) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals(type)) {
          found.add(element);
        }
        collect(element, type, found);
      }
    }
  }

  /** Every font of every page and of the forms on it. */
  static Set<PDFont> fonts(PDDocument document) throws IOException {
    Set<PDFont> fonts = new LinkedHashSet<>();
    for (PDPage page : document.getPages()) {
      collect(page.getResources(), fonts);
    }
    return fonts;
  }

  private static void collect(PDResources resources, Set<PDFont> fonts) throws IOException {
    for (COSName name : resources.getFontNames()) {
      fonts.add(resources.getFont(name));
    }
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDFormXObject form) {
        collect(form.getResources(), fonts);
      }
    }
  }
}
