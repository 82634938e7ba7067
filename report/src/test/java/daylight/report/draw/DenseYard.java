package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Field books of invented sites with more in the pipe than there is room for, made by chance from a
 * seed: forked and bent, up to 150 m long, several visits, other services, other lines.
 */
final class DenseYard {
  private static final List<String> KINDS =
      List.of(
          "roots, share: 20 %",
          "crack, width: 2 mm",
          "break",
          "joint",
          "displaced-joint, offset: 8 mm",
          "deposit-loose, share: 10 %",
          "grease, share: 5 %",
          "deformation",
          "junction",
          "unheard-of");

  private final SplittableRandom random;
  private final StringBuilder yaml = new StringBuilder();
  private final List<Leg> legs = new ArrayList<>();
  private final List<String> spots = new ArrayList<>();
  private int findings;
  private int locates;

  /** A reach as it truly runs. */
  private record Leg(String reach, String line, String from, String to, List<Point> bends) {
    double length() {
      double length = 0;
      for (int i = 1; i < bends.size(); i++) {
        length += distance(bends.get(i - 1), bends.get(i));
      }
      return length;
    }

    Point at(double along) {
      double rest = along;
      for (int i = 1; i < bends.size(); i++) {
        Point a = bends.get(i - 1);
        Point b = bends.get(i);
        double length = distance(a, b);
        if (rest <= length || i == bends.size() - 1) {
          double t = rest / length;
          return new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
        }
        rest -= length;
      }
      throw new AssertionError("a leg has two ends");
    }

    private static double distance(Point a, Point b) {
      return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }
  }

  private DenseYard(int seed) {
    random = new SplittableRandom(seed);
  }

  static Subject subject(int seed) {
    return new DenseYard(seed).made(0, 0);
  }

  /** One of that length with so many findings on its last visit. */
  static Subject subject(int seed, double metres, int findings) {
    return new DenseYard(seed).made(metres, findings);
  }

  private Subject made(double metres, int wanted) {
    double length = metres > 0 ? metres : random.nextDouble(15, 150);
    int count = wanted > 0 ? wanted : random.nextInt(20, 200);
    double bearing = random.nextDouble(0.6, 2.5);
    double fork = length * random.nextDouble(0.3, 0.7);
    Point start = new Point(2, 1.5);
    Leg up = leg("R1", "main", "C1", "J1", start, bearing, fork);
    Leg down = leg("R2", "main", "J1", "O1", up.bends().getLast(), bearing, length - fork);
    Point away =
        new Point(
            up.bends().getLast().x() - random.nextDouble(3, 12),
            up.bends().getLast().y() + random.nextDouble(4, 12));
    legs.addAll(List.of(up, down));
    legs.add(new Leg("R3", "main", "C2", "J1", List.of(away, up.bends().getLast())));
    if (random.nextInt(3) == 0) {
      Point other = new Point(9, 1);
      legs.add(leg("R4", "roof", "C3", "O2", other, bearing + 0.3, random.nextDouble(8, 30)));
    }
    site();
    int visits = 1 + random.nextInt(3);
    line("visits:");
    for (int i = 1; i <= visits; i++) {
      visit(i, i == visits, i == visits ? count : count / 6);
    }
    return Typed.of(yaml.toString());
  }

  private Leg leg(
      String reach,
      String line,
      String from,
      String to,
      Point start,
      double bearing,
      double long1) {
    List<Point> bends = new ArrayList<>(List.of(start));
    int parts = 1 + random.nextInt(3);
    double way = bearing;
    for (int i = 0; i < parts; i++) {
      way = bearing + random.nextDouble(-0.6, 0.6);
      Point last = bends.getLast();
      double part = long1 / parts;
      bends.add(
          new Point(last.x() + part * Math.sin(way), last.y() + Math.abs(part * Math.cos(way))));
    }
    return new Leg(reach, line, from, to, bends);
  }

  private void line(String text) {
    yaml.append(text).append('\n');
  }

  private void site() {
    line("daylight-book: 1");
    line("units: {distance: m, depth: m, bore: mm, level: m}");
    line("site:");
    line("  name: Dense yard");
    line("  invented: yes");
    line("  zone: UTC");
    line("  landmarks:");
    line("    - {label: A, what: corner by the road, kind: corner, base: yes}");
    line("    - {label: B, what: corner by the garden, kind: corner, base: yes}");
    line("    - {label: M, what: a tree, kind: tree}");
    line("    - {label: D, what: iron pin, kind: monument}");
    line("  boundaries:");
    line("    - {label: BD1, kind: property-line, points: [B, D]}");
    line("  nodes:");
    line("    - {label: C1, kind: access, what: cleanout}");
    line("    - {label: C2, kind: access, what: foot of a leader}");
    line("    - {label: J1, kind: junction}");
    line("    - {label: O1, kind: outlet, what: pipe end at the ditch}");
    boolean other = legs.size() > 3;
    if (other) {
      line("    - {label: C3, kind: access, what: roof leader}");
      line("    - {label: O2, kind: outlet, what: second pipe end}");
    }
    line("  reaches:");
    for (Leg leg : legs) {
      line(
          String.format(
              Locale.ROOT,
              "    - {label: %s, line: %s, from: %s, to: %s, water: %s, use: sanitary, material: clay,"
                  + " bore: 100}",
              leg.reach(),
              leg.line(),
              leg.from(),
              leg.to(),
              other && leg.reach().equals("R4") ? "unknown" : "forward"));
    }
  }

  private void visit(int number, boolean last, int count) {
    spots.clear();
    line(String.format(Locale.ROOT, "  - label: V%d", number));
    line(String.format(Locale.ROOT, "    date: 202%d-05-06", number));
    line("    kit: {sonde-behind-lens: 0.3 m, sonde-above-invert: 20 mm}");
    line("    passes:");
    List<String> located = new ArrayList<>();
    pass("P" + number + "a", "C1", legs.subList(0, 2), count * 3 / 4, located);
    pass("P" + number + "b", "C2", List.of(legs.get(2)), count / 8, located);
    if (legs.size() > 3) {
      pass("P" + number + "c", "C3", List.of(legs.get(3)), count / 8, located);
    }
    line("    spots:");
    if (number == 1) {
      for (Leg leg : legs) {
        if (!leg.from().equals("J1")) {
          spot(leg.from(), leg.at(0));
        }
      }
      spot("D", new Point(12, 30));
      spot("M", new Point(-3, 9));
    }
    if (last) {
      Point middle = legs.get(1).at(legs.get(1).length() / 2);
      spot("K1", new Point(middle.x() - 6, middle.y() + 1));
      spot("K2", new Point(middle.x() + 7, middle.y() - 1));
      spot("K3", new Point(middle.x() + 2, middle.y() - 4));
    }
    yaml.append(String.join("", spots));
    line("    locates:");
    yaml.append(String.join("", located));
    if (number == 1) {
      line("    ties:");
      line("      - {label: T1, from: A, to: B, tape: 10}");
    }
    if (last) {
      line("    services:");
      line("      - {label: U1, service: gas, points: [K1, K2]}");
      line("      - {label: U2, service: electric, points: [K3]}");
    }
  }

  private void spot(String of, Point at) {
    spots.add(
        String.format(
            Locale.ROOT, "      - {of: %s, along: %.2f, out: %.2f}%n", of, at.x(), at.y()));
  }

  private void pass(String label, String entry, List<Leg> walk, int count, List<String> located) {
    double length = walk.stream().mapToDouble(Leg::length).sum();
    line(String.format(Locale.ROOT, "      - label: %s", label));
    line(String.format(Locale.ROOT, "        entry: %s", entry));
    line("        head: self-righting");
    line(
        String.format(
            Locale.ROOT,
            "        walk: [%s]",
            String.join(", ", walk.stream().map(Leg::reach).toList())));
    line("        zero: {reads: 0}");
    line(
        String.format(
            Locale.ROOT,
            "        end: {cable: %.2f, why: enough, node: %s}",
            length,
            walk.getLast().to()));
    double poor = length * random.nextDouble(0.2, 0.5);
    line("        sight:");
    line(String.format(Locale.ROOT, "          - {from: 0, to: %.2f, clarity: clear}", poor));
    line(
        String.format(
            Locale.ROOT,
            "          - {from: %.2f, to: %.2f, clarity: poor}",
            poor,
            poor + length / 8));
    line(
        String.format(
            Locale.ROOT,
            "          - {from: %.2f, to: %.2f, clarity: blind}",
            poor + length / 8,
            poor + length / 5));
    if (count > 0) {
      line("        findings:");
    }
    // Half of them lie together, as they do before an outlet or below a tree.
    double together = random.nextDouble(0, length * 0.9);
    for (int i = 0; i < count; i++) {
      boolean crowd = i % 2 == 0;
      double at =
          crowd
              ? random.nextDouble(together, together + length * 0.1)
              : random.nextDouble(0, length);
      findings++;
      if (i % 17 == 3) {
        line(
            String.format(
                Locale.ROOT,
                "          - {label: F%d, kind: standing-water, from: %.2f, to: %.2f, depth: 20}",
                findings,
                at * 0.98,
                Math.min(length, at * 0.98 + 0.5)));
      } else {
        line(
            String.format(
                Locale.ROOT,
                "          - {label: F%d, kind: %s, cable: %.2f, clock: %d}",
                findings,
                kind(i),
                at,
                1 + random.nextInt(12)));
      }
    }
    int many = random.nextInt(2, 14);
    for (int i = 1; i <= many; i++) {
      double at = length * i / (many + 1);
      double rest = at;
      Leg leg = walk.getFirst();
      for (Leg one : walk) {
        leg = one;
        if (rest <= one.length()) {
          break;
        }
        rest -= one.length();
      }
      Point spot = leg.at(rest);
      locates++;
      located.add(
          String.format(
              Locale.ROOT,
              "      - {label: L%d, pass: %s, cable: %.2f, along: %.2f, out: %.2f, depth: %.2f}%n",
              locates,
              label,
              at + 0.3,
              spot.x(),
              spot.y(),
              1 + at / 60 + random.nextDouble(0, 0.1)));
    }
  }

  private String kind(int i) {
    return i % 97 == 50 ? "foreign-pipe" : KINDS.get(random.nextInt(KINDS.size()));
  }
}
