package daylight.app.field;

import daylight.report.markup.Tag;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was seen in the pipe, by visit. */
final class Earlier {
  private Earlier() {}

  /** The findings of a visit: those of its passes, and those that stand in the visit itself. */
  static List<BookNow.Row> findings(BookNow book, BookNow.Row visit) {
    Set<UUID> passes =
        book.in(visit.entry(), "passes").map(BookNow.Row::entry).collect(Collectors.toSet());
    return book.in("findings")
        .filter(
            row ->
                row.parent() != null
                    && (row.parent().equals(visit.entry()) || passes.contains(row.parent())))
        .toList();
  }

  /** How often each kind was seen in all visits but one. */
  static Map<String, Long> kinds(BookNow book, BookNow.Row but) {
    return earlier(book, but)
        .flatMap(visit -> findings(book, visit).stream())
        .flatMap(row -> row.text("kind").stream())
        .collect(Collectors.groupingBy(kind -> kind, Collectors.counting()));
  }

  static Stream<BookNow.Row> earlier(BookNow book, BookNow.Row but) {
    return book.visits().stream().filter(visit -> !visit.entry().equals(but.entry()));
  }

  /** Orders to stop, for what anybody ever noted in the book; they stand above everything else. */
  static List<Tag> stops(BookNow book, Phrases phrases) {
    return book.in("findings")
        .flatMap(row -> row.text("kind").stream())
        .filter(Earlier::isDeadly)
        .distinct()
        .sorted()
        .map(kind -> Parts.paragraph("stop", phrases.say("before.stop", phrases.kind(kind))))
        .toList();
  }

  private static boolean isDeadly(String kind) {
    return PushKeys.stop().stream().anyMatch(one -> one.id().equals(kind));
  }
}
