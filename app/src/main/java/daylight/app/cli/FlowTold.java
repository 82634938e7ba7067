package daylight.app.cli;

import daylight.line.flow.FlowTables;
import daylight.line.flow.Propagated;
import daylight.line.flow.Regime;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import java.util.List;
import java.util.Locale;

/** What the calculations of flow say alike. */
final class FlowTold {
  private final Figured figured;

  FlowTold(Figured figured) {
    this.figured = figured;
  }

  /** A figure with half of its 95 % interval. */
  FlowTold with(String name, Dimension dimension, Measured value) {
    figured.with(
        name,
        new Argument.Quantity(dimension, value.value()),
        new Argument.Quantity(dimension, Measured.Z95 * value.sd()));
    return this;
  }

  /** Which input the uncertainty of a figure hangs on most. */
  FlowTold decides(Propagated figure) {
    Propagated.Share most = figure.decides();
    figured.saying(
        "decides",
        new Argument.Term(most.what().key()),
        new Argument.Quantity(Dimension.SHARE, Math.min(1, most.share())));
    return this;
  }

  /** How the water moves, where that is not in eddies as usual. */
  FlowTold regime(Regime regime) {
    if (regime != Regime.TURBULENT) {
      figured.saying("regime", new Argument.Term(regime.key()));
    }
    return this;
  }

  /** Where figures of tables come from. */
  FlowTold origins(List<FlowTables.Origin> origins) {
    for (FlowTables.Origin origin : origins) {
      figured.saying(
          "source",
          Given.text(origin.source()),
          new Argument.Term("mark." + origin.mark().name().toLowerCase(Locale.ROOT)));
      String note = origin.note();
      if (note != null) {
        figured.saying("note", Given.text(note));
      }
    }
    return this;
  }

  /** A plain number to two digits that count. */
  static Argument rounded(double value) {
    if (value == 0) {
      return new Argument.Number(0);
    }
    double digits = StrictMath.floor(StrictMath.log10(Math.abs(value)));
    double step = StrictMath.pow(10, Math.abs(digits - 1));
    return new Argument.Number(
        digits >= 1 ? Math.rint(value / step) * step : Math.rint(value * step) / step);
  }
}
