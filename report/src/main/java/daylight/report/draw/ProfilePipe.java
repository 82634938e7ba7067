package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.course.Route;
import daylight.line.fall.Ponding;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Measured;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Ground, pipe, its band and the water standing in it, from the side. */
final class ProfilePipe {
  private final Subject subject;
  private final Route route;
  private final Profile profile;
  private final Sheet sheet;
  private final ProfileFrame frame;
  private final Labeller labeller;
  private final Legend legend;

  ProfilePipe(
      Subject subject,
      Route route,
      Profile profile,
      Sheet sheet,
      ProfileFrame frame,
      Labeller labeller,
      Legend legend) {
    this.subject = subject;
    this.route = route;
    this.profile = profile;
    this.sheet = sheet;
    this.frame = frame;
    this.labeller = labeller;
    this.legend = legend;
  }

  void draw() {
    sheet.define(Pen.stripes(sheet.unique("band"), Ink.DRAIN, 35, 6));
    sheet.define(Pen.stripes(sheet.unique("water"), Ink.WATER, 0, 4));
    band();
    subject.answers().fall().water().forEach(this::water);
    subject.answers().fall().ponding().pools().forEach(this::pool);
    ground();
    crown();
    List<Point> bottom = points(profile.samples(), s -> s.bottom().value());
    sheet.add(Pen.path(Pen.through(bottom, false), Ink.DRAIN, 2.6));
    Pen.strokes(bottom).forEach(labeller::wall);
    legend.use(Legend.Entry.INVERT);
  }

  private List<Point> points(
      List<Profile.Sample> samples, ToDoubleFunction<Profile.Sample> height) {
    return samples.stream()
        .map(sample -> frame.at(sample.x(), height.applyAsDouble(sample)))
        .toList();
  }

  private void band() {
    List<Point> ring =
        new ArrayList<>(
            points(profile.samples(), s -> s.bottom().value() + Measured.Z95 * s.bottom().sd()));
    List<Point> low =
        new ArrayList<>(
            points(profile.samples(), s -> s.bottom().value() - Measured.Z95 * s.bottom().sd()));
    Collections.reverse(low);
    ring.addAll(low);
    String d = Pen.through(ring, true);
    sheet.add(Pen.filled(d, Ink.DRAIN).with("fill-opacity", 0.13));
    sheet.add(Pen.filled(d, "url(#" + sheet.unique("band") + ")").with("fill-opacity", 0.8));
    legend.use(Legend.Entry.BOTTOM_BAND);
  }

  /** Ground whose height is well known is drawn through, other ground dashed. */
  private void ground() {
    List<Profile.Sample> samples = profile.samples();
    int from = 0;
    for (int i = 1; i <= samples.size(); i++) {
      boolean turn = i == samples.size() || samples.get(i).sure() != samples.get(from).sure();
      if (turn) {
        List<Point> part =
            points(samples.subList(from, Math.min(i + 1, samples.size())), Profile.Sample::ground);
        boolean sure = samples.get(from).sure();
        Tag stroke = Pen.path(Pen.through(part, false), Ink.DARK, 1.6);
        sheet.add(sure ? stroke : stroke.with("stroke-dasharray", "5 4"));
        Pen.strokes(part).forEach(labeller::wall);
        legend.use(sure ? Legend.Entry.GROUND : Legend.Entry.GROUND_ASSUMED);
        from = i;
      }
    }
  }

  private void crown() {
    List<Profile.Sample> bored = profile.samples().stream().filter(s -> s.bore() != null).toList();
    if (bored.size() > 1) {
      List<Point> crown =
          points(bored, s -> s.bottom().value() + (s.bore() == null ? 0 : s.bore()));
      sheet.add(Pen.path(Pen.through(crown, false), Ink.DRAIN, 1));
      Pen.strokes(crown).forEach(labeller::avoid);
      legend.use(Legend.Entry.CROWN);
    }
  }

  /** Water to scale: level with its depth at the lowest place of the stretch it was seen in. */
  private void water(WaterSeen water) {
    List<Profile.Sample> wet =
        samples(water.from(), water.to() == null ? water.from() : water.to());
    double depth = wet.isEmpty() ? 0 : depth(water, wet.getFirst());
    if (depth <= 0) {
      return;
    }
    double level = level(wet, depth);
    List<Point> ring = new ArrayList<>(points(wet, s -> s.bottom().value()));
    List<Point> top = new ArrayList<>(points(wet, s -> Math.max(level, s.bottom().value())));
    Collections.reverse(top);
    ring.addAll(top);
    String d = Pen.through(ring, true);
    Tag group = Pen.at(water.from()).add(Pen.filled(d, Ink.WATER).with("fill-opacity", 0.3));
    group.add(Pen.filled(d, "url(#" + sheet.unique("water") + ")"));
    group.add(Pen.path(Pen.through(top, false), Ink.WATER, 1.2));
    sheet.add(group);
    legend.use(Legend.Entry.WATER);
  }

  /** The surface that water would have by the heights alone; the drawn bottom is the likeliest. */
  private void pool(Ponding.Pool pool) {
    List<Profile.Sample> wet = samples(pool.from(), pool.to());
    if (!wet.isEmpty()) {
      double level = frame.at(0, level(wet, pool.depth().middle())).y();
      Stroke surface =
          new Stroke(frame.x(wet.getFirst().x()), level, frame.x(wet.getLast().x()), level);
      sheet.add(
          Pen.at(pool.from())
              .add(Pen.line(surface, Ink.WATER, 1.2).with("stroke-dasharray", "3 2")));
      legend.use(Legend.Entry.POOL);
    }
  }

  private static double level(List<Profile.Sample> wet, double depth) {
    return wet.stream().mapToDouble(s -> s.bottom().value()).min().orElse(0) + depth;
  }

  /** From one place of the route to another; none where they are not on it or not in order. */
  private List<Profile.Sample> samples(Place first, Place last) {
    OptionalDouble from = route.station(first);
    OptionalDouble to = route.station(last);
    List<Profile.Sample> samples = new ArrayList<>();
    if (from.isPresent() && to.isPresent() && to.getAsDouble() > from.getAsDouble()) {
      samples.add(profile.at(from.getAsDouble()));
      profile.samples().stream()
          .filter(s -> s.x() > from.getAsDouble() && s.x() < to.getAsDouble())
          .forEach(samples::add);
      samples.add(profile.at(to.getAsDouble()));
    }
    return samples;
  }

  private static double depth(WaterSeen water, Profile.Sample sample) {
    if (water.depth() != null) {
      return water.depth().value();
    }
    return water.share() == null || sample.bore() == null ? 0 : water.share() * sample.bore();
  }
}
