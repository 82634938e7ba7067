package daylight.report.draw;

import daylight.line.book.Place;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A drawing as it was written, to be measured. */
final class AsDrawn {
  private final Document document;

  AsDrawn(Tag svg) {
    document = LabelOverlaps.parsed(svg);
  }

  Stream<Element> all(String name) {
    return in(document.getDocumentElement(), name);
  }

  static Stream<Element> in(Element element, String name) {
    NodeList found = element.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i));
  }

  /** The groups that say that they show a place. */
  List<Element> at(Place place) {
    return at(place.reach(), place.distance());
  }

  List<Element> at(String reach, double distance) {
    return all("g")
        .filter(group -> group.getAttribute("data-place").equals(reach))
        .filter(group -> Math.abs(number(group, "data-distance") - distance) <= 0.0051)
        .toList();
  }

  /** The boxes filled with a colour in these groups. */
  static List<Box> filled(List<Element> groups, String fill) {
    List<Box> boxes = new ArrayList<>();
    for (Element group : groups) {
      in(group, "rect")
          .filter(r -> r.getAttribute("fill").equals(fill))
          .map(AsDrawn::box)
          .forEach(boxes::add);
    }
    return boxes.stream().distinct().toList();
  }

  static Box box(Element element) {
    return new Box(
        number(element, "x"),
        number(element, "y"),
        number(element, "width"),
        number(element, "height"));
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** The inside of the pipe, stretch by stretch: between the two walls of each. */
  List<Box> bores() {
    return all("g")
        .filter(group -> group.hasAttribute("data-bore"))
        .map(group -> in(group, "rect").map(AsDrawn::box).toList())
        .map(
            walls ->
                new Box(
                    walls.getFirst().x(),
                    walls.getFirst().bottom(),
                    walls.getFirst().width(),
                    walls.getLast().y() - walls.getFirst().bottom()))
        .toList();
  }

  /** Points on the sheet for a metre along the pipe. */
  double pointsPerMetre() {
    Element band = all("g").filter(g -> g.hasAttribute("data-band-from")).findFirst().orElseThrow();
    return (number(band, "data-band-right") - number(band, "data-band-left"))
        / (number(band, "data-band-to") - number(band, "data-band-from"));
  }
}
