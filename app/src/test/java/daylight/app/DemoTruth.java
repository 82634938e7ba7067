package daylight.app;

import java.util.List;

/**
 * What is so on an invented property: the pipe as it was laid out before readings of it were made
 * up, with the errors that tape, counter, receiver and rod have and rounded as people round.
 *
 * @param name of the property
 * @param unit metres in one of the figures here
 * @param lengths of the reaches
 * @param spots where the pipe runs and how deep
 * @param seen where the findings are
 * @param answer what Daylight answers, as {@link CorpusLine} writes it
 */
record DemoTruth(
    String name,
    double unit,
    List<Seen> lengths,
    List<Spot> spots,
    List<Seen> seen,
    String answer) {
  private static final double FOOT = 0.3048;

  /** The pipe at a distance down a reach: along the base wall, out from it, invert below ground. */
  record Spot(String reach, double distance, double along, double out, double depth) {}

  /** Something named at a distance down a reach. */
  record Seen(String label, String reach, double distance) {}

  static final List<DemoTruth> ALL = List.of(shop(), house(), pit());

  private static DemoTruth shop() {
    return new DemoTruth(
        "shop-roof-drain",
        FOOT,
        List.of(length("R1", 30.95), length("R2", 52.65), length("R3", 14.31)),
        List.of(
            new Spot("R1", 5.00, 7.87, 6.14, 2.52),
            new Spot("R1", 12.00, 10.50, 12.63, 2.50),
            new Spot("R1", 23.30, 14.64, 23.14, 2.48),
            new Spot("R2", 7.85, 20.20, 37.61, 2.42),
            new Spot("R2", 19.05, 26.10, 46.27, 2.42),
            new Spot("R2", 29.25, 35.42, 50.42, 2.59),
            new Spot("R2", 44.05, 48.94, 56.44, 2.48),
            new Spot("R3", 6.00, 23.61, 24.78, 2.29)),
        List.of(
            new Seen("F1", "R1", 12.00),
            new Seen("F2", "R1", 23.30),
            new Seen("F4", "R2", 7.85),
            new Seen("F5", "R2", 24.95),
            new Seen("F6", "R2", 26.25),
            new Seen("F7", "R3", 6.00)),
        "behind=belly/probable | roof drain: where=answered/sure 84 ft 2.2..2.6 deep | "
            + "clear=no/sure 15 % | sound=no/sure 2 | "
            + "drain=no/sure drain_water_stands | cope=within_limits/likely yes | "
            + "freeze=cannot_say_yet/open freeze_close | now=now_first_deep | "
            + "tests=RF1 assumed,RF2 tested | doubts=none");
  }

  private static DemoTruth house() {
    return new DemoTruth(
        "house-sewer",
        FOOT,
        List.of(length("R1", 38.00), length("R2", 34.00)),
        List.of(
            new Spot("R1", 5.00, 14.07, -1.00, 1.40),
            new Spot("R1", 6.50, 14.09, 0.50, 6.11),
            new Spot("R1", 14.20, 14.20, 8.20, 6.11),
            new Spot("R1", 24.00, 15.46, 17.76, 6.03),
            new Spot("R1", 31.20, 18.18, 24.43, 5.94),
            new Spot("R2", 6.00, 22.89, 36.33, 5.82),
            new Spot("R2", 16.60, 26.79, 46.19, 5.89),
            new Spot("R2", 28.00, 30.99, 56.79, 5.68)),
        List.of(
            new Seen("F1", "R1", 14.20),
            new Seen("F2", "R1", 27.50),
            new Seen("F3", "R1", 31.20),
            new Seen("F7", "R2", 8.60),
            new Seen("F6", "R2", 13.60),
            new Seen("F5", "R2", 22.50)),
        "behind=roots/probable | house sewer: where=answered/sure 72 ft 1.2..6.2 deep | "
            + "clear=no/sure 40 % | sound=no/sure 1 | "
            + "drain=no/sure drain_water_stands | cope=within_limits/likely yes | "
            + "freeze=answered/likely freeze_empty_pipe | now=now_first_deep | "
            + "tests=Q3 fails,FX1 tested,FX2 assumed | doubts=iron_pipe");
  }

  private static DemoTruth pit() {
    return new DemoTruth(
        "wash-down-pit",
        1,
        List.of(length("R1", 24.40)),
        List.of(
            new Spot("R1", 3.10, 3.11, 4.30, 0.574),
            new Spot("R1", 6.00, 3.32, 7.19, 0.573),
            new Spot("R1", 9.00, 3.61, 10.18, 0.525),
            new Spot("R1", 12.00, 5.85, 12.16, 0.533),
            new Spot("R1", 14.30, 7.58, 13.69, 0.517),
            new Spot("R1", 19.00, 10.98, 16.92, 0.446),
            new Spot("R1", 22.00, 13.08, 19.06, 0.450)),
        List.of(
            new Seen("F3", "R1", 3.10), new Seen("F1", "R1", 11.40), new Seen("F2", "R1", 13.60)),
        "behind=frozen-pipe/probable | pit line: where=answered/sure 24.5 m 0.45..0.60 deep | "
            + "clear=no/sure 25 % | sound=no/sure 1 | "
            + "drain=does_not_apply/sure drain_pumped | cope=within_limits/sure pump_keeps_up | "
            + "freeze=answered/likely freeze_water | "
            + "now=now_first_deep | "
            + "tests=FX1 assumed | doubts=none");
  }

  private static Seen length(String reach, double length) {
    return new Seen(reach, reach, length);
  }
}
