package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.counter.Counter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The passes of a book that walk on one tree, by visit and pass. */
final class Walks {
  private final Map<String, Walk> walks = new LinkedHashMap<>();

  Walks(FieldBook book, Layout layout, Priors priors) {
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = Walk.of(layout, Counter.of(visit, pass, priors), visit.label(), pass);
        if (walk != null) {
          walks.put(visit.label() + "/" + pass.label(), walk);
        }
      }
    }
  }

  /** The walk of a pass; null when it is not on this tree. */
  @Nullable Walk find(String visit, String pass) {
    return walks.get(visit + "/" + pass);
  }

  Iterable<Walk> all() {
    return walks.values();
  }
}
