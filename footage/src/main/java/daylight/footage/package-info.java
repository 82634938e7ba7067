/**
 * Readings from video. The only room that may know a codec, and of it only {@code codec} does; here
 * are the plain values that go in and out.
 *
 * <p>In: recordings of one pass, as files. Out: what there is to know of a recording ({@link
 * daylight.footage.Recording}), when each of its frames appears ({@link
 * daylight.footage.FrameTimes}), frames as pictures ({@link daylight.footage.Frame}, {@link
 * daylight.footage.Raster}), copies a browser can play or to give away, copies with chapters
 * ({@link daylight.footage.Chapter}), photographs. Units: seconds from the first frame; frames
 * counted from 0; pixels. Refuses: what cannot be decoded, with the reason ({@link
 * daylight.footage.FootageTrouble}); it is a doubt and never stops a book from being answered. The
 * original is never altered.
 *
 * <p>Start at {@code daylight.footage.codec.Footage} and {@code daylight.footage.codec.Film}.
 *
 * <p>Sources: none; formats are those of the libraries used.
 */
@NullMarked
package daylight.footage;

import org.jspecify.annotations.NullMarked;
