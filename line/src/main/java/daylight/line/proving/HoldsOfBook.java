package daylight.line.proving;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Test;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the hold tests of a book. */
final class HoldsOfBook {
  private final FieldBook book;
  private final Line line;
  private final HoldLimits limits;
  private final Priors priors;

  HoldsOfBook(FieldBook book, Line line, HoldLimits limits, Priors priors) {
    this.book = book;
    this.line = line;
    this.limits = limits;
    this.priors = priors;
  }

  HeldTest read(Test test) {
    List<Lack> lacks = new ArrayList<>();
    List<String> reaches = reaches(test);
    Hold.Loss loss = loss(test, lacks);
    Reading time = test.duration();
    if (time == null) {
      lacks.add(new Lack(Lack.Why.DURATION, ""));
    }
    Measured held = boreTimesLength(reaches, lacks);
    if (loss == null || time == null) {
      return new HeldTest(test, reaches, null, null, List.of(), lacks);
    }
    Reading head = test.held().head();
    Measured duration = measured(Priors.Kind.WATCH, time);
    Hold hold = new Hold(loss, duration, held, head == null ? null : head.value());
    return new HeldTest(test, reaches, hold, Holds.leak(hold), Holds.against(hold, limits), lacks);
  }

  /** Those noted; else the only one there is. */
  private List<String> reaches(Test test) {
    List<String> noted = test.held().reaches();
    List<Reach> all = book.site().reaches();
    return noted.isEmpty() && all.size() == 1 ? List.of(all.getFirst().label()) : noted;
  }

  /** What was topped up tells more than a level read in a riser. */
  private Hold.@Nullable Loss loss(Test test, List<Lack> lacks) {
    Reading volume = test.held().toppedUp();
    Reading drop = test.drop();
    Reading riser = test.held().riser();
    if (volume != null) {
      return new Hold.Loss.ToppedUp(measured(Priors.Kind.VOLUME, volume));
    }
    if (drop == null) {
      lacks.add(new Lack(Lack.Why.LOSS, ""));
      return null;
    }
    if (riser == null) {
      lacks.add(new Lack(Lack.Why.RISER, ""));
      return null;
    }
    return new Hold.Loss.Drop(
        measured(Priors.Kind.WATER_DROP, drop), measured(Priors.Kind.BORE, riser));
  }

  private Measured measured(Priors.Kind kind, Reading reading) {
    return new Measured(reading.value(), priors.sd(kind, reading));
  }

  /** Bores of one line err together: they are written as the size that pipe is sold by. */
  private @Nullable Measured boreTimesLength(List<String> reaches, List<Lack> lacks) {
    double sum = 0;
    double byBore = 0;
    double byLength = 0;
    int before = lacks.size();
    for (String label : reaches) {
      Optional<Run> run = line.findRun(label);
      Reading bore = run.map(Run::reach).map(Reach::bore).orElse(null);
      Measured length = run.map(this::length).orElse(null);
      if (bore == null) {
        lacks.add(new Lack(Lack.Why.BORE, label));
      }
      if (length == null) {
        lacks.add(new Lack(Lack.Why.LENGTH, label));
      }
      if (bore != null && length != null) {
        sum += bore.value() * length.value();
        byBore += length.value() * priors.sd(Priors.Kind.BORE, bore);
        byLength = StrictMath.hypot(byLength, bore.value() * length.sd());
      }
    }
    if (reaches.isEmpty()) {
      lacks.add(new Lack(Lack.Why.REACHES, ""));
    }
    return lacks.size() > before ? null : new Measured(sum, StrictMath.hypot(byBore, byLength));
  }

  private @Nullable Measured length(Run run) {
    Measured computed = run.length();
    Reading written = run.reach().length();
    return computed != null || written == null ? computed : measured(Priors.Kind.TAPE, written);
  }
}
