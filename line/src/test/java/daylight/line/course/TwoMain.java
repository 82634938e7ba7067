package daylight.line.course;
import daylight.line.counter.Tracks;
import daylight.line.survey.*;
public class TwoMain {
  public static void main(String[] a) throws Exception {
    LineSort sort = LineClasses.ALL.get(Integer.parseInt(a[0]));
    for (int seed = 1; seed <= 2; seed++) {
    KnownProperty p = KnownProperty.of(Nature.SUPPOSED, sort, seed);
    var book = Ordered.of(p.book()); var pr = KnownProperty.PRIORS;
    var plan = (Adjusted) Surveyor.adjust(PlaneOfBook.network(book, pr));
    LevelAdjusted lv = Surveyor.adjust(LevelsOfBook.network(book, pr)) instanceof LevelAdjusted x ? x : null;
    Tree tree = Tree.grow(book, "main").getFirst();
    Gathered g = Gathered.of(book, tree, true, plan, lv, pr);
    double[] sh = Start.shared(g, book, pr);
    Model m = new Model(g, 1.0, sh, SetAside.NOTHING, Wander.none());
    Fit.Fitted f = Fit.fit(m, sh);
    System.out.println("settled " + f.settled() + " cost " + f.cost() + " length0 " + g.layout().length0(0) + " true " + p.main()[0].length());
    for (Walk w : g.walks().all()) System.out.printf("scale %.5f slack %.5f zero %.4f stretch %.5f%n", f.x()[w.scale()], f.x()[w.slack()], f.x()[w.zero()], f.x()[0]);
    Wander w = f.model().wander();
    Wander now = Wander.of(f.model().knots(), f);
    for (double t = 5; t < g.layout().length0(0); t += 10) System.out.printf("%.1f share %.5f noise %.6f   now %.5f %.6f%n", t, w.share(0, t), w.noise(0, t), now.share(0, t), now.noise(0, t));
    Shape s = new Shape(f.model().knots(), f.x()); double sum = 0, straight = 0; var k = f.model().knots();
    for (int i = 1; i < k.count(0); i++) { var q = s.knot(0, i - 1); var r = s.knot(0, i); sum += Math.sqrt(Math.pow(q.east()-r.east(),2)+Math.pow(q.north()-r.north(),2)+Math.pow(q.up()-r.up(),2)); }
    System.out.println("path " + sum + " length " + s.length(0));
    }
  }
}
