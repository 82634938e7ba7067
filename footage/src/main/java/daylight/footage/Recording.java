package daylight.footage;

/**
 * What there is to know of a recording before looking at it.
 *
 * @param container in plain words, such as {@code MP4}
 * @param codec what its pictures are written in, in plain words, such as {@code H.264}
 * @param width of its picture as shown, pixels: square pixels, turned upright
 * @param height of its picture as shown, pixels
 * @param seconds from the first frame to the end of the last
 * @param rate frames per second, on the average
 * @param variable whether some frames are shown clearly longer or shorter than others
 * @param frames how many
 * @param sound whether it has sound, which may hold voices
 * @param interlaced whether its frames are made of two fields
 * @param browser whether a browser plays it as it is
 */
public record Recording(
    String container,
    String codec,
    int width,
    int height,
    double seconds,
    double rate,
    boolean variable,
    int frames,
    boolean sound,
    boolean interlaced,
    boolean browser) {}
