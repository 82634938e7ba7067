package daylight.app.track;

import daylight.line.book.Id;
import daylight.line.counter.Fitted;
import daylight.line.counter.Track;
import daylight.line.counter.Tracks;
import daylight.line.measure.Complaint;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The tracks of a book.
 *
 * @param passes a track for each recording and pass of which anything is known
 * @param located where the camera was at locates that have a time only
 * @param counters what the counter of each recording showed, where it could be read
 * @param complaints what is to be said of how they came about
 */
public record Tracked(
    List<Fitted.OfPass> passes,
    SortedMap<Id, Track.Between> located,
    SortedMap<Id, FilmCounter> counters,
    List<Complaint> complaints) {
  public Tracked {
    passes = List.copyOf(passes);
    located = Collections.unmodifiableSortedMap(new TreeMap<>(located));
    counters = Collections.unmodifiableSortedMap(new TreeMap<>(counters));
    complaints = List.copyOf(complaints);
  }

  /** All of them, as the line is estimated from. */
  public Tracks tracks() {
    return new Tracks(passes.stream().map(Fitted.OfPass::track).toList(), located);
  }

  /** The track of a recording as far as it shows a pass. */
  public Optional<Track> of(String pass, String media) {
    return passes.stream()
        .filter(one -> one.pass().equals(pass) && one.track().media().equals(media))
        .map(Fitted.OfPass::track)
        .findFirst();
  }
}
