package daylight.report.exchange;

import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import daylight.report.map.Atlas;
import daylight.report.map.Field;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * An atlas as a drawing (DXF of release 12) on the site grid, x east and y north, in metres or in
 * feet. Where the height of the pipe is known it is z, else z is 0 and the entity says nothing of
 * heights. Every entity carries its values as data of its own, in metres and degrees whatever the
 * unit of the drawing. That release has no place for the unit, so comments and a note on the sheet
 * say it.
 */
final class Dxf {
  private static final double FOOT = 0.3048;

  /** How high letters are, metres on the ground. */
  private static final double LETTERS = 0.22;

  private static final String NOTES = "NOTICE";

  /** What keeps its place where texts are many; what a dig may hang on comes first. */
  private static final List<Layer> FIRST =
      List.of(
          Layer.DIG_BOX,
          Layer.SERVICE,
          Layer.NODE,
          Layer.LANDMARK,
          Layer.FINDING,
          Layer.LOCATE,
          Layer.REACH);

  private final Atlas atlas;
  private final boolean feet;
  private final Groups groups;
  private final Lettering lettering = new Lettering(LETTERS);

  private Dxf(Atlas atlas) {
    this.atlas = atlas;
    this.feet = atlas.words().shown() != Shown.METRES;
    this.groups = new Groups(feet ? FOOT : 1);
  }

  static byte[] write(Atlas atlas) {
    Dxf dxf = new Dxf(atlas);
    dxf.all();
    return dxf.groups.bytes();
  }

  private void all() {
    Extent extent = Extent.of(atlas);
    List<String> notes = notes();
    notes.forEach(note -> DrawingText.lines(note).forEach(line -> comment(line)));
    header(extent);
    new DxfTables(groups).write(layers());
    groups.put(0, "SECTION").put(2, "ENTITIES");
    for (Layer layer : Layer.values()) {
      atlas.of(layer).forEach(row -> entity(layer, row));
    }
    for (Row station : atlas.of(Layer.STATION)) {
      if (station.shape() instanceof Shape.Dot dot) {
        lettering.leave(dot.at());
      }
    }
    FIRST.forEach(layer -> atlas.of(layer).forEach(row -> label(layer, row)));
    lettering.placed().forEach(this::written);
    sheetNotes(extent, notes);
    groups.put(0, "ENDSEC").put(0, "EOF");
  }

  private void comment(String line) {
    groups.put(999, DrawingText.escaped(line));
  }

  /** What is told before and on the drawing: its unit, then what goes with every file. */
  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(atlas.words().word(feet ? "map.dxf.feet" : "map.dxf.metres"));
    notes.addAll(atlas.notice());
    return notes;
  }

  private void header(Extent extent) {
    groups.put(0, "SECTION").put(2, "HEADER");
    groups.put(9, "$ACADVER").put(1, "AC1009");
    groups.put(9, "$DWGCODEPAGE").put(3, "ANSI_1252");
    groups.put(9, "$EXTMIN").point(10, extent.least(), 0.0);
    groups.put(9, "$EXTMAX").point(10, extent.most(), 0.0);
    // Decimal numbers, and points that are drawn as a circle with a cross.
    groups.put(9, "$LUNITS").put(70, 2);
    groups.put(9, "$PDMODE").put(70, 34);
    groups.put(9, "$PDSIZE").size(40, LETTERS / groups.unit());
    groups.put(0, "ENDSEC");
  }

  /** The layers that anything lies on, with their colour; a service has one of its sort. */
  private SortedMap<String, Paint> layers() {
    SortedMap<String, Paint> layers = new TreeMap<>();
    layers.put(NOTES, Paint.of(Layer.NOTICE));
    for (Layer layer : Layer.values()) {
      if (layer.form() != Layer.Form.NONE && layer != Layer.SERVICE) {
        layers.put(name(layer, null), Paint.of(layer));
        layers.put(name(layer, null) + "_TEXT", Paint.of(layer));
      }
    }
    for (Row row : atlas.of(Layer.SERVICE)) {
      layers.put(name(Layer.SERVICE, row), Paint.of(Layer.SERVICE, row));
      layers.put(name(Layer.SERVICE, row) + "_TEXT", Paint.of(Layer.SERVICE, row));
    }
    return layers;
  }

  private static String name(Layer layer, @Nullable Row row) {
    String name = layer.name();
    return layer == Layer.SERVICE && row != null
        ? name + "_" + row.text("kind").toUpperCase(Locale.ROOT)
        : name;
  }

  private void entity(Layer layer, Row row) {
    Shape shape = row.shape();
    if (shape == null) {
      return;
    }
    String name = name(layer, row);
    switch (shape) {
      case Shape.Dot dot ->
          groups.entity("POINT", name).point(10, dot.at(), dot.height()).data(data(row));
      case Shape.Way way -> polyline(name, way.points(), way.heights(), false, row);
      case Shape.Area area -> {
        for (List<PlanPoint> ring : area.rings()) {
          polyline(name, ring.subList(0, ring.size() - 1), List.of(), true, row);
        }
      }
    }
  }

  private void polyline(
      String name, List<PlanPoint> points, List<Double> heights, boolean closed, Row row) {
    boolean high = !heights.isEmpty();
    groups
        .entity("POLYLINE", name)
        .put(66, 1)
        .point(10, new PlanPoint(0, 0), 0.0)
        .put(70, (closed ? 1 : 0) + (high ? 8 : 0))
        .data(data(row));
    for (int i = 0; i < points.size(); i++) {
      groups.entity("VERTEX", name).point(10, points.get(i), high ? heights.get(i) : null);
      if (high) {
        groups.put(70, 32);
      }
    }
    groups.entity("SEQEND", name);
  }

  private static Map<String, String> data(Row row) {
    Map<String, String> data = new LinkedHashMap<>();
    for (Field field : row.layer().fields()) {
      Object value = row.get(field);
      if (value != null) {
        data.put(field.name(), Written.of(value));
      }
    }
    return data;
  }

  /** What is written beside it; stations and ties would only crowd the sheet. */
  private void label(Layer layer, Row row) {
    Shape shape = row.shape();
    String text = Labels.of(atlas, layer, row);
    if (shape != null && !text.isEmpty()) {
      lettering.add(name(layer, row) + "_TEXT", Labels.beside(shape), text);
    }
  }

  private void written(Lettering.Placed one) {
    text(one.layer(), one.at(), one.text());
    if (one.led()) {
      groups
          .entity("LINE", one.layer())
          .point(10, one.thing(), null)
          .point(11, new PlanPoint(one.at().x(), one.at().y() + LETTERS / 2), null);
    }
  }

  private void text(String layer, PlanPoint at, String text) {
    groups
        .entity("TEXT", layer)
        .point(10, at, null)
        .size(40, LETTERS / groups.unit())
        .put(1, DrawingText.line(text));
  }

  /** Below the drawing, the first at the top. */
  private void sheetNotes(Extent extent, List<String> notes) {
    double top = lettering.lowest(extent.least().y());
    double down = 4 * LETTERS;
    for (String note : notes) {
      for (String line : DrawingText.lines(note)) {
        text(NOTES, new PlanPoint(extent.least().x(), top - down), line);
        down += 1.7 * LETTERS;
      }
      down += 0.8 * LETTERS;
    }
  }
}
