package daylight.report.map;

import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.dig.Digger;
import daylight.line.measure.Measured;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.SiteTie;
import daylight.report.draw.Subject;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What every row is made with.
 *
 * @param earth how the grid lies on the earth; null where nothing ties it
 * @param stop orders to stop at this site, with what to do; empty where there are none
 * @param points surveyed, by label
 */
record Making(
    Subject subject, @Nullable SiteTie earth, String stop, SortedMap<String, PlanPoint> points) {

  static Making of(Subject subject) {
    SiteTie earth = Atlas.earth(subject).orElse(null);
    String found =
        subject.answers().stops().stream()
            .map(stop -> subject.words().finding(stop.finding()) + ".")
            .collect(Collectors.joining(" "));
    String stop = found.isEmpty() ? "" : found + " " + subject.words().word("report.stop.do");
    return new Making(subject, earth, stop, subject.points());
  }

  /** A row of a layer, with the fields that every one begins and ends with. */
  Filling row(Layer layer, String label, @Nullable String caution) {
    return new Filling(layer, earth)
        .text("id", layer.id() + "/" + label)
        .text("label", label)
        .text("caution", caution)
        .text("stop", stop)
        .yesNo("invented", subject.book().site().invented());
  }

  String say(String key) {
    return subject.words().word(key);
  }

  /** Heights and depth of the pipe at a station. */
  static void depth(Filling row, Station station) {
    row.measured("invert", station.invert())
        .measured("ground", station.ground())
        .measured("depth", station.depth());
  }

  /** What a place is not known by; null where nothing is missing. */
  @Nullable String missing(@Nullable Measured depth) {
    return depth == null ? say("map.missing.depth") : null;
  }

  /** The letter of a place by how it was found. */
  @Nullable String quality(Place place) {
    return Digger.quality(subject.book(), subject.line(), place).map(Enum::name).orElse(null);
  }

  Optional<Run> run(String reach) {
    return subject.line().findRun(reach).filter(run -> !run.stations().isEmpty());
  }

  @Nullable LocalDate day(String visit) {
    return subject.book().visits().stream()
        .filter(one -> one.label().equals(visit))
        .findFirst()
        .map(Visit::date)
        .orElse(null);
  }

  static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
