package daylight.report.words;

import java.util.Set;
import java.util.regex.Pattern;

/**
 * Draws two words together where a figure is set behind a message's own words: French <i>de</i> and
 * <i>le</i> become <i>du</i>, <i>de</i> before a vowel <i>d’</i>. English has nothing to do. Names
 * stay untouched: they begin with a capital or a digit, or are too short to be a word.
 *
 * <p>Source: common grammar, from memory.
 */
final class Joints {
  private static final Pattern WORD =
      Pattern.compile("(?:les? \\p{L}|\\p{javaLowerCase}[\\p{L}’]{2}).*", Pattern.DOTALL);
  private static final String VOWELS = "aàâeéèêiîïoôuùûyœæ";

  /** Beginnings with an h that is not heard; before every other h nothing is drawn together. */
  private static final Set<String> SILENT =
      Set.of("hab", "heu", "hiv", "hom", "hor", "hui", "hum", "hyd");

  private Joints() {}

  /** Adds what is shown to a sentence that ends before it. */
  static void join(Language language, StringBuilder sentence, String shown) {
    if (language != Language.FR || !WORD.matcher(shown).matches()) {
      sentence.append(shown);
    } else if (shown.startsWith("le ") && drawn(sentence, "du ", "au ")) {
      sentence.append(shown, 3, shown.length());
    } else if (shown.startsWith("les ") && drawn(sentence, "des ", "aux ")) {
      sentence.append(shown, 4, shown.length());
    } else {
      if (opensWithVowel(shown) && !put(sentence, "de ", "d’")) {
        put(sentence, "que ", "qu’");
      }
      sentence.append(shown);
    }
  }

  private static boolean drawn(StringBuilder sentence, String of, String to) {
    return put(sentence, "de ", of) || put(sentence, "à ", to);
  }

  private static boolean opensWithVowel(String shown) {
    return VOWELS.indexOf(shown.charAt(0)) >= 0 || SILENT.contains(shown.substring(0, 3));
  }

  /** Puts a drawn word in the place of the last one; false where another word stands there. */
  private static boolean put(StringBuilder sentence, String last, String drawn) {
    int at = sentence.length() - last.length();
    boolean itself = at == 0 || (at > 0 && !Character.isLetter(sentence.charAt(at - 1)));
    if (!itself || !sentence.substring(at).equalsIgnoreCase(last)) {
      return false;
    }
    boolean capital = Character.isUpperCase(sentence.charAt(at));
    sentence.replace(at, sentence.length(), capital ? Words.capitalised(drawn) : drawn);
    return true;
  }
}
