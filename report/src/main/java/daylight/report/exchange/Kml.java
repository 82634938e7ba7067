package daylight.report.exchange;

import daylight.report.map.Atlas;
import daylight.report.map.Field;
import daylight.report.map.Frame;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import daylight.report.markup.Tag;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An atlas as KML 2.2: a folder and a schema for each layer, on the ground. Heights stand among the
 * values and not in the places: a pipe below ground would not be seen, and its heights count from
 * the datum of the site. Nothing in it is fetched from elsewhere.
 */
final class Kml {
  private final Atlas atlas;
  private final Frame frame;

  private Kml(Atlas atlas) {
    this.atlas = atlas;
    this.frame = Frame.of(atlas.earth());
  }

  static byte[] write(Atlas atlas) {
    String xml = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    return (xml + new Kml(atlas).root().write() + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private Tag root() {
    Tag document =
        Tag.of("Document")
            .with("id", "site")
            .add(Tag.of("name", atlas.site()))
            .add(Tag.of("description", String.join("\n", atlas.notice())));
    for (Layer layer : Layer.values()) {
      if (layer.form() != Layer.Form.NONE) {
        document.add(style(layer));
      }
    }
    for (Layer layer : Layer.values()) {
      document.add(schema(layer));
    }
    for (Layer layer : Layer.values()) {
      document.add(folder(layer));
    }
    return Tag.of("kml").with("xmlns", "http://www.opengis.net/kml/2.2").add(document);
  }

  private static Tag style(Layer layer) {
    String colour = Paint.of(layer).kml();
    return Tag.of("Style")
        .with("id", "look-" + layer.id())
        .add(
            Tag.of("IconStyle")
                .add(Tag.of("color", "ff" + colour))
                .add(Tag.of("scale", size(layer))))
        .add(Tag.of("LabelStyle").add(Tag.of("scale", layer == Layer.STATION ? "0" : "0.8")))
        .add(
            Tag.of("LineStyle")
                .add(Tag.of("color", "ff" + colour))
                .add(Tag.of("width", layer == Layer.REACH ? "4" : "2")))
        .add(Tag.of("PolyStyle").add(Tag.of("color", "40" + colour)));
  }

  private static String size(Layer layer) {
    return layer == Layer.STATION ? "0.4" : "0.9";
  }

  private static Tag schema(Layer layer) {
    Tag schema = Tag.of("Schema").with("name", layer.id()).with("id", layer.id());
    for (Field field : layer.fields()) {
      schema.add(Tag.of("SimpleField").with("type", type(field)).with("name", field.name()));
    }
    return schema;
  }

  private static String type(Field field) {
    return switch (field.type()) {
      case TEXT, DAY -> "string";
      case NUMBER -> "double";
      case WHOLE -> "int";
      case YES_NO -> "bool";
    };
  }

  private Tag folder(Layer layer) {
    Tag folder =
        Tag.of("Folder")
            .with("id", "folder-" + layer.id())
            .add(Tag.of("name", layer.id()))
            .add(Tag.of("visibility", layer == Layer.STATION || layer == Layer.TIE ? "0" : "1"))
            .add(Tag.of("description", atlas.described(layer)));
    atlas.of(layer).forEach(row -> folder.add(placemark(layer, row)));
    return folder;
  }

  private Tag placemark(Layer layer, Row row) {
    Tag data = Tag.of("SchemaData").with("schemaUrl", "#" + layer.id());
    for (Field field : layer.fields()) {
      Object value = row.get(field);
      if (value != null) {
        String written = value instanceof Boolean yes ? yes ? "1" : "0" : Written.of(value);
        data.add(Tag.of("SimpleData", written).with("name", field.name()));
      }
    }
    Tag placemark = Tag.of("Placemark").add(Tag.of("name", name(layer, row)));
    if (layer == Layer.STATION || layer == Layer.TIE) {
      placemark.add(Tag.of("visibility", "0"));
    }
    if (layer.form() != Layer.Form.NONE) {
      placemark.add(Tag.of("styleUrl", "#look-" + layer.id()));
    }
    placemark.add(Tag.of("ExtendedData").add(data));
    Shape shape = row.shape();
    return shape == null ? placemark : placemark.add(geometry(shape));
  }

  private static String name(Layer layer, Row row) {
    return layer == Layer.NOTICE ? row.text("about") : row.text("label");
  }

  /** In one piece, or in several where it crosses the meridian of 180°. */
  private Tag geometry(Shape shape) {
    List<Tag> pieces = frame.pieces(shape).stream().map(piece -> piece(shape, piece)).toList();
    return pieces.size() == 1 ? pieces.getFirst() : Tag.of("MultiGeometry").addAll(pieces);
  }

  private static Tag piece(Shape shape, List<List<Frame.At>> rings) {
    return switch (shape) {
      case Shape.Dot dot -> Tag.of("Point").add(coordinates(rings.getFirst()));
      case Shape.Way way ->
          Tag.of("LineString").add(Tag.of("tessellate", "1")).add(coordinates(rings.getFirst()));
      case Shape.Area area -> {
        Tag polygon =
            Tag.of("Polygon")
                .add(Tag.of("tessellate", "1"))
                .add(Tag.of("outerBoundaryIs").add(ring(rings.getFirst())));
        rings.stream()
            .skip(1)
            .forEach(hole -> polygon.add(Tag.of("innerBoundaryIs").add(ring(hole))));
        yield polygon;
      }
    };
  }

  private static Tag ring(List<Frame.At> points) {
    return Tag.of("LinearRing").add(coordinates(points));
  }

  private static Tag coordinates(List<Frame.At> points) {
    return Tag.of(
        "coordinates",
        points.stream()
            .map(at -> Written.number(at.x()) + "," + Written.number(at.y()))
            .collect(Collectors.joining(" ")));
  }
}
