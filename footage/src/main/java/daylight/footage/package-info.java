/**
 * Readings from video. The only room that may know a codec.
 *
 * <p>In: video files of one pass, named by their digest, and the profile of the camera that burned
 * its counter into the picture. Out: tracks (time against cable out), stills at a distance, copies
 * a browser can play, chapters. Units: seconds from the first frame; metres of cable out, never
 * negative. Refuses: what cannot be decoded, with file and reason; a digit that cannot be read is
 * marked doubtful, never guessed. The original is never altered.
 *
 * <p>Sources: none; formats are those of the libraries used.
 */
@NullMarked
package daylight.footage;

import org.jspecify.annotations.NullMarked;
