package daylight.report.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may end: as usual, but not behind an apostrophe within a word, as in <i>l’eau</i>,
 * where the usual iterator would end one; nor within 5' 7" or before a per cent sign, for half of a
 * figure can be taken for the whole.
 */
final class LineEnds implements FSTextBreaker {
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
    if (end < 2 || text.charAt(end - 1) != ' ') {
      return false;
    }
    char before = text.charAt(end - 2);
    char after = text.charAt(end);
    boolean feet = before == '\'' && end > 2 && Character.isDigit(text.charAt(end - 3));
    return (feet && Character.isDigit(after)) || (Character.isDigit(before) && after == '%');
  }
}
