package daylight.report.draw;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * What lies on what in a drawing, read from the SVG as it was written: texts on texts, on signs and
 * on the stroke of the drain, and texts that the sheet cuts.
 */
final class Clashes {
  /** Touching by less than this is not seen, points. */
  private static final double SLACK = 0.35;

  /** Nothing that is larger is a sign. */
  private static final double LARGEST_SIGN = 15;

  private static final Pattern MOVE = Pattern.compile("translate\\((-?[\\d.]+) (-?[\\d.]+)\\)");

  private record Text(String words, Box box) {}

  private record Sign(String kind, Box box) {}

  private final List<Text> texts = new ArrayList<>();
  private final List<Sign> signs = new ArrayList<>();
  private final List<Stroke> drain = new ArrayList<>();
  private final Box sheet;

  private Clashes(Tag svg) {
    Element root = LabelOverlaps.parsed(svg).getDocumentElement();
    String[] view = root.getAttribute("viewBox").split(" ", -1);
    sheet = new Box(0, 0, Double.parseDouble(view[2]), Double.parseDouble(view[3]));
    read(root, 0, 0);
  }

  static List<String> of(Tag svg) {
    return new Clashes(svg).all();
  }

  private List<String> all() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Text one = texts.get(i);
      Box box = one.box().grown(-SLACK);
      if (!sheet.holds(one.box())) {
        wrong.add("cut: " + one.words());
      }
      texts.subList(i + 1, texts.size()).stream()
          .filter(other -> box.overlaps(other.box().grown(-SLACK)))
          .forEach(other -> wrong.add("'" + one.words() + "' on '" + other.words() + "'"));
      signs.stream()
          .filter(sign -> box.overlaps(sign.box().grown(-SLACK)))
          .forEach(sign -> wrong.add("'" + one.words() + "' on a sign " + sign));
      if (drain.stream().anyMatch(box::crossedBy)) {
        wrong.add("'" + one.words() + "' on the drain");
      }
    }
    return wrong;
  }

  private void read(Element element, double dx, double dy) {
    double x = dx;
    double y = dy;
    Matcher move = MOVE.matcher(element.getAttribute("transform"));
    if (move.find()) {
      x += Double.parseDouble(move.group(1));
      y += Double.parseDouble(move.group(2));
    }
    switch (element.getTagName()) {
      case "text" -> texts.add(text(element, x, y));
      case "defs", "style", "title", "desc" -> {}
      case "circle" -> sign("ring", ring(element, x, y));
      case "path" -> path(element, x);
      case "g" -> {
        boolean sign =
            element.hasAttribute("transform")
                && !element.getAttribute("transform").contains("rotate")
                && element.getElementsByTagName("text").getLength() == 0;
        if (sign) {
          group(element, x, y);
        } else {
          NodeList inside = element.getChildNodes();
          for (int i = 0; i < inside.getLength(); i++) {
            if (inside.item(i) instanceof Element child) {
              read(child, x, y);
            }
          }
        }
      }
      default -> {
        NodeList inside = element.getChildNodes();
        for (int i = 0; i < inside.getLength(); i++) {
          if (inside.item(i) instanceof Element child) {
            read(child, x, y);
          }
        }
      }
    }
  }

  /** A sign is as large as all that it is drawn of. */
  private void group(Element element, double x, double y) {
    Box all = null;
    NodeList inside = element.getElementsByTagName("*");
    for (int i = 0; i < inside.getLength(); i++) {
      Element one = (Element) inside.item(i);
      Box box =
          switch (one.getTagName()) {
            case "circle" -> ring(one, x, y);
            case "path" -> bounds(Outline.points(one.getAttribute("d")), x, y);
            case "rect" -> moved(AsDrawn.box(one), x, y);
            default -> null;
          };
      all = box == null ? all : all == null ? box : union(all, box);
    }
    if (all != null) {
      sign(element.getAttribute("transform"), all);
    }
  }

  private void sign(String kind, Box box) {
    if (box.width() <= LARGEST_SIGN && box.height() <= LARGEST_SIGN) {
      signs.add(new Sign(kind, box));
    }
  }

  private void path(Element path, double x) {
    boolean isDrain =
        path.getAttribute("stroke").equals(Ink.DRAIN)
            && path.getAttribute("stroke-width").equals("4");
    if (isDrain && x == 0) {
      drain.addAll(Outline.strokes(path.getAttribute("d")));
    }
  }

  private static Text text(Element element, double x, double y) {
    for (Node up = element; up instanceof Element one; up = up.getParentNode()) {
      if (one.getAttribute("transform").contains("rotate") || one.hasAttribute("text-anchor")) {
        throw new AssertionError("this reader knows no turned or anchored text");
      }
    }
    String words = element.getTextContent();
    double size = AsDrawn.number(element, "font-size");
    double left = AsDrawn.number(element, "x") + x;
    double baseline = AsDrawn.number(element, "y") + y;
    boolean bold = element.getAttribute("font-weight").equals("700");
    return new Text(
        words, new Box(left, baseline - 0.78 * size, Glyphs.width(words, size, bold), size));
  }

  private static Box ring(Element circle, double x, double y) {
    double radius = AsDrawn.number(circle, "r");
    return Box.around(x + number(circle, "cx"), y + number(circle, "cy"), radius);
  }

  private static double number(Element element, String name) {
    return element.hasAttribute(name) ? AsDrawn.number(element, name) : 0;
  }

  private static Box moved(Box box, double x, double y) {
    return new Box(box.x() + x, box.y() + y, box.width(), box.height());
  }

  private static Box bounds(List<Point> points, double x, double y) {
    double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
    double right = points.stream().mapToDouble(Point::x).max().orElseThrow();
    double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
    double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
    return new Box(left + x, top + y, right - left, bottom - top);
  }

  private static Box union(Box a, Box b) {
    double x = Math.min(a.x(), b.x());
    double y = Math.min(a.y(), b.y());
    return new Box(x, y, Math.max(a.right(), b.right()) - x, Math.max(a.bottom(), b.bottom()) - y);
  }
}
