package daylight.footage.counter;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads the frames that could not be read at once: between two readings the counter can only have
 * shown a few figures, and the one that fits what stands there clearly better than all the others,
 * and much better than nothing, is read.
 */
final class SecondLook {
  /** So many steps beyond its neighbours a figure is looked for. */
  private static final long AROUND = 30;

  /** So much likelier than any other, as a logarithm: about one in three thousand. */
  private static final double CLEARLY = 8;

  /** So far off in its own spread no digit is the right one. */
  private static final double WORST = 1.4;

  /** Noise is taken to be at least this share of what is usual, in squares. */
  private static final double LEAST_SPREAD = 0.5;

  /** So much likelier than nothing, a digit. */
  private static final double THERE = 5;

  private final Scroll scroll;
  private final Series series;
  private final char[] names;
  private final int place;
  private final double[] seconds;
  private final double perStep;

  /** A text as it can stand there, and where its digits are among those of the line. */
  private record Form(int line, int skipped, int digits, Said said) {}

  /** What was told. */
  record Told(int frame, long steps, String shown) {}

  SecondLook(Scroll scroll, Series series, char[] names, int place, double[] seconds) {
    this.scroll = scroll;
    this.series = series;
    this.names = names;
    this.place = place;
    this.seconds = seconds;
    perStep = series.metresPerStep();
  }

  /** What can be told of frames between and beside stays. */
  List<Told> told(List<Path.Stay> stays) {
    List<Told> told = new ArrayList<>();
    for (int k = 0; k <= stays.size(); k++) {
      Path.Stay before = k > 0 ? stays.get(k - 1) : null;
      Path.Stay after = k < stays.size() ? stays.get(k) : null;
      int from = before == null ? 0 : before.last() + 1;
      int to = after == null ? seconds.length : after.first();
      List<Form> forms = forms(before, after);
      long last = before == null ? Series.NONE : before.steps();
      double at = before == null ? 0 : seconds[before.last()];
      for (int frame = from; frame < to; frame++) {
        byte[] seen = scroll.kept(frame);
        if (seen == null) {
          continue;
        }
        Set<Long> figures = new LinkedHashSet<>();
        around(figures, last, seconds[frame] - at);
        if (after != null) {
          around(figures, after.steps(), seconds[after.first()] - seconds[frame]);
        }
        Told one = look(frame, seen, forms, figures);
        if (one != null) {
          told.add(one);
          last = one.steps();
          at = seconds[frame];
        }
      }
      for (int i = before == null ? seconds.length : before.first();
          before != null && i < from;
          i++) {
        byte[] seen = series.at(i) == Series.NONE ? scroll.kept(i) : null;
        if (seen != null) {
          Set<Long> figures = new LinkedHashSet<>();
          around(figures, before.steps(), 0);
          Told one = look(i, seen, forms, figures);
          if (one != null) {
            told.add(one);
          }
        }
      }
    }
    return told;
  }

  private void around(Set<Long> figures, long steps, double seconds) {
    if (steps == Series.NONE) {
      return;
    }
    long most = Math.min(AROUND, 2 + (long) (Path.FASTEST * seconds / perStep));
    for (long by = -most; by <= most; by++) {
      figures.add(steps + by);
    }
  }

  private List<Form> forms(Path.@Nullable Stay before, Path.@Nullable Stay after) {
    List<Form> forms = new ArrayList<>();
    for (Path.Stay stay : new Path.Stay[] {before, after}) {
      if (stay != null) {
        Form form = form(scroll.at(stay.first()));
        if (form != null && forms.stream().noneMatch(one -> alike(one, form))) {
          forms.add(form);
        }
      }
    }
    return forms;
  }

  private boolean alike(Form a, Form b) {
    return a.digits() == b.digits() && a.skipped() == b.skipped();
  }

  private @Nullable Form form(int line) {
    if (line < 0) {
      return null;
    }
    String text = scroll.text(line, names);
    List<Said> said = Said.in(text);
    if (said.size() <= place) {
      return null;
    }
    Said one = said.get(place);
    int skipped = (int) text.substring(0, one.from()).chars().filter(Character::isDigit).count();
    int digits =
        (int) text.substring(one.from(), one.to()).chars().filter(Character::isDigit).count();
    return new Form(line, skipped, digits, one);
  }

  private @Nullable Told look(int frame, byte[] seen, List<Form> forms, Set<Long> figures) {
    double best = Double.NEGATIVE_INFINITY;
    double second = Double.NEGATIVE_INFINITY;
    double spread = 1;
    Told told = null;
    for (Form form : forms) {
      List<Fits> rows = scroll.strip().fits(seen, scroll.line(form.line()), names);
      if (rows.size() < form.skipped() + form.digits()) {
        continue;
      }
      for (long steps : figures) {
        String digits = written(steps, form);
        if (digits.isEmpty()) {
          continue;
        }
        double fit = 0;
        double misfit = 0;
        for (int i = 0; i < form.digits(); i++) {
          Fits cell = rows.get(form.skipped() + i);
          fit += cell.above(digits.charAt(i) - '0');
          misfit = Math.max(misfit, cell.misfit(digits.charAt(i) - '0'));
        }
        if (fit > best) {
          second = best;
          best = fit;
          spread = Math.max(LEAST_SPREAD, 2 * misfit);
          told =
              fit > THERE * form.digits() && misfit < WORST
                  ? new Told(frame, steps, shown(form.said().shown(), digits))
                  : null;
        } else {
          second = Math.max(second, fit);
        }
      }
    }
    if (told == null || best - second <= CLEARLY * spread) {
      return null;
    }
    return contradicted(frame, told.shown()) ? null : told;
  }

  /**
   * Whether the glyphs as they were cut on the frame say another figure of as many digits; a shape
   * without a name counts as what the network takes it for.
   */
  private boolean contradicted(int frame, String shown) {
    int line = scroll.seemed(frame);
    if (line < 0) {
      return false;
    }
    char[] likeliest = scroll.names();
    for (int kind = 0; kind < likeliest.length; kind++) {
      likeliest[kind] = names[kind] == '?' ? likeliest[kind] : names[kind];
    }
    List<Said> said = Said.in(scroll.text(line, likeliest));
    return said.size() > place
        && said.get(place).shown().length() == shown.length()
        && !said.get(place).shown().equals(shown);
  }

  /** The digits of a figure in a form; empty where it is not written so. */
  private String written(long steps, Form form) {
    if (steps < 0 || form.said().steps() < 0) {
      return "";
    }
    int places = series.places();
    String natural;
    if (places == Said.INCHES) {
      int inches = form.digits() - form.said().wholeDigits();
      String over = Long.toString(steps % 12);
      if (over.length() > inches) {
        return "";
      }
      natural = steps / 12 + "0".repeat(inches - over.length()) + over;
    } else {
      String all = Long.toString(steps);
      natural = "0".repeat(Math.max(0, places + 1 - all.length())) + all;
    }
    int missing = form.digits() - natural.length();
    boolean fits =
        missing == 0 || (missing > 0 && form.digits() - fraction(form) <= series.zeros());
    return fits ? "0".repeat(missing) + natural : "";
  }

  private int fraction(Form form) {
    return form.digits() - form.said().wholeDigits();
  }

  private static String shown(String like, String digits) {
    StringBuilder shown = new StringBuilder();
    int next = 0;
    for (int i = 0; i < like.length(); i++) {
      char one = like.charAt(i);
      shown.append(Character.isDigit(one) ? digits.charAt(next++) : one);
    }
    return shown.toString();
  }
}
