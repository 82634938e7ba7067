package daylight.report.draw;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lines that are hard to draw. */
final class StripCases {
  static final String PIPE = ", water: forward, use: storm, material: pvc, bore: 100";

  private StripCases() {}

  static Map<String, Subject> all() {
    Map<String, Subject> all = new TreeMap<>();
    all.put("nothing", Typed.book("    - {label: R1, line: main, from: N1, to: N2}\n", ""));
    all.put("one finding", Typed.one("", "findings:\n  - {label: F1, kind: roots, cable: 3.2}"));
    all.put("sixty within 6 m", sixty());
    all.put("sixty with pictures", Typed.pictured(sixty(), labels(60)));
    all.put("two metres", length(2));
    all.put("300 m", length(300));
    all.put("long words", longWords());
    all.put("way of the water unknown", Typed.one(", material: clay", pushed("cable: 12", "R")));
    all.put(
        "against the water",
        Typed.one(PIPE.replace("forward", "backward"), pushed("cable: 12", "")));
    all.put("pumped", Typed.one(PIPE.replace("storm", "pumped"), pushed("cable: 12", "")));
    all.put("changes", changes());
    all.put("branches", branches());
    return all;
  }

  static java.util.stream.Stream<String> labels(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(i -> "F" + i);
  }

  private static String pushed(String end, String remark) {
    return "end: {"
        + end
        + ", why: friction}\nsight:\n  - {from: 0, to: 7, clarity: clear}\n"
        + "  - {from: 7, to: 9, clarity: blind}\nfindings:\n"
        + "  - {label: F1, kind: crack, from: 2, to: 5, clock: 12}\n"
        + "  - {label: F2, kind: flowing-water, from: 5, to: 11, depth: 20 mm"
        + (remark.isEmpty() ? "}" : ", remark: " + remark + "}");
  }

  /** Sixty findings within twenty feet, round the clock. */
  static Subject sixty() {
    String[] kinds = {"roots", "crack", "joint", "deposit-loose", "unknown", "displaced-joint"};
    String findings =
        IntStream.rangeClosed(1, 60)
            .mapToObj(
                i ->
                    "  - {label: F%d, kind: %s, cable: %s, clock: %d}"
                        .formatted(
                            i,
                            kinds[i % kinds.length],
                            String.format(Locale.ROOT, "%.2f", i * 0.1),
                            i % 12 + 1))
            .collect(Collectors.joining("\n"));
    return Typed.one(
        PIPE, "end: {cable: 6.1, why: outlet-reached, node: N2}\nfindings:\n" + findings);
  }

  private static Subject length(int metres) {
    String rows =
        """
        end: {cable: %d, why: outlet-reached, node: N2}
        sight:
          - {from: 0, to: %d, clarity: clear}
        findings:
          - {label: F1, kind: standing-water, from: %s, to: %s, depth: 30 mm}
          - {label: F2, kind: roots, cable: %s, share: 10 %%, clock: 10-2}
        """
            .formatted(metres, metres, metres * 0.2, metres * 0.6, metres * 0.7);
    return Typed.one(PIPE, rows);
  }

  private static Subject longWords() {
    String long1 = "a-kind-of-finding-that-some-company-named-at-very-great-length-and-without-end";
    return Typed.pictured(
        Typed.one(
            PIPE,
            "end: {cable: 9, why: outlet-reached, node: N2}\nfindings:\n"
                + "  - {label: F1, kind: "
                + long1
                + ", cable: 4}\n"
                + "  - {label: F2, kind: "
                + long1
                + "-again, cable: 4.2}\n"
                + "  - {label: F3, kind: material-change, cable: 8, becomes: a material with a name so"
                + " long that it fits nowhere}"),
        labels(1));
  }

  private static Subject changes() {
    return Typed.one(
        PIPE,
        """
        end: {cable: 14, why: outlet-reached, node: N2}
        findings:
          - {label: F1, kind: bore-change, cable: 5, becomes: 150 mm}
          - {label: F2, kind: material-change, cable: 9, becomes: clay}
          - {label: F3, kind: grease, from: 1, to: 3, share: 20 %, clock: 10-2}
          - {label: F4, kind: deposit-hard, from: 6, to: 8, share: 15 %}
          - {label: F5, kind: junction, cable: 11, clock: 3, bore: 100 mm}
        bends:
          - {label: B1, cable: 7, angle: 45°, sense: left}
        """);
  }

  /** A main with two branches, one of which nobody looked into. */
  private static Subject branches() {
    return Typed.book(
        """
            - {label: R1, line: main, from: N1, to: N4, water: forward, bore: 100, length: 10}
            - {label: R2, line: main, from: N4, to: N2, water: forward, bore: 100, length: 8}
            - {label: R3, line: main, from: N3, to: N4, water: forward, bore: 75}
            - {label: R4, line: main, from: N5, to: N4, water: forward}
        """,
        """
              - label: P1
                entry: N1
                walk: [R1]
                zero: {reads: 0}
                end: {cable: 10, why: enough}
              - label: P2
                entry: N3
                head: self-righting
                walk: [R3]
                zero: {reads: 0}
                end: {cable: 4, why: bend}
                findings:
                  - {label: F9, kind: crack, cable: 2, clock: 9}
        """);
  }
}
