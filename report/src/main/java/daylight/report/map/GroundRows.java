package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.book.Exposure;
import daylight.line.book.Landmark;
import daylight.line.course.LocateFit;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import daylight.report.draw.Subject;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was found, stands or is painted on the ground. */
final class GroundRows {
  private final Making making;
  private final Subject subject;

  GroundRows(Making making) {
    this.making = making;
    this.subject = making.subject();
  }

  List<Row> locates() {
    return subject.line().locates().stream().map(this::locate).toList();
  }

  private Row locate(LocateFit fit) {
    String visit = subject.visitOf(fit);
    PlanPoint spot = fit.spot();
    Filling row =
        making
            .row(
                Layer.LOCATE,
                fit.entry().label(),
                subject.words().word(Caution.LOCATES_APPROXIMATE))
            .text("uuid", fit.entry().uuid().toString())
            .text("visit", visit)
            .day("visited", making.day(visit))
            .text("kind", kind(fit))
            .text("reach", fit.place().reach())
            .number("distance", fit.place().distance())
            .measured("depth", fit.depth())
            .yesNo("spot_checked", fit.spotShows() != null)
            .yesNo("depth_checked", fit.depthShows() != null)
            .number("across", fit.across())
            .number("across_sd", fit.acrossSd())
            .number("off", fit.off())
            .text("quality", making.quality(fit.place()));
    if (spot == null) {
      return row.text("missing", making.say("map.missing.spot")).done();
    }
    row.spot(spot).text("missing", fit.depth() == null ? making.say("map.missing.read") : null);
    return spread(row, fit.entry().label(), spot).shape(new Shape.Dot(spot, null)).done();
  }

  /** How it was found: by the transmitter, or how the pipe was laid bare. */
  private String kind(LocateFit fit) {
    return subject.book().visits().stream()
        .flatMap(visit -> visit.exposures().stream())
        .filter(exposure -> exposure.id().equals(fit.entry()))
        .findFirst()
        .map(Exposure::by)
        .map(Making::lower)
        .orElse("transmitter");
  }

  List<Row> landmarks() {
    return subject.book().site().landmarks().stream().map(this::landmark).toList();
  }

  private Row landmark(Landmark landmark) {
    Filling row =
        making
            .row(Layer.LANDMARK, landmark.label(), null)
            .text("uuid", landmark.id().uuid().toString())
            .text("kind", Making.lower(landmark.kind()))
            .text("what", landmark.what())
            .yesNo("base", landmark.base());
    PlanPoint at = making.points().get(landmark.label());
    return at == null
        ? row.text("missing", making.say("map.missing.spot")).done()
        : spread(row.spot(at), landmark.label(), at).shape(new Shape.Dot(at, null)).done();
  }

  private Filling spread(Filling row, String label, PlanPoint at) {
    return subject.line().survey() instanceof Adjusted adjusted
            && adjusted.points().containsKey(label)
        ? row.ellipse(at, adjusted.covariance(label, label))
        : row;
  }

  List<Row> services() {
    return Digger.services(subject.book(), subject.line()).stream().map(this::service).toList();
  }

  private Row service(ServiceFound found) {
    Filling row =
        making
            .row(
                Layer.SERVICE,
                found.mark().label(),
                making.say("report.services.depth") + " " + making.say("report.services.others"))
            .text("uuid", found.mark().id().uuid().toString())
            .text("visit", found.visit())
            .text("kind", Making.lower(found.mark().service()))
            .whole("crossings", found.crossings().size());
    if (!found.crossings().isEmpty()) {
      Crossing first = found.crossings().getFirst();
      row.text("crossing_reach", first.place().reach()).measured("crossing", first.along());
    }
    ServiceFound.@Nullable Nearest nearest = found.nearest();
    if (nearest != null) {
      row.text("nearest_reach", nearest.place().reach())
          .number("nearest", nearest.place().distance())
          .number("away", nearest.away())
          .number("away_least", nearest.least());
    }
    return row.text("missing", found.points().isEmpty() ? making.say("report.services.open") : null)
        .shape(shape(found.points()))
        .done();
  }

  private static @Nullable Shape shape(List<PlanPoint> points) {
    return switch (points.size()) {
      case 0 -> null;
      case 1 -> new Shape.Dot(points.getFirst(), null);
      default -> Shape.Way.flat(points);
    };
  }
}
