package daylight.report.shots;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The recordings of the judged visit and the stills taken from them.
 *
 * @param reels in the order of the book
 * @param stills in the order of the findings along the line
 * @param photos given for findings, in the order of the findings
 */
public record Shots(List<Reel> reels, List<Still> stills, List<Photo> photos) {
  /** No footage, or none that could be read. */
  public static final Shots NONE = new Shots(List.of(), List.of());

  public Shots {
    reels = List.copyOf(reels);
    stills = List.copyOf(stills);
    photos = List.copyOf(photos);
    long names =
        Stream.concat(stills.stream().map(Still::file), photos.stream().map(Photo::file))
            .distinct()
            .count();
    if (names < stills.size() + photos.size()) {
      throw new IllegalArgumentException("two pictures of one file name");
    }
  }

  /** Without photographs. */
  public Shots(List<Reel> reels, List<Still> stills) {
    this(reels, stills, List.of());
  }

  /** The same with photographs. */
  public Shots with(List<Photo> taken) {
    return new Shots(reels, stills, taken);
  }

  /** How long the files of all pictures are, bytes. */
  public long length() {
    return Stream.concat(stills.stream().map(Still::picture), photos.stream().map(Photo::picture))
        .mapToLong(Picture::length)
        .sum();
  }

  /** The still of the finding of that label. */
  public Optional<Still> of(String finding) {
    return stills.stream().filter(still -> still.finding().equals(finding)).findFirst();
  }
}
