package daylight.app.track;

import daylight.archive.MediaFiles;
import daylight.line.counter.Fitted;
import daylight.line.counter.Track;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The tracks by which a line was estimated, as tables (CSV): in each row a moment in seconds from
 * the first frame, the counter in metres, and how that is known. Where it is not known the second
 * cell is empty.
 */
public final class TrackFiles {
  private static final String HEAD = "seconds,counter_m,state\n";

  private TrackFiles() {}

  /** The tables by name, such as {@code M1-P1.csv} of the recording M1 and the pass P1. */
  public static SortedMap<String, byte[]> of(List<Fitted.OfPass> tracks) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    // Some systems take names for the same that differ in capitals.
    Set<String> taken = new HashSet<>();
    for (Fitted.OfPass one : tracks) {
      String name = MediaFiles.plain(one.track().media()) + "-" + MediaFiles.plain(one.pass());
      String free = name;
      for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
        free = name + "-" + i;
      }
      files.put(free + ".csv", table(one.track()).getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private static String table(Track track) {
    StringBuilder table = new StringBuilder(HEAD);
    for (Track.Sample one : track.samples()) {
      boolean known = one.state() != Track.State.UNKNOWN;
      table
          .append(one.seconds())
          .append(',')
          .append(known ? Double.toString(one.counter()) : "")
          .append(',')
          .append(one.state().name().toLowerCase(Locale.ROOT))
          .append('\n');
    }
    return table.toString();
  }
}
