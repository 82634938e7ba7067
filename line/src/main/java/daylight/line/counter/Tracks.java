package daylight.line.counter;

import daylight.line.book.Id;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The tracks of a book's footage, as far as there are any.
 *
 * @param located where the camera was at locates that have a time only, by their identity: the
 *     counter reading then, metres
 */
public record Tracks(List<Track> tracks, SortedMap<Id, Track.Between> located) {
  /** No footage was read. */
  public static final Tracks NONE = new Tracks(List.of());

  public Tracks {
    tracks = List.copyOf(tracks);
    located = Collections.unmodifiableSortedMap(new TreeMap<>(located));
  }

  /** Tracks by which no locate was placed. */
  public Tracks(List<Track> tracks) {
    this(tracks, Collections.emptySortedMap());
  }

  /**
   * What the counter in the media of that label read at a moment, seconds from its first frame;
   * empty where no track of it knows. One recording may show several pushes, each with its track.
   */
  public Optional<Track.Between> counterAt(String media, double seconds) {
    return tracks.stream()
        .filter(track -> track.media().equals(media))
        .flatMap(track -> track.counterAt(seconds).stream())
        .findFirst();
  }
}
