package daylight.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The layers and their fields: the one table that every format and the dictionary are made of. */
public enum Layer {
  /** What goes with all of it: orders to stop, cautions, frame, units. */
  NOTICE(
      Form.NONE,
      Field.text("about"),
      Field.text("says"),
      Field.number("value", FieldUnit.NONE),
      Field.text("unit")),
  /** A pipe from node to node. */
  REACH(
      Form.WAY,
      Fields.named(),
      List.of(
          Field.text("uuid"),
          Field.text("line"),
          Field.text("from_node"),
          Field.text("to_node"),
          Field.yesNo("flow_known"),
          Field.text("use"),
          Field.text("material"),
          Field.metres("bore"),
          Field.metres("length"),
          Field.metres("length_sd"),
          Field.text("quality")),
      Fields.always()),
  /** The pipe at one place. */
  STATION(
      Form.DOT,
      Fields.named(),
      List.of(Field.text("line"), Field.text("reach"), Field.metres("distance")),
      Fields.spot(),
      Fields.heading(),
      Fields.depth(),
      List.of(
          Field.metres("cover"),
          Field.metres("cover_sd"),
          Field.number("fall", FieldUnit.RATIO),
          Field.number("fall_sd", FieldUnit.RATIO),
          Field.metres("across95"),
          Field.metres("along95")),
      Fields.ellipse(),
      List.of(Field.text("quality")),
      Fields.always()),
  /** An access point, junction, outlet or end. */
  NODE(
      Form.DOT,
      Fields.named(),
      List.of(Field.text("uuid"), Field.text("kind"), Field.text("what")),
      Fields.spot(),
      Fields.depth(),
      Fields.ellipse(),
      List.of(Field.text("quality")),
      Fields.always()),
  /** Something seen in the pipe on the visit that was judged. */
  FINDING(
      Form.DOT,
      Fields.named(),
      List.of(
          Field.text("uuid"),
          Field.text("visit"),
          Field.day("visited"),
          Field.text("kind"),
          Field.text("sentence"),
          Field.text("remark"),
          Field.text("code"),
          Field.text("reach"),
          Field.metres("distance"),
          Field.metres("distance_sd"),
          Field.metres("distance_to"),
          Field.yesNo("stop_here"),
          Field.whole("class_structure"),
          Field.whole("class_operation"),
          Field.text("grade"),
          Field.text("how_soon")),
      Fields.spot(),
      Fields.depth(),
      Fields.ellipse(),
      List.of(Field.text("quality")),
      Fields.always()),
  /** Where the pipe was found from the ground, or laid bare. */
  LOCATE(
      Form.DOT,
      Fields.named(),
      List.of(
          Field.text("uuid"),
          Field.text("visit"),
          Field.day("visited"),
          Field.text("kind"),
          Field.text("reach"),
          Field.metres("distance")),
      Fields.spot(),
      List.of(
          Field.metres("depth"),
          Field.metres("depth_sd"),
          Field.yesNo("spot_checked"),
          Field.yesNo("depth_checked"),
          Field.metres("across"),
          Field.metres("across_sd"),
          Field.number("off", FieldUnit.SIGMA)),
      Fields.ellipse(),
      List.of(Field.text("quality")),
      Fields.always()),
  /** A point that measurements are tied to. */
  LANDMARK(
      Form.DOT,
      Fields.named(),
      List.of(Field.text("uuid"), Field.text("kind"), Field.text("what"), Field.yesNo("base")),
      Fields.spot(),
      Fields.ellipse(),
      Fields.always()),
  /** A tape, or so far along a wall and so far out. */
  TIE(
      Form.WAY,
      Fields.named(),
      List.of(
          Field.text("uuid"),
          Field.text("visit"),
          Field.text("kind"),
          Field.text("from_point"),
          Field.text("toward_point"),
          Field.text("to_point"),
          Field.metres("length"),
          Field.metres("length_sd"),
          Field.metres("along"),
          Field.metres("along_sd"),
          Field.metres("out"),
          Field.metres("out_sd")),
      Fields.always()),
  /** Marks of another service on the ground. */
  SERVICE(
      Form.DOT_OR_WAY,
      Fields.named(),
      List.of(
          Field.text("uuid"),
          Field.text("visit"),
          Field.text("kind"),
          Field.whole("crossings"),
          Field.text("crossing_reach"),
          Field.metres("crossing"),
          Field.metres("crossing_sd"),
          Field.text("nearest_reach"),
          Field.metres("nearest"),
          Field.metres("away"),
          Field.metres("away_least")),
      Fields.always()),
  /** The ground to open for a finding. */
  DIG_BOX(
      Form.AREA,
      Fields.named(),
      List.of(
          Field.text("ticket"),
          Field.text("ticket_number"),
          Field.day("ticket_expires"),
          Field.text("line"),
          Field.text("reach"),
          Field.metres("distance"),
          Field.yesNo("cleaned")),
      Fields.spot(),
      Fields.heading(),
      List.of(
          Field.metres("box_along"),
          Field.metres("box_across"),
          Field.metres("crown_least"),
          Field.metres("crown_most"),
          Field.metres("invert_least"),
          Field.metres("invert_most")),
      Fields.ellipse(),
      List.of(Field.text("quality"), Field.text("card")),
      Fields.always()),
  /** The ground within which the line lies with 95 % at each place. */
  BAND(
      Form.AREA,
      Fields.named(),
      List.of(
          Field.text("line"),
          Field.text("reach"),
          Field.number("holds", FieldUnit.SHARE),
          Field.metres("widest")),
      Fields.always());

  private final Form form;

  // Made by List.copyOf of records.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<Field> fields;

  Layer(Form form, Field... fields) {
    this.form = form;
    this.fields = List.of(fields);
  }

  @SafeVarargs
  Layer(Form form, List<Field>... groups) {
    this.form = form;
    List<Field> all = new ArrayList<>();
    for (List<Field> group : groups) {
      all.addAll(group);
    }
    this.fields = List.copyOf(all);
  }

  /** What shapes a layer holds. */
  public enum Form {
    /** None: rows alone. */
    NONE,
    DOT,
    WAY,
    DOT_OR_WAY,
    AREA
  }

  /** Groups of fields that several layers have. */
  private static final class Fields {
    private Fields() {}

    static List<Field> named() {
      return List.of(Field.text("id"), Field.text("label"));
    }

    static List<Field> spot() {
      return List.of(
          Field.metres("x"),
          Field.metres("y"),
          Field.degrees("longitude"),
          Field.degrees("latitude"));
    }

    static List<Field> heading() {
      return List.of(
          Field.degrees("heading"), Field.degrees("heading_true"), Field.degrees("heading_sd"));
    }

    static List<Field> depth() {
      return List.of(
          Field.metres("invert"),
          Field.metres("invert_sd"),
          Field.metres("ground"),
          Field.metres("ground_sd"),
          Field.metres("depth"),
          Field.metres("depth_sd"));
    }

    static List<Field> ellipse() {
      return List.of(
          Field.metres("ellipse_major"),
          Field.metres("ellipse_minor"),
          Field.degrees("ellipse_azimuth"),
          Field.degrees("ellipse_azimuth_true"));
    }

    static List<Field> always() {
      List<Field> always = new ArrayList<>();
      always.add(Field.text("missing"));
      always.add(Field.text("caution"));
      always.add(Field.text("stop"));
      always.add(Field.yesNo("invented"));
      return always;
    }
  }

  /** Its name in every format. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  public Form form() {
    return form;
  }

  /** Its fields in order. */
  public List<Field> fields() {
    return fields;
  }

  /** The field of that name. */
  public Optional<Field> find(String name) {
    return fields.stream().filter(field -> field.name().equals(name)).findFirst();
  }
}
