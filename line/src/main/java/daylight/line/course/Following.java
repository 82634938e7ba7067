package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Follows one pass as far as it is known to have come. */
final class Following {
  private final Placing placing;
  private final Walk walk;

  Following(Placing placing, Walk walk) {
    this.placing = placing;
    this.walk = walk;
  }

  PlacedPass pass(Visit visit, Pass pass) {
    List<PlacedPass.PlacedBend> bends = new ArrayList<>();
    for (Bend bend : pass.bends()) {
      double cable = bend.cable().value();
      Walk.Reached at = placing.lens(walk, cable);
      bends.add(new PlacedPass.PlacedBend(bend, placing.place(at), placing.sd(walk, at, cable)));
    }
    List<PlacedPass.Leg> legs = legs(pass);
    return new PlacedPass(visit.label(), pass.label(), legs, bends, placing.camera(walk, legs));
  }

  private List<PlacedPass.Leg> legs(Pass pass) {
    Pass.End end = pass.end();
    if (end != null && end.node() != null) {
      List<PlacedPass.Leg> legs = placing.upTo(walk, end.node());
      if (!legs.isEmpty()) {
        return legs;
      }
    }
    OptionalDouble last = end == null ? furthest(pass) : OptionalDouble.of(end.cable().value());
    return last.isEmpty() ? List.of() : placing.upTo(walk, placing.lens(walk, last.getAsDouble()));
  }

  /** The greatest counter reading of a pass at which anything was noted. */
  private OptionalDouble furthest(Pass pass) {
    Stream<@Nullable Double> findings =
        pass.findings().stream().map(Finding::where).map(this::reading);
    Stream<@Nullable Double> sights = pass.sight().stream().map(sight -> sight.to().value());
    Stream<@Nullable Double> bends = pass.bends().stream().map(bend -> bend.cable().value());
    double furthest = Double.NEGATIVE_INFINITY;
    for (Double reading : Stream.of(findings, sights, bends).flatMap(all -> all).toList()) {
      furthest = reading == null ? furthest : Math.max(furthest, reading);
    }
    return Double.isInfinite(furthest) ? OptionalDouble.empty() : OptionalDouble.of(furthest);
  }

  private @Nullable Double reading(Where where) {
    return switch (where) {
      case Where.AtCable at -> Double.valueOf(at.cable().value());
      case Where.FromTo between ->
          Double.valueOf(Math.max(between.from().value(), between.to().value()));
      case Where.AtMoment moment -> placing.counterAt(moment.media(), moment.seconds());
    };
  }
}
