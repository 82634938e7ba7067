package daylight.line.cause;

import daylight.line.book.Reported;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * By which words owners of one language name each kind of complaint: data. A phrase is words one
 * after another; a word that ends in {@code *} stands for all that begin so.
 *
 * @param language its code
 * @param phrases by kind
 * @param denying words that turn what follows them within three words into its opposite
 */
public record WordList(
    String language, SortedMap<Reported.Kind, List<String>> phrases, List<String> denying) {
  private static final Pattern WORD = Pattern.compile("\\p{L}+(?:['’]\\p{L}+)*");

  /** How many words before a phrase a denying word still reaches it. */
  private static final int REACH = 3;

  public WordList {
    SortedMap<Reported.Kind, List<String>> copy = new TreeMap<>();
    phrases.forEach((kind, list) -> copy.put(kind, List.copyOf(list)));
    phrases = Collections.unmodifiableSortedMap(copy);
    denying = List.copyOf(denying);
  }

  /**
   * A kind that was recognised.
   *
   * @param by the words it was recognised by, as they were written
   */
  public record Recognised(Reported.Kind kind, String by) {}

  /** The kinds that a text names, in the order of the kinds. */
  public List<Recognised> in(String text) {
    List<MatchResult> words = WORD.matcher(text).results().toList();
    List<Recognised> found = new ArrayList<>();
    phrases.forEach(
        (kind, list) ->
            list.stream()
                .flatMap(phrase -> first(words, phrase, text).stream())
                .findFirst()
                .ifPresent(by -> found.add(new Recognised(kind, by))));
    return found;
  }

  private Optional<String> first(List<MatchResult> words, String phrase, String text) {
    String[] wanted = phrase.split(" ", -1);
    for (int at = 0; at + wanted.length <= words.size(); at++) {
      boolean all = true;
      for (int i = 0; all && i < wanted.length; i++) {
        all = is(words.get(at + i), wanted[i]);
      }
      if (all && !denied(words, at)) {
        MatchResult last = words.get(at + wanted.length - 1);
        return Optional.of(text.substring(words.get(at).start(), last.end()));
      }
    }
    return Optional.empty();
  }

  private boolean denied(List<MatchResult> words, int at) {
    return words.subList(Math.max(0, at - REACH), at).stream()
        .anyMatch(word -> denying.contains(plain(word)));
  }

  private static boolean is(MatchResult word, String wanted) {
    String plain = plain(word);
    return wanted.endsWith("*")
        ? plain.startsWith(wanted.substring(0, wanted.length() - 1))
        : plain.equals(wanted);
  }

  private static String plain(MatchResult word) {
    return word.group().toLowerCase(Locale.ROOT).replace('’', '\'');
  }
}
