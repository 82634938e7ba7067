package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The faults found so far, and the questions that many checks ask. */
final class FaultList {
  private final List<Fault> faults = new ArrayList<>();

  List<Fault> all() {
    return List.copyOf(faults);
  }

  void add(BookFault code, Entry entry, String field, Argument... arguments) {
    faults.add(new Fault(code, entry.id(), field, List.of(arguments)));
  }

  /** Asks that a label be known; null asks nothing. */
  void known(BookFault code, Entry entry, String field, @Nullable String label, Set<String> known) {
    if (label != null && !known.contains(label)) {
      List<String> near = Nearest.of(label, known).stream().toList();
      add(code, entry, field, new Argument.Label(label), new Argument.Choices(near));
    }
  }

  /** Asks that a length be not negative; null asks nothing. */
  void notNegative(Entry entry, String field, @Nullable Reading length) {
    if (length != null && length.value() < 0) {
      add(BookFault.NEGATIVE, entry, field, new Argument.Length(length.value()));
    }
  }

  /** Asks that a length be above zero; null asks nothing. */
  void positive(Entry entry, String field, @Nullable Reading length) {
    if (length != null && !(length.value() > 0)) {
      add(BookFault.NOT_POSITIVE, entry, field, new Argument.Length(length.value()));
    }
  }

  /** Asks that a stretch not end before it begins. */
  void rising(Entry entry, String field, Reading from, Reading to) {
    if (from.value() > to.value()) {
      add(
          BookFault.FROM_AFTER_TO,
          entry,
          field,
          new Argument.Length(from.value()),
          new Argument.Length(to.value()));
    }
  }
}
