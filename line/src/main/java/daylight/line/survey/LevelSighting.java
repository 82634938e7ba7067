package daylight.line.survey;

import java.util.List;

/** One observation of height, as written in the book. Metres; sd is its standard uncertainty. */
public sealed interface LevelSighting {

  /** The label of the book entry this was read from. */
  String entry();

  /** The points this speaks of. */
  List<String> points();

  /**
   * A height difference.
   *
   * @param metres height of to minus height of from
   */
  record Rise(String entry, String from, String to, double metres, double sd)
      implements LevelSighting {
    public Rise {
      Require.labels(entry, from, to);
      Require.finite("metres", metres, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(from, to);
    }
  }

  /** A height above the datum, uncertain. */
  record Height(String entry, String point, double metres, double sd) implements LevelSighting {
    public Height {
      Require.label("entry", entry);
      Require.label("point", point);
      Require.finite("metres", metres, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }

  /** A height that is held. Its entry is the label of its point. */
  record Benchmark(String point, double metres) implements LevelSighting {
    public Benchmark {
      Require.label("point", point);
      Require.finite("metres", metres, "m");
    }

    @Override
    public String entry() {
      return point;
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }

  /**
   * A rod reading from one set-up of a level or laser whose own height is unknown.
   *
   * @param setup names the set-up
   * @param reading metres; height of the point is height of the set-up minus the reading
   */
  record Rod(String entry, String setup, String point, double reading, double sd)
      implements LevelSighting {
    public Rod {
      Require.label("entry", entry);
      Require.label("setup", setup);
      Require.label("point", point);
      Require.finite("reading", reading, "m");
      Require.positive("sd", sd, "m");
    }

    @Override
    public List<String> points() {
      return List.of(point);
    }
  }
}
