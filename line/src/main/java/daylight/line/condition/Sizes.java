package daylight.line.condition;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the size that a row asks for among those of a finding. */
final class Sizes {
  private Sizes() {}

  /** A size, or what is missing for it. */
  sealed interface Found {
    record Known(Size size) implements Found {}

    record Missing(List<Lack> lacks) implements Found {
      public Missing {
        lacks = List.copyOf(lacks);
      }
    }
  }

  static Found find(Sized sized, Seen seen) {
    Reading own = seen.sizes().get(sized.quantity());
    if (own != null) {
      Double sd = own.sd();
      Measured doubt = sd == null ? null : new Measured(own.value(), sd);
      return new Found.Known(new Size(sized, sized.quantity(), own, own.value(), doubt));
    }
    String or = sized.or();
    ShareOf of = sized.of();
    Reading height = or == null ? null : seen.sizes().get(or);
    if (or == null || of == null || height == null) {
      List<String> instead = or == null ? List.of() : List.of(or);
      return missing(new Lack(Lack.Why.SIZE, sized.quantity(), instead));
    }
    Double bore = seen.bore();
    if (bore == null) {
      return missing(Lack.BORE);
    }
    if (height.value() > bore) {
      return missing(new Lack(Lack.Why.HIGHER_THAN_BORE, or, List.of()));
    }
    return new Found.Known(workedOut(sized, of, or, height, height.value() / bore, bore));
  }

  private static Found missing(Lack lack) {
    return new Found.Missing(List.of(lack));
  }

  private static Size workedOut(
      Sized sized, ShareOf of, String from, Reading height, double full, double bore) {
    double share = of == ShareOf.SECTION ? segment(full) : full;
    Double stated = height.sd();
    double growth = of == ShareOf.SECTION ? segmentGrowth(full) : 1;
    return new Size(sized, from, height, share, doubt(share, stated, growth / bore));
  }

  private static @Nullable Measured doubt(double share, @Nullable Double sd, double growth) {
    return sd == null || !(growth > 0) ? null : new Measured(share, sd * growth);
  }

  /** The share of a circle's area that lies below a share of its height. */
  static double segment(double full) {
    return new Filled(1, full).area() / Filled.full(1).area();
  }

  /** How fast that share grows with the share of the height: the chord over the mean chord. */
  private static double segmentGrowth(double full) {
    return 8 * StrictMath.sqrt(full * (1 - full)) / Math.PI;
  }
}
