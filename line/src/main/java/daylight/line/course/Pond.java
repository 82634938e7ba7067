package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Still water that was seen in the pipe: its surface is level, whatever holds it.
 *
 * <p>Where it begins, upstream, the bottom of the pipe is at that level. Where it ends, downstream,
 * it is so only if nothing dams the water or stands against it. Where its depth was judged, the
 * bottom is that much lower. Why the water stands is not asked here.
 *
 * @param name of the unknown that stands for its level
 * @param soundings what is known of it: two at least
 */
record Pond(String name, List<Sounding> soundings) {
  /** What water is noted as, when it stands. */
  private static final String STANDING = "standing-water";

  /** So near to the end of the water something dams it, metres; common practice, no source. */
  private static final double AT_ITS_END = 0.5;

  /**
   * Water noted within so much of where the camera began or ended may go on beyond, metres; common
   * practice, no source.
   */
  private static final double AT_SIGHTS_END = 0.15;

  /** What is noted as two stretches less than this apart is one water, metres; common practice. */
  private static final double APART = 0.3;

  /**
   * The depth in the middle of a pond as a share of its greatest, where nobody said where that is:
   * mean and standard deviation over ponds on pipes whose pitch wanders at random, which hardly
   * depend on how much it does (derived by simulation; a test draws such ponds again).
   */
  static final double MIDDLE = 0.84;

  static final double MIDDLE_SD = 0.17;

  Pond {
    soundings = List.copyOf(soundings);
  }

  /**
   * One thing known of a pond.
   *
   * @param id of the finding that tells it
   * @param depth of the water there, metres; 0 where it begins or ends
   * @param sd standard uncertainty of that depth
   * @param readingSd standard uncertainty of the counter reading, metres
   */
  record Sounding(
      Id id,
      Walk walk,
      int limb,
      double reading,
      Finding.Moving moving,
      double depth,
      double sd,
      double readingSd) {

    Walk.Reached at(double[] x) {
      return walk.on(limb, x, reading, moving, -1);
    }
  }

  /** One finding of standing water, by rising counter. */
  private record Seen(Finding finding, double from, double to) {}

  /** Every still water that the passes of a book found on the tree. */
  static List<Pond> of(FieldBook book, Layout layout, Walks walks, Priors priors, double[] start) {
    List<Pond> ponds = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = walks.find(visit.label(), pass.label());
        if (walk != null && Altered.holds(book, visit, pass)) {
          Waters waters = new Waters(layout, walk, priors, pass, start);
          for (List<Seen> together : together(pass)) {
            Seen first = together.getFirst();
            String name = "pond/" + visit.label() + "/" + first.finding().id().label();
            List<Sounding> soundings = waters.soundings(together);
            if (soundings.size() >= 2) {
              ponds.add(new Pond(name, soundings));
            }
          }
        }
      }
    }
    return ponds;
  }

  /** The still waters of a pass; what overlaps or nearly meets is one. */
  private static List<List<Seen>> together(Pass pass) {
    List<Seen> all = new ArrayList<>();
    for (Finding finding : pass.findings()) {
      String still = finding.words().get("still");
      if (finding.kind().equals(STANDING) && still != null && still.equalsIgnoreCase("yes")) {
        Seen seen = seen(finding);
        if (seen != null) {
          all.add(seen);
        }
      }
    }
    all.sort(
        Comparator.comparingDouble(Seen::from).thenComparing(seen -> seen.finding().id().label()));
    List<List<Seen>> groups = new ArrayList<>();
    double end = Double.NEGATIVE_INFINITY;
    for (Seen seen : all) {
      if (groups.isEmpty() || seen.from() > end + APART) {
        groups.add(new ArrayList<>());
        end = seen.to();
      }
      groups.getLast().add(seen);
      end = Math.max(end, seen.to());
    }
    return groups;
  }

  private static @Nullable Seen seen(Finding finding) {
    return switch (finding.where()) {
      case Where.AtCable(Reading at) -> new Seen(finding, at.value(), at.value());
      case Where.FromTo(Reading a, Reading b) ->
          new Seen(finding, Math.min(a.value(), b.value()), Math.max(a.value(), b.value()));
      case Where.AtMoment _ -> null;
    };
  }

  /** The waters of one pass on one tree. */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Waters(Layout layout, Walk walk, Priors priors, Pass pass, double[] start) {

    List<Sounding> soundings(List<Seen> water) {
      List<Sounding> soundings = new ArrayList<>();
      List<Seen> stretches = water.stream().filter(seen -> seen.to() > seen.from()).toList();
      double from = stretches.stream().mapToDouble(Seen::from).min().orElse(0);
      double to = stretches.stream().mapToDouble(Seen::to).max().orElse(0);
      for (Seen seen : water) {
        Finding finding = seen.finding();
        Reading depth = finding.quantities().get("depth");
        if (seen.to() == seen.from()) {
          if (depth != null) {
            double sd = priors.sd(Priors.Kind.WATER_DEPTH, depth);
            soundings.add(sounding(finding, seen.from(), depth.value(), sd));
          }
          continue;
        }
        if (seen.from() == from && isEdge(water, from, true)) {
          soundings.add(edge(finding, from));
        }
        if (depth != null) {
          double middle = (seen.from() + seen.to()) / 2;
          double sd = priors.sd(Priors.Kind.WATER_DEPTH, depth);
          soundings.add(
              sounding(
                  finding,
                  middle,
                  MIDDLE * depth.value(),
                  StrictMath.hypot(MIDDLE * sd, MIDDLE_SD * depth.value())));
        }
        if (seen.to() == to && isEdge(water, to, false)) {
          soundings.add(edge(finding, to));
        }
      }
      return soundings;
    }

    private Sounding edge(Finding finding, double reading) {
      return sounding(finding, reading, 0, priors.sd(Priors.Kind.WATER_DEPTH, 0));
    }

    private Sounding sounding(Finding finding, double reading, double depth, double sd) {
      int limb = walk.at(start, reading, finding.moving(), -1).limb();
      double readingSd = priors.sd(Priors.Kind.COUNTER_READING, reading);
      return new Sounding(
          finding.id(), walk, limb, reading, finding.moving(), depth, sd, readingSd);
    }

    /**
     * Whether the bottom of the pipe is at the level of the water where it ends there.
     *
     * @param first whether that is the end that the camera came to first
     */
    private boolean isEdge(List<Seen> water, double reading, boolean first) {
      Pass.End end = pass.end();
      if (end != null && Math.abs(end.cable().value() - reading) <= AT_SIGHTS_END) {
        return false;
      }
      if (walk.counter().sinceEntry(reading) <= AT_SIGHTS_END) {
        return false;
      }
      int limb = walk.at(start, reading, Finding.Moving.PUSHING, -1).limb();
      boolean withTheWater = walk.away(limb) == layout.tree().limbs().get(limb).downstream();
      return withTheWater == first || !dammed(water, reading);
    }

    private boolean dammed(List<Seen> water, double reading) {
      return water.stream().anyMatch(seen -> seen.finding().words().containsKey("held-by"))
          || pass.findings().stream()
              .anyMatch(finding -> finding.mayDam() && reaches(finding, reading));
    }

    private static boolean reaches(Finding finding, double reading) {
      return switch (finding.where()) {
        case Where.AtCable(Reading at) -> Math.abs(at.value() - reading) <= AT_ITS_END;
        case Where.FromTo(Reading a, Reading b) ->
            Math.min(a.value(), b.value()) - AT_ITS_END <= reading
                && reading <= Math.max(a.value(), b.value()) + AT_ITS_END;
        case Where.AtMoment _ -> true;
      };
    }
  }
}
