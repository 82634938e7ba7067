package daylight.report.shots;

import org.jspecify.annotations.Nullable;

/**
 * One recording of the judged visit that could be read.
 *
 * @param media its label in the book
 * @param file its name relative to the book
 * @param pass the label of the pass it shows; null for none
 * @param seconds how long it runs
 * @param width of its picture as shown, pixels
 * @param height of its picture as shown, pixels
 * @param codec what its pictures are written in, such as {@code H.264}
 * @param browser whether a browser plays it as it is
 */
public record Reel(
    String media,
    String file,
    @Nullable String pass,
    double seconds,
    int width,
    int height,
    String codec,
    boolean browser) {}
