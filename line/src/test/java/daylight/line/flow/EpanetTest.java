package daylight.line.flow;

import static daylight.line.flow.GravityTest.sure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import daylight.line.measure.Filled;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Pressed flow against EPANET 2.2 (npm epanet-js 0.9.0): pipes of 1¼ to 6 in, both laws, with and
 * without pumps, laminar too. EPANET takes the friction factor of Swamee and Jain where we take
 * Colebrook's: up to 1.5 % more or less in the factor and half of that in the flow. In these cases
 * the flows differ by 0.33 % at most, by Hazen and Williams by 0.09 %.
 */
class EpanetTest {
  private static final double NU = 1.307e-6;
  private static final double LITRE = 1e-3;

  /**
   * A pipe, and what drives it.
   *
   * @param bore millimetres
   * @param figure C, or ε in millimetres
   * @param lift metres; what drives it, negative, where there is no pump
   */
  private record Case(
      double bore,
      double length,
      FrictionLaw law,
      double figure,
      double fittings,
      double lift,
      List<PumpCurve.Point> curve) {
    Roughness wall() {
      double figure = law == FrictionLaw.DARCY_WEISBACH ? this.figure / 1000 : this.figure;
      return new Roughness(law, sure(figure));
    }

    Discharge discharge() {
      return new Discharge(
          sure(lift),
          List.of(new Discharge.Piece(sure(length), sure(bore / 1000), wall(), sure(fittings))));
    }

    double flow() {
      if (curve.isEmpty()) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 100; i++) {
          double middle = (low + high) / 2;
          boolean more = Pumping.head(discharge(), middle, NU) > 0;
          low = more ? low : middle;
          high = more ? middle : high;
        }
        return low / LITRE;
      }
      if (Pumping.of(PumpCurve.through(curve), sure(1), discharge(), NU)
          instanceof Operation.Pumps pumps) {
        return pumps.flow().value().value() / LITRE;
      }
      throw new AssertionError("it pumps: " + this);
    }

    /** With the curve read off ours at forty flows, for EPANET goes straight between points. */
    String network() {
      StringBuilder text = new StringBuilder("[RESERVOIRS]\nA 0\n");
      text.append(line("B", lift));
      String from = curve.isEmpty() ? "A" : "J";
      if (!curve.isEmpty()) {
        text.append("[JUNCTIONS]\nJ 0\n[PUMPS]\nU A J HEAD C\n[CURVES]\n");
        PumpCurve ours = PumpCurve.through(curve);
        for (int i = 0; i <= 40; i++) {
          double flow = ours.last() * i / 40;
          // EPANET wants every point to lie lower than the one before.
          text.append(line("C", flow / LITRE, ours.head(flow) - 1e-7 * i));
        }
      }
      text.append("[PIPES]\n");
      text.append(line("P " + from + " B", length, bore, figure, fittings));
      String law = this.law == FrictionLaw.HAZEN_WILLIAMS ? "H-W" : "D-W";
      text.append("[OPTIONS]\nUNITS LPS\nHEADLOSS ").append(law);
      text.append("\nVISCOSITY 1.307e-6\nACCURACY 0.000001\nTRIALS 500\n[END]\n");
      return text.toString();
    }

    private static String line(String what, double... values) {
      StringBuilder line = new StringBuilder(what);
      for (double value : values) {
        line.append(' ').append(String.format(Locale.ROOT, "%.9f", value));
      }
      return line.append('\n').toString();
    }
  }

  private static List<PumpCurve.Point> curve(double... flowsAndHeads) {
    List<PumpCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < flowsAndHeads.length; i += 2) {
      points.add(new PumpCurve.Point(flowsAndHeads[i] * LITRE, flowsAndHeads[i + 1]));
    }
    return points;
  }

  private static final List<PumpCurve.Point> SUMP = curve(0, 7.6, 1, 7.0, 2, 5.8, 3, 4.0, 4, 1.2);
  private static final List<PumpCurve.Point> STRONG = curve(0, 18, 4, 17, 10, 13.5, 20, 5, 24, 0);
  private static final FrictionLaw HW = FrictionLaw.HAZEN_WILLIAMS;
  private static final FrictionLaw DW = FrictionLaw.DARCY_WEISBACH;

  private static final List<Case> CASES =
      List.of(
          new Case(35.05, 15, HW, 150, 4, 2.1, SUMP),
          new Case(40.89, 18.3, HW, 150, 6, 2.4, SUMP),
          new Case(52.50, 40, HW, 140, 8, 3.0, SUMP),
          new Case(77.93, 60, HW, 130, 5, 4.5, STRONG),
          new Case(102.26, 120, HW, 120, 10, 6.0, STRONG),
          new Case(154.05, 200, HW, 110, 3, -2.0, List.of()),
          new Case(40.89, 30, HW, 145, 0.5, -1.5, List.of()),
          new Case(35.05, 15, DW, 0.0015, 4, 2.1, SUMP),
          new Case(40.89, 18.3, DW, 0.0015, 6, 2.4, SUMP),
          new Case(52.50, 40, DW, 0.15, 8, 3.0, SUMP),
          new Case(77.93, 60, DW, 0.26, 5, 4.5, STRONG),
          new Case(102.26, 120, DW, 0.26, 10, 6.0, STRONG),
          new Case(154.05, 200, DW, 1.5, 3, -2.0, List.of()),
          new Case(40.89, 30, DW, 0.046, 0.5, -1.5, List.of()),
          new Case(35.05, 100, DW, 0.0015, 0, -0.012, List.of()));

  @Test
  void flowsAreThoseOfEpanet() throws IOException, InterruptedException {
    List<Double> theirs = Epanet.flows(CASES.stream().map(Case::network).toList());
    assertThat(theirs).hasSameSizeAs(CASES);
    for (int i = 0; i < CASES.size(); i++) {
      Case one = CASES.get(i);
      assertThat(one.flow()).as("case %s", one).isCloseTo(theirs.get(i), withPercentage(0.5));
    }
  }

  /** The last case is laminar: both go by Hagen and Poiseuille. */
  @Test
  void oneIsLaminar() {
    Case last = CASES.getLast();
    double speed = last.flow() * LITRE / Filled.full(last.bore() / 1000).area();
    assertThat(Regime.of(speed * last.bore() / 1000 / NU)).isEqualTo(Regime.LAMINAR);
    double byHand = Water.GRAVITY * 0.012 / 100 * 0.03505 * 0.03505 / (32 * NU);
    assertThat(speed).isCloseTo(byHand, withPercentage(1e-4));
  }
}
