/**
 * Opening, reading and writing video; alone knows the codec library.
 *
 * <p>In: files and pictures. Out: files and pictures, and figures about them. Start at {@link
 * daylight.footage.codec.Film} to write. Units: seconds from the first frame; frames counted from
 * 0; pixels from the top left. Refuses: sizes and rates that a codec does not take. A film that was
 * not finished leaves no file.
 *
 * <p>Sources: the formats are those of the libraries used.
 */
@NullMarked
package daylight.footage.codec;

import org.jspecify.annotations.NullMarked;
