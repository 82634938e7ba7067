package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads priors row by row. */
final class PriorsReader {
  /** No multiplier makes a measurement better than its row or hopeless. */
  private static final double LARGEST_MULTIPLIER = 100;

  private PriorsReader() {}

  /** The priors over a base; null when a row is missing or wrong. */
  static @Nullable Priors read(Fields fields, @Nullable Priors base) {
    Map<Priors.Kind, Priors.Prior> rows = new EnumMap<>(Priors.Kind.class);
    for (Fields row : fields.rows("priors")) {
      Priors.Prior prior = prior(row);
      if (prior != null && rows.put(prior.kind(), prior) != null) {
        Argument kind = new Argument.Text(Section.word(prior.kind()));
        row.complain(FormTrouble.DUPLICATE_KEY, "kind", kind);
      }
    }
    boolean complete = true;
    for (Priors.Kind kind : Priors.Kind.values()) {
      if (base != null) {
        rows.putIfAbsent(kind, base.of(kind));
      } else if (!rows.containsKey(kind)) {
        Argument missing = new Argument.Text(Section.word(kind));
        fields.complain(FormTrouble.MISSING, "priors", missing);
        complete = false;
      }
    }
    return complete ? new Priors(rows) : null;
  }

  private static Priors.@Nullable Prior prior(Fields row) {
    Priors.Kind kind = row.wantedChoice("kind", Priors.Kind.class);
    Mark mark = row.wantedChoice("mark", Mark.class);
    String note = row.words("note");
    double a = size(row, "a", dimension(kind));
    double b = size(row, "b", Dimension.SLOPE);
    double correlation = size(row, "correlation-length", Dimension.LENGTH);
    double fair = multiplier(row, "fair");
    double poor = multiplier(row, "poor");
    Priors.Typical typical = typical(row, dimension(kind));
    String source = row.wantedWords("source");
    if (row.sound() && a + b == 0) {
      row.complain(FormTrouble.MISSING, "a", new Argument.Text("a"));
    }
    return row.sound()
        ? new Priors.Prior(kind, a, b, correlation, fair, poor, typical, source, mark, note)
        : null;
  }

  /** What is usual where nothing was recorded; both its value and its sd, or neither. */
  private static Priors.@Nullable Typical typical(Fields row, Dimension dimension) {
    Reading value = row.reading("typical", new Shape.Amount(dimension, Bare.NONE));
    Reading sd = row.reading("typical-sd", new Shape.Amount(dimension, Bare.NONE));
    if ((value == null) != (sd == null)) {
      String lacking = value == null ? "typical" : "typical-sd";
      row.complain(FormTrouble.MISSING, lacking, new Argument.Text(lacking));
    }
    return value == null || sd == null ? null : new Priors.Typical(value.value(), sd.value());
  }

  private static double size(Fields row, String key, Dimension dimension) {
    Reading size = row.reading(key, new Shape.Amount(dimension, Bare.NONE));
    if (size != null && size.value() < 0) {
      row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(size.written()));
    }
    return size == null ? 0 : size.value();
  }

  private static double multiplier(Fields row, String key) {
    Double multiplier = row.number(key, 1, LARGEST_MULTIPLIER);
    return multiplier == null ? 1 : multiplier;
  }

  /** What the part of a row that does not grow is a size of. */
  static Dimension dimension(Priors.Kind kind) {
    return switch (kind) {
      case BEARING,
          ANGLE,
          BEND_ANGLE,
          STRAIGHT_RIGID,
          STRAIGHT_FLEXIBLE,
          GRADE_RIGID,
          GRADE_FLEXIBLE,
          JUNCTION_TURN,
          SONDE_TILT ->
          Dimension.ANGLE;
      case COUNTER_SCALE, RECEIVER_SCALE, FALL, SIGNAL -> Dimension.SLOPE;
      case FREEZING_INDEX -> Dimension.DEGREE_DAYS;
      case MEAN_TEMPERATURE -> Dimension.TEMPERATURE;
      case SOIL_WATER -> Dimension.SHARE;
      case WATCH, SEASON -> Dimension.DURATION;
      case VOLUME -> Dimension.VOLUME;
      case TAPE,
          ALONG,
          OUT,
          GNSS,
          SKETCH,
          COUNTER_READING,
          COUNTER_ZERO,
          SLACK,
          SONDE_BEHIND_LENS,
          SONDE_ABOVE_INVERT,
          LOCATE_SPOT,
          DEPTH_READING,
          DEPTH_DISTORTION,
          EXPOSURE,
          LEVEL,
          GROUND_YARD,
          GROUND_SLAB,
          GROUND_STEP,
          WATER_DEPTH,
          NULL_MARK,
          SNOW_DEPTH,
          WATER_DROP,
          ANTENNA_ABOVE_FOOT,
          BORE ->
          Dimension.LENGTH;
    };
  }
}
