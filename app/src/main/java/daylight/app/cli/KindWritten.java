package daylight.app.cli;

import daylight.line.book.Catalogue;
import daylight.line.measure.Argument;
import daylight.line.measure.Nearest;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A kind of finding as it was typed: its id, or its words in any order and language. */
final class KindWritten {
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}]+");

  private KindWritten() {}

  /** What was typed; null, with a complaint, where it is no kind or may be several. */
  static Catalogue.@Nullable Kind of(Given given, Catalogue catalogue, String written) {
    Catalogue.Kind exact = catalogue.find(written.strip()).orElse(null);
    if (exact != null) {
      return exact;
    }
    Set<String> asked = parts(written);
    List<Catalogue.Kind> meant =
        catalogue.kinds().stream()
            .filter(
                kind ->
                    asked.equals(parts(kind.id()))
                        || Stream.of(Language.values())
                            .map(language -> Words.of(language, Shown.METRES))
                            .anyMatch(
                                words ->
                                    asked.equals(parts(words.kind(kind.id())))
                                        || asked.equals(parts(words.shortKind(kind.id())))))
            .toList();
    if (meant.size() == 1) {
      return meant.getFirst();
    }
    List<String> ids = catalogue.kinds().stream().map(Catalogue.Kind::id).toList();
    List<String> choices =
        meant.isEmpty()
            ? Nearest.of(written.strip(), ids).stream().toList()
            : meant.stream().map(Catalogue.Kind::id).toList();
    given.complain(
        "KIND", "figure.grade.kind-unknown", Given.text(written), new Argument.Choices(choices));
    return null;
  }

  private static Set<String> parts(String text) {
    return BETWEEN_WORDS
        .splitAsStream(text.toLowerCase(Locale.ROOT))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
