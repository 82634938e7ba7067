package daylight.report;

import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Lines with far more findings than there is room for, made by chance from a seed. */
public final class Dense {
  private static final List<String> KINDS =
      List.of("roots", "crack", "break", "joint", "standing-water", "deposit-loose", "unheard-of");

  private Dense() {}

  public static Handout handout(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Handout usual = Example.usual();
    Line line = usual.line();
    List<Run> runs = new ArrayList<>();
    PlanPoint at = new PlanPoint(random.nextDouble(-3, 3), random.nextDouble(-3, 3));
    List<PlacedFinding> findings = new ArrayList<>();
    String[] nodes = {"CO1", "J1", "OUT"};
    for (int i = 0; i < 2; i++) {
      double bearing = random.nextDouble(0, 2 * Math.PI);
      double length = random.nextDouble(2, 40);
      PlanPoint end =
          new PlanPoint(
              at.x() + length * StrictMath.sin(bearing), at.y() + length * StrictMath.cos(bearing));
      String reach = "R" + (i + 1);
      runs.add(ExampleLine.run(reach, nodes[i], nodes[i + 1], at, end, 1));
      at = end;
      int count = random.nextInt(5, 45);
      for (int f = 0; f < count; f++) {
        String kind = KINDS.get(random.nextInt(KINDS.size()));
        double from = random.nextDouble(0, length);
        findings.add(
            ExampleLine.finding("F" + findings.size(), kind, reach, from, null, "share", 0.2));
      }
    }
    Line dense =
        new Line(
            line.survey(),
            line.levels(),
            runs,
            findings,
            List.of(),
            List.of(),
            line.locates(),
            List.of(),
            List.of(),
            line.joint());
    return new Handout(
        usual.book(),
        dense,
        usual.answers(),
        usual.rules(),
        usual.shots(),
        List.of(),
        usual.language(),
        usual.shown(),
        usual.paper());
  }
}
