package daylight.line.counter;

import java.util.List;
import java.util.Optional;

/** The tracks of a book's footage, as far as there are any. */
public record Tracks(List<Track> tracks) {
  /** No footage was read. */
  public static final Tracks NONE = new Tracks(List.of());

  public Tracks {
    tracks = List.copyOf(tracks);
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
