package daylight.line.course;
import daylight.line.counter.Tracks;
public class OneMain {
  public static void main(String[] a) throws Exception {
    LineSort sort = LineClasses.ALL.get(Integer.parseInt(a[0]));
    for (int seed = 1; seed <= 3; seed++) {
    KnownProperty p = KnownProperty.of(Nature.SUPPOSED, sort, seed);
    Line line = Estimator.estimate(p.book(), Tracks.NONE, KnownProperty.PRIORS);
    System.out.println(line.doubts());
    for (var g : line.gaps()) System.out.printf("%s-%s cable %.2f±%.2f ground %.2f±%.2f excess %.2f±%.2f%n", g.from().label(), g.to().label(), g.cable().value(), g.cable().sd(), g.ground().value(), g.ground().sd(), g.excess().value(), g.excess().sd());
    for (var l : p.located()) System.out.println(l);
    int i = 0;
    for (Station s : line.runs().getFirst().stations()) {
      if (i++ % 12 != 0) continue;
      var t = p.truth(p.spot(s.place()));
      double e = t.east() - s.spot().x(), n = t.north() - s.spot().y(), b = s.bearing();
      System.out.printf("%6.2f across %6.2f ± %5.2f along %6.2f ± %5.2f   bearing %6.1f° true %6.1f° %n", s.place().distance(), Math.cos(b) * e - Math.sin(b) * n, s.across(), Math.sin(b) * e + Math.cos(b) * n, s.along(b), Math.toDegrees(b), Math.toDegrees(t.bearing()));
    }
    System.out.println();
    }
  }
}
