package daylight.app.field;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Gives short labels to new entries: a beginning and the next number that is free. */
final class Labels {
  private final Map<UUID, String> known = new HashMap<>();
  private final Set<String> taken;

  Labels(BookNow book) {
    book.rows().forEach(row -> row.text("label").ifPresent(label -> known.put(row.entry(), label)));
    taken = known.values().stream().collect(Collectors.toCollection(HashSet::new));
  }

  /** Keeps a label for whoever wrote it down. */
  void reserve(String label) {
    taken.add(label);
  }

  /** The label that an entry has, where it begins so; otherwise the next one, which is then its. */
  String of(UUID entry, String beginning) {
    String has = known.get(entry);
    if (has != null && has.startsWith(beginning)) {
      return has;
    }
    int last =
        taken.stream()
            .filter(label -> label.startsWith(beginning))
            .map(label -> label.substring(beginning.length()))
            .filter(number -> number.matches("\\d{1,6}"))
            .mapToInt(Integer::parseInt)
            .max()
            .orElse(0);
    String label = beginning + (last + 1);
    taken.add(label);
    known.put(entry, label);
    return label;
  }
}
