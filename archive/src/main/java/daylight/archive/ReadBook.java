package daylight.archive;

import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Gravity;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What became of a file that should be a field book.
 *
 * @param book every row that could be read; null when the file is no book of a version known here
 * @param complaints everything that is wrong, by place
 * @param places where each field of each entry stands, by the entry's identity
 */
public record ReadBook(
    @Nullable FieldBook book,
    List<Complaint> complaints,
    Map<UUID, Map<String, FilePlace>> places) {
  public ReadBook {
    complaints = List.copyOf(complaints);
    places = Map.copyOf(places);
  }

  /** Where a field of an entry stands, for complaints that only turn up later. */
  public FilePlace place(Id entry, String field) {
    FilePlace place = places.getOrDefault(entry.uuid(), Map.of()).get(field);
    return place == null ? FilePlace.at(entry.label()) : place;
  }

  /** Whether nothing stands in the way of an answer. */
  public boolean sound() {
    return book != null && complaints.stream().noneMatch(c -> c.code().gravity() == Gravity.STOPS);
  }
}
