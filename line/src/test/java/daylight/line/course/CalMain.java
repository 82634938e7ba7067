package daylight.line.course;
public class CalMain {
  public static void main(String[] a) throws Exception {
    int lines = Integer.parseInt(a[0]);
    for (Nature nature : Nature.values()) {
      if (a.length > 1 && !nature.name().equals(a[1])) continue;
      long t = System.nanoTime();
      Calibration c = new Calibration();
      SplitMix64 random = new SplitMix64(-nature.seed());
      for (LineSort sort : LineClasses.ALL) {
        for (int seed = 1; seed <= lines; seed++) {
          try { c.add(KnownProperty.of(nature, sort, seed), random); } catch (RuntimeException e) { System.out.println(sort.words() + " " + seed + " " + e); e.printStackTrace(System.out); return; }
        }
      }
      System.out.println(nature + " ms a line " + (System.nanoTime() - t) / 1e6 / lines / LineClasses.ALL.size() + " unanswered " + c.unanswered());
      show("all", c, x -> true);
      for (LineSort sort : LineClasses.ALL) show(sort.words(), c, x -> x.sort().equals(sort));
      int i = 0;
      for (var p : c.thirds(Calibration.Trial::size)) show("size " + ++i, c, p);
      i = 0;
      for (var p : c.thirds(Calibration::depthSize)) show("depth size " + ++i, c, p);
      i = 0;
      for (var p : c.thirds(Calibration.Trial::away)) show("away " + ++i, c, p);
    }
  }
  static void show(String name, Calibration c, java.util.function.Predicate<Calibration.Trial> p) {
    System.out.printf("%-70s plan %.3f %.3f %.3f %.3f | depth %.3f %.3f %.3f %.3f | score across %.2f along %.2f depth %.3f n %d%n", name.length() > 70 ? name.substring(0, 70) : name,
      c.plan(0, p).value(), c.plan(1, p).value(), c.plan(2, p).value(), c.plan(3, p).value(),
      c.depth(0, p).value(), c.depth(1, p).value(), c.depth(2, p).value(), c.depth(3, p).value(),
      c.score(Calibration.Trial::across, p), c.score(Calibration.Trial::along, p), c.score(Calibration.Trial::depth, p), c.plan(0, p).of());
  }
}
