package daylight.app.web;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which recordings browsers play as they are: those that today's browsers share. From memory, no
 * standard says so; a browser that cannot play one after all says it on the page.
 */
final class Playable {
  private static final Map<String, Set<String>> CODECS =
      Map.of(
          "mp4", Set.of("h264", "av1", "vp9"),
          "m4v", Set.of("h264", "av1", "vp9"),
          "webm", Set.of("vp8", "vp9", "av1"));

  private Playable() {}

  /**
   * Whether a file is played without a copy made for browsers.
   *
   * @param codec what its pictures are written in; null where nobody read that
   */
  static boolean asItIs(String file, @Nullable String codec) {
    Set<String> played = CODECS.get(Types.ending(file));
    return played != null && (codec == null || played.contains(plain(codec)));
  }

  /** {@code H.264} and {@code h264} are one. */
  private static String plain(String codec) {
    return codec.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }
}
