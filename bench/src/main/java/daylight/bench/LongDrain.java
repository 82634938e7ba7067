package daylight.bench;

import java.util.Locale;

/** The field book of an invented straight drain with as many locates and findings as wanted. */
final class LongDrain {
  private static final String[] KINDS = {
    "kind: roots, share: 20 %, through: joint",
    "kind: crack, width: 2 mm, direction: along",
    "kind: displaced-joint, offset: 8 mm",
    "kind: deposit-loose, share: 10 %",
    "kind: standing-water, depth: 15 mm, still: yes",
    "kind: grease, share: 5 %"
  };

  /** Of a counter that reads too much. */
  private static final double SCALE = 1.004;

  /** From lens to transmitter, metres. */
  private static final double BEHIND = 0.4;

  private LongDrain() {}

  /** A whole book, evenly filled. */
  static String book(double metres, int locates, int findings) {
    return book(metres, locates, findings, 0);
  }

  /**
   * The same with a photograph for each of the first findings.
   *
   * @param photographs whose files are {@link #photograph}
   */
  static String book(double metres, int locates, int findings, int photographs) {
    StringBuilder yaml = new StringBuilder(80_000);
    yaml.append(
        """
        daylight-book: 1
        units: {distance: m, depth: m, bore: mm, level: m}
        site:
          name: A long drain
          invented: yes
          landmarks:
            - {label: A, what: a corner, kind: corner}
            - {label: B, what: another corner, kind: corner}
          nodes:
            - {label: N1, kind: access, what: a cleanout}
            - {label: N2, kind: outlet, what: a pipe end}
          reaches:
            - {label: R1, line: drain, from: N1, to: N2, water: forward, use: sanitary,
               material: pvc, bore: 150 mm}
        visit:
          date: 2026-04-18
          complaint: It drains slowly
          kit: {sonde-behind-lens: 0.4 m, sonde-above-invert: 30 mm}
          passes:
            - {label: P1, entry: N1, walk: [R1], zero: {reads: 0}, head: self-righting}
        """);
    yaml.append(
        String.format(
            Locale.ROOT, "  end: {cable: %.2f, why: outlet-reached, node: N2}%n", metres * SCALE));
    yaml.append("  spots:\n    - {of: N1, along: 0, out: 2}\n");
    yaml.append(
        String.format(
            Locale.ROOT, "  ties:%n    - {from: A, to: B, tape: %.0f}%n  locates:%n", metres));
    for (int i = 1; i <= locates; i++) {
      double at = metres * i / (locates + 1);
      double stray = 0.05 * StrictMath.sin(7.3 * i);
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - {label: L%d, cable: %.2f, along: %.3f, out: %.3f, depth: %.2f}%n",
              i,
              (at + BEHIND) * SCALE,
              at + stray,
              2 + stray,
              1.2 + 2 * at / metres + 0.02 * StrictMath.sin(3.1 * i)));
    }
    if (findings > 0) {
      yaml.append("  findings:\n");
    }
    for (int i = 0; i < findings; i++) {
      double at = 0.5 + (metres - 1) * i / findings;
      String kind = KINDS[i % KINDS.length];
      String stills = i < photographs ? String.format(Locale.ROOT, ", stills: [B%d]", i + 1) : "";
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - {label: F%d, cable: %.2f, %s, clock: 5-7%s}%n",
              i + 1,
              at,
              kind,
              stills));
    }
    if (photographs > 0) {
      yaml.append("  media:\n");
    }
    for (int i = 0; i < photographs; i++) {
      yaml.append(
          String.format(
              Locale.ROOT, "    - {label: B%d, kind: photo, file: %s}%n", i + 1, photograph(i)));
    }
    return yaml.toString();
  }

  /** The name of a photograph's file beside the book. */
  static String photograph(int index) {
    return "photograph-" + (index + 1) + ".jpg";
  }
}
