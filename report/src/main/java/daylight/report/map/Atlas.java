package daylight.report.map;

import daylight.line.book.Visit;
import daylight.line.survey.Adjusted;
import daylight.line.survey.SiteTie;
import daylight.report.draw.Subject;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything of a site that maps and drawings take up: the rows of every layer.
 *
 * @param rows of each layer in order; none where there is nothing of the kind
 * @param earth how the site grid lies on the earth; empty where no satellite fix ties it
 * @param day of the visit that was judged; empty where the book does not say it
 * @param words in which it is told
 */
public record Atlas(
    String site,
    Map<Layer, List<Row>> rows,
    Optional<SiteTie> earth,
    Optional<LocalDate> day,
    Words words) {
  /** What of the notice goes before everything. */
  private static final Set<String> FIRST = Set.of("stop", "invented");

  public Atlas {
    Map<Layer, List<Row>> all = new EnumMap<>(Layer.class);
    for (Layer layer : Layer.values()) {
      all.put(layer, List.copyOf(rows.getOrDefault(layer, List.of())));
    }
    rows = Collections.unmodifiableMap(all);
  }

  /** That of what is handed over. */
  public static Atlas of(Subject subject) {
    Making making = Making.of(subject);
    Map<Layer, List<Row>> rows = new EnumMap<>(Layer.class);
    rows.put(Layer.NOTICE, new NoticeRows(making).all());
    CourseRows course = new CourseRows(making);
    rows.put(Layer.REACH, course.reaches());
    rows.put(Layer.STATION, course.stations());
    rows.put(Layer.NODE, course.nodes());
    rows.put(Layer.BAND, new BandRows(making).all());
    FindingRows findings = new FindingRows(making);
    rows.put(Layer.FINDING, findings.all());
    rows.put(Layer.DIG_BOX, new DigRows(making).all());
    GroundRows ground = new GroundRows(making);
    rows.put(Layer.LOCATE, ground.locates());
    rows.put(Layer.LANDMARK, ground.landmarks());
    rows.put(Layer.TIE, new TieRows(making).all());
    rows.put(Layer.SERVICE, ground.services());
    return new Atlas(
        Plain.of(subject.book().site().name()),
        rows,
        Optional.ofNullable(making.earth()),
        subject.visit().map(Visit::date),
        subject.words());
  }

  /** How the site grid lies on the earth; empty where no satellite fix ties it. */
  public static Optional<SiteTie> earth(Subject subject) {
    return subject.line().survey() instanceof Adjusted adjusted
        ? adjusted.siteTie()
        : Optional.empty();
  }

  /** The rows of a layer. */
  public List<Row> of(Layer layer) {
    return rows.getOrDefault(layer, List.of());
  }

  /** What goes with all of it, as sentences in order. */
  public List<String> notice() {
    return of(Layer.NOTICE).stream().map(row -> row.text("says")).toList();
  }

  /** What a layer is, in words. */
  public String title(Layer layer) {
    return words.word("map.layer." + layer.id());
  }

  /** What a layer is, with the order to stop and that it is invented, where that is so. */
  public String described(Layer layer) {
    return Stream.concat(
            of(Layer.NOTICE).stream()
                .filter(row -> FIRST.contains(row.text("about")))
                .map(row -> row.text("says")),
            Stream.of(title(layer)))
        .collect(Collectors.joining(" "));
  }

  /** What a field means, in words. */
  public String meaning(Layer layer, Field field) {
    String own = "map.field." + layer.id() + "." + field.name();
    return words.word(words.has(own) ? own : "map.field." + field.name());
  }

  /** In what a field is given, in words; empty where it has no unit. */
  public String unit(Field field) {
    return words.word("map.unit." + field.unit().name().toLowerCase(Locale.ROOT));
  }

  /** What sort of value a field holds, in words. */
  public String type(Field field) {
    return words.word("map.type." + field.type().name().toLowerCase(Locale.ROOT));
  }

  /** What shapes a layer holds, in words. */
  public String form(Layer layer) {
    return words.word("map.form." + layer.form().name().toLowerCase(Locale.ROOT));
  }
}
