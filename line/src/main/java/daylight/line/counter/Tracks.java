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

  /** The track of the media of that label. */
  public Optional<Track> find(String media) {
    return tracks.stream().filter(track -> track.media().equals(media)).findFirst();
  }
}
