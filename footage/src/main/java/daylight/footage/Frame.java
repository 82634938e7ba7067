package daylight.footage;

/**
 * One frame of a recording, as shown: square pixels, turned upright.
 *
 * @param number counted from 0
 * @param seconds when it appears, from the first frame
 * @param raster its picture
 */
public record Frame(int number, double seconds, Raster raster) {}
