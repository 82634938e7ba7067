package daylight.report.draw;

import daylight.report.markup.Tag;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Reads a drawing as it was written and finds texts that overlap or are cut off. */
final class LabelOverlaps {
  /** Touching by less than this is not seen, in points. */
  private static final double SLACK = 0.3;

  private record Text(String words, Box box) {}

  private LabelOverlaps() {}

  static Document parsed(Tag svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.write().getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("not well-formed", e);
    }
  }

  /** Every pair of texts that overlap, and every text that the sheet cuts. */
  static List<String> of(Tag svg) {
    Document document = parsed(svg);
    String[] view = document.getDocumentElement().getAttribute("viewBox").split(" ", -1);
    Box sheet = new Box(0, 0, Double.parseDouble(view[2]), Double.parseDouble(view[3]));
    List<Text> texts = texts(document);
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Text one = texts.get(i);
      if (!sheet.holds(one.box())) {
        wrong.add("cut: " + one.words());
      }
      for (Text other : texts.subList(i + 1, texts.size())) {
        if (one.box().grown(-SLACK).overlaps(other.box().grown(-SLACK))) {
          wrong.add(one.words() + " on " + other.words());
        }
      }
    }
    return wrong;
  }

  static List<String> words(Tag svg) {
    return texts(parsed(svg)).stream().map(Text::words).toList();
  }

  private static List<Text> texts(Document document) {
    NodeList nodes = document.getElementsByTagName("text");
    List<Text> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      Element element = (Element) nodes.item(i);
      double dx = 0;
      double dy = 0;
      for (Node up = element.getParentNode();
          up instanceof Element group;
          up = up.getParentNode()) {
        String move = group.getAttribute("transform");
        if (move.startsWith("translate(")) {
          String[] by = move.substring(10, move.indexOf(')')).split(" ", -1);
          dx += Double.parseDouble(by[0]);
          dy += Double.parseDouble(by[1]);
        }
      }
      String words = element.getTextContent();
      double size = Double.parseDouble(element.getAttribute("font-size"));
      boolean bold = element.getAttribute("font-weight").equals("700");
      double x = Double.parseDouble(element.getAttribute("x")) + dx;
      double y = Double.parseDouble(element.getAttribute("y")) + dy;
      texts.add(new Text(words, Box.ofText(x, y, words, size, bold)));
    }
    return texts;
  }
}
