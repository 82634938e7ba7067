package daylight.report.page;

import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What the words of the trade mean that stand on a page. */
final class Meanings {
  private static final List<String> TERMS =
      List.of(
          "bore",
          "class",
          "cleanout",
          "dye",
          "fall",
          "inside_bottom",
          "joint",
          "level_tape",
          "locate",
          "push");

  private final Words words;

  Meanings(Words words) {
    this.words = words;
  }

  /** The meanings of those that stand in a text; nothing where none does. */
  List<Tag> in(String text) {
    String page = text.toLowerCase(Locale.ROOT);
    List<String> said =
        TERMS.stream()
            .filter(term -> stands(words.word("meaning." + term + ".word"), page))
            .map(
                term ->
                    words.named(
                        Words.capitalised(words.word("meaning." + term + ".word")),
                        words.word("meaning." + term)))
            .toList();
    return said.isEmpty()
        ? List.of()
        : List.of(
            Tag.of("p")
                .with("class", "meanings")
                .add(Tag.of("b", words.named(words.word("report.meanings"), "").strip()))
                .text(" " + words.beside(said) + "."));
  }

  private static boolean stands(String word, String page) {
    String lower = Pattern.quote(word.toLowerCase(Locale.ROOT));
    return Pattern.compile("(?<!\\p{L})" + lower + "s?(?!\\p{L})").matcher(page).find();
  }
}
