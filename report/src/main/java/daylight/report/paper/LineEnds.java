package daylight.report.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Set;

/**
 * Where a line may end: as usual, but not behind an apostrophe within a word, as in <i>l’eau</i>,
 * where the usual iterator would end one; nor within 5' 7", 0:49 or 38-22, nor between a figure and
 * its unit or what it is compared with, for half of a figure can be taken for the whole.
 */
final class LineEnds implements FSTextBreaker {
  private static final Set<String> UNITS =
      Set.of("%", "°C", "°F", "ft", "in", "m", "mm", "gal", "gpm", "L", "L/s", "h", "min", "s");

  private final BreakIterator usual = BreakIterator.getLineInstance(Locale.ROOT);
  private String text = "";

  @Override
  public void setText(String fresh) {
    text = fresh;
    usual.setText(fresh);
  }

  @Override
  public int next() {
    int end = usual.next();
    while (end != BreakIterator.DONE
        && end < text.length()
        && (isWithinWord(end) || isWithinFigure(end))) {
      end = usual.next();
    }
    return end;
  }

  private boolean isWithinWord(int end) {
    return end > 1
        && text.charAt(end - 1) == '’'
        && Character.isLetter(text.charAt(end - 2))
        && Character.isLetter(text.charAt(end));
  }

  private boolean isWithinFigure(int end) {
    if (end < 2) {
      return false;
    }
    char last = text.charAt(end - 1);
    char before = text.charAt(end - 2);
    char after = text.charAt(end);
    if (last == ':' || last == '-') {
      return Character.isDigit(before) && Character.isDigit(after);
    }
    if (last != ' ') {
      return false;
    }
    boolean feet = before == '\'' && end > 2 && Character.isDigit(text.charAt(end - 3));
    boolean compared = before == '<' || before == '>';
    return Character.isDigit(after)
        ? feet || compared || (Character.isDigit(before) && isFraction(end))
        : Character.isDigit(before) && UNITS.contains(word(end));
  }

  /** Whether digits stand there, a stroke and another: 1 1/4 is one figure. */
  private boolean isFraction(int from) {
    int to = from;
    while (to < text.length() && Character.isDigit(text.charAt(to))) {
      to++;
    }
    return to + 1 < text.length()
        && text.charAt(to) == '/'
        && Character.isDigit(text.charAt(to + 1));
  }

  /** What stands there up to the next blank or mark. */
  private String word(int from) {
    int to = from;
    while (to < text.length() && isOfUnit(text.charAt(to))) {
      to++;
    }
    return text.substring(from, to);
  }

  private static boolean isOfUnit(char c) {
    return Character.isLetter(c) || c == '/' || c == '%' || c == '°';
  }
}
