package daylight.app.cli;

import daylight.line.flow.FlowTables;
import daylight.line.flow.PumpCurve;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A pump and the fittings on its pipe, as options. */
final class PumpChoices {
  /** How far off a pump's head may be from its curve, of itself; common practice. */
  private static final double USUAL_WEAR = 0.05;

  private static final Measured NO_FITTINGS = new Measured(0, 1e-9);

  @Option(
      names = "--curve",
      paramLabel = "FLOW=HEAD",
      split = ",",
      description = "Points of its curve, as 0gpm=20ft,30gpm=10ft.")
  private List<String> curve = List.of();

  @Option(
      names = "--max-head",
      paramLabel = "LENGTH",
      description =
          "The head at no flow, as on its plate, in place of --curve: head = a − b × flow² with"
              + " --max-flow.")
  private @Nullable String maxHead;

  @Option(
      names = "--max-flow",
      paramLabel = "FLOW",
      description = "The flow at no head, as on its plate; with --max-head.")
  private @Nullable String maxFlow;

  @Option(
      names = "--curve-give-or-take",
      paramLabel = "SHARE",
      description = "How far off its head may be from the curve, 19 times of 20; default: 10 %%.")
  private @Nullable String curveOff;

  @Option(
      names = "--fittings",
      paramLabel = "NAME*COUNT",
      split = ",",
      description = "Fittings on the pipe, as elbow-90*3,gate-valve,exit.")
  private List<String> fittings = List.of();

  @Option(
      names = "--k",
      paramLabel = "NUMBER",
      description = "Sum of the loss coefficients of fittings that are not named.")
  private @Nullable String more;

  @Option(
      names = "--check-valve",
      description = "A check valve by the pump holds the water in the pipe; its loss counts.")
  private boolean checkValve;

  boolean checkValve() {
    return checkValve;
  }

  /** The curve; null where it is missing or wrong. */
  @Nullable PumpCurve curve(Given given) {
    boolean plate = maxHead != null || maxFlow != null;
    if (plate != curve.isEmpty()) {
      given.complain("--curve", "figure.pump.one-curve");
    }
    if (plate) {
      given.need("--max-head", maxHead);
      given.need("--max-flow", maxFlow);
    }
    Reading head = given.positiveLength("--max-head", maxHead);
    Reading flow =
        given.positive("--max-flow", given.quantity(Dimension.FLOW, "--max-flow", maxFlow));
    if (plate) {
      return head == null || flow == null
          ? null
          : PumpCurve.Parabola.ofPlate(head.value(), flow.value());
    }
    return through(given);
  }

  private @Nullable PumpCurve through(Given given) {
    List<PumpCurve.Point> points = new ArrayList<>();
    for (String text : curve) {
      String[] halves = text.split("=", -1);
      if (halves.length != 2) {
        given.complain("--curve", "figure.pump.point", Given.text(text));
        continue;
      }
      Reading flow = given.quantity(Dimension.FLOW, "--curve", halves[0]);
      Reading head = given.length("--curve", halves[1]);
      if (flow != null && head != null) {
        points.add(new PumpCurve.Point(flow.value(), head.value()));
      }
    }
    if (curve.isEmpty() || points.size() < curve.size()) {
      return null;
    }
    List<PumpCurve.Wrong> wrong = PumpCurve.wrong(points);
    for (PumpCurve.Wrong one : wrong) {
      String fault = one.fault().name().toLowerCase(Locale.ROOT).replace('_', '-');
      given.complain("--curve", "figure.pump.curve." + fault, Given.text(curve.get(one.point())));
    }
    return wrong.isEmpty() ? PumpCurve.through(points) : null;
  }

  /** What its head is of that of its curve; null where that is wrong. */
  @Nullable Measured wear(Given given) {
    Reading off =
        given.positive(
            "--curve-give-or-take",
            given.quantity(Dimension.SHARE, "--curve-give-or-take", curveOff));
    return curveOff != null && off == null ? null : new Measured(1, given.sd(off, USUAL_WEAR));
  }

  /** What all fittings lose together. Each kind errs as one, kinds apart. */
  @Nullable Measured fittings(Given given, FlowTables tables) {
    Double rest = given.number("--k", more, 0, 1000);
    double sum = rest == null ? 0 : rest;
    double variance = sum * sum * 0.01;
    List<String> all = new ArrayList<>(fittings);
    if (checkValve) {
      all.add("check-valve");
    }
    for (String text : all) {
      String[] parts = text.strip().split("\\*", -1);
      Double count = parts.length == 1 ? Double.valueOf(1) : many(given, parts);
      Optional<FlowTables.Fitting> row = tables.fitting(parts[0].strip());
      if (row.isEmpty()) {
        List<String> known = tables.fittings().stream().map(FlowTables.Fitting::id).toList();
        PipeChoices.notAmong(given, "--fittings", parts[0], known);
      } else if (count != null) {
        Measured loss = row.get().loss();
        sum += count * loss.value();
        variance += count * loss.sd() * (count * loss.sd());
      }
    }
    return variance > 0 ? new Measured(sum, Math.sqrt(variance)) : NO_FITTINGS;
  }

  private static @Nullable Double many(Given given, String[] parts) {
    return parts.length == 2
        ? given.number("--fittings", parts[1].strip(), 1, 100)
        : given.number("--fittings", String.join("*", parts), 1, 100);
  }
}
