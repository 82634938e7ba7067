package daylight.report.paper;

import daylight.report.draw.Captions;
import daylight.report.draw.MarkedPicture;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.page.Edition;
import daylight.report.page.Paper;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The report's tree made ready for paper: the sheet, a foot on every page, bookmarks from the
 * headings, and for each drawing its size and the text that stands for it.
 */
final class PaperPage {
  /** What a drawing's page needs beside it, above and below, in points. */
  private static final double BESIDE_DRAWING = 62;

  /** To the left and right of an upright page, in points, as the style says: 14 mm each. */
  private static final double MARGINS = 2 * 14 / 25.4 * 72;

  /** What a picture takes of the room between them, as the style says. */
  private static final double PICTURE = 0.48;

  private final Edition edition;
  private final Subject subject;
  private final Paper paper;
  private final String markup;

  PaperPage(Edition edition, Paper paper) {
    this.edition = edition;
    this.subject = edition.subject();
    this.paper = paper;
    this.markup = html().naming();
  }

  /** What the document says about itself. */
  Imprint imprint() {
    Words words = subject.words();
    return new Imprint(
        edition.title(),
        edition.about(),
        words.language().code(),
        subject.visit().map(visit -> visit.date()).orElse(null));
  }

  /** The pictures that it names. */
  Beside beside() {
    return new Beside(edition);
  }

  /** A number that another content would not have. */
  long id() {
    try {
      byte[] all = markup.getBytes(StandardCharsets.UTF_8);
      return ByteBuffer.wrap(MessageDigest.getInstance("SHA-256").digest(all)).getLong();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The page for the page setter. */
  Document document() {
    Document page = parsed();
    elements(page, "svg").forEach(this::fit);
    elements(page, "img").forEach(PaperPage::free);
    elements(page, "section").stream()
        .filter(section -> section.getAttribute("class").equals("cards"))
        .forEach(PaperPage::keep);
    elements(page, "caption").forEach(PaperPage::frame);
    elements(page, "a").forEach(link -> link.setAttribute("title", link.getTextContent()));
    Element bookmarks = page.createElement("bookmarks");
    page.getElementsByTagName("head").item(0).appendChild(bookmarks);
    for (Element heading : elements(page, "h2")) {
      Element bookmark = bookmark(page, heading.getTextContent(), heading.getAttribute("id"));
      if (heading.getParentNode() instanceof Element section) {
        elements(section, "div").stream()
            .filter(drawing -> drawing.hasAttribute("data-name"))
            .map(
                drawing ->
                    bookmark(page, drawing.getAttribute("data-name"), drawing.getAttribute("id")))
            .forEach(bookmark::appendChild);
      }
      bookmarks.appendChild(bookmark);
    }
    return page;
  }

  private static Element bookmark(Document page, String name, String id) {
    Element bookmark = page.createElement("bookmark");
    bookmark.setAttribute("name", name);
    bookmark.setAttribute("href", "#" + id);
    return bookmark;
  }

  private static List<Element> elements(Element in, String name) {
    NodeList nodes = in.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  private static List<Element> elements(Document page, String name) {
    NodeList nodes = page.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  /** A card keeps together and would leave the heading behind, so both are kept together. */
  private static void keep(Element section) {
    Element kept = section.getOwnerDocument().createElement("div");
    kept.setAttribute("class", "kept");
    boolean card = false;
    for (Node child = section.getFirstChild(); child != null && !card; ) {
      Node next = child.getNextSibling();
      card = child.getNodeName().equals("article");
      kept.appendChild(child);
      child = next;
    }
    section.insertBefore(kept, section.getFirstChild());
  }

  /**
   * A table's rows would go over the page and leave its caption behind, so what has to find room is
   * a frame about both.
   */
  private static void frame(Element caption) {
    Node table = caption.getParentNode();
    Element frame = caption.getOwnerDocument().createElement("div");
    frame.setAttribute("class", "table");
    table.getParentNode().insertBefore(frame, table);
    frame.appendChild(table);
  }

  /** A picture's size in pixels is for the browser; the page setter would take it for law. */
  private static void free(Element picture) {
    picture.removeAttribute("width");
    picture.removeAttribute("height");
  }

  /** As large as it was drawn, or as large as the sheet on its side allows. */
  private void fit(Element svg) {
    String[] view = svg.getAttribute("viewBox").split(" ", -1);
    double width = Double.parseDouble(view[2]);
    double height = Double.parseDouble(view[3]);
    if (svg.getAttribute("class").equals(MarkedPicture.CLASS)) {
      svg.setAttribute("alt", text(svg, "title") + " " + text(svg, "desc"));
      double wide = PICTURE * (paper.width() - MARGINS);
      svg.setAttribute(
          "style",
          "width:%spt;height:%spt".formatted(Tag.number(wide), Tag.number(wide * height / width)));
      return;
    }
    boolean upright = svg.getAttribute("class").equals("sketch");
    double room =
        upright ? 1 : Math.min(paper.height() / width, (paper.width() - BESIDE_DRAWING) / height);
    double scale = Math.min(1, room);
    svg.setAttribute(
        "style",
        "width:%spt;height:%spt;margin-left:%spt"
            .formatted(
                Tag.number(width * scale),
                Tag.number(height * scale),
                Tag.number(upright ? 0 : (paper.height() - width * scale) / 2)));
    svg.setAttribute("alt", text(svg, "title") + ". " + text(svg, "desc"));
  }

  private static String text(Element svg, String name) {
    return svg.getElementsByTagName(name).item(0).getTextContent();
  }

  private Tag html() {
    return Tag.of("html")
        .with("lang", subject.words().language().code())
        .add(
            Tag.of("head")
                .add(Tag.of("title", edition.title()))
                .add(Tag.of("meta").with("name", "subject").with("content", edition.about()))
                .add(Tag.of("style", sheet() + style() + edition.colour())))
        .add(Tag.of("body").add(foot()).add(edition.main()));
  }

  private String sheet() {
    String width = Tag.number(paper.width()) + "pt";
    String height = Tag.number(paper.height()) + "pt";
    return "@page{size:"
        + width
        + " "
        + height
        + "}\n"
        + "@page wide{size:"
        + height
        + " "
        + width
        + "}\n";
  }

  private static String style() {
    try (InputStream in = PaperPage.class.getResourceAsStream("paper.css")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Tag foot() {
    Words words = subject.words();
    String whose = subject.book().site().name() + " · " + Captions.visit(subject);
    Tag left = Tag.of("td", whose).with("class", "whose");
    if (subject.book().site().invented()) {
      left.text(" · ").add(Tag.of("b", words.word("paper.invented")));
    }
    Tag right =
        Tag.of("td")
            .with("class", "count")
            .text(words.word("paper.page") + " ")
            .add(Tag.of("span").with("class", "number"))
            .text(" " + words.word("paper.of") + " ")
            .add(Tag.of("span").with("class", "numbers"));
    return Tag.of("table").with("class", "foot").add(Tag.of("tr").add(left, right));
  }

  private Document parsed() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(markup)));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
