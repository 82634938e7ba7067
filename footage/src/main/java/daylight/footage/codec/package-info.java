/**
 * Opening, reading and writing video; alone knows the codec library.
 *
 * <p>In: files and pictures. Out: files and pictures, and figures about them. Start at {@link
 * daylight.footage.codec.Footage} to read and at {@link daylight.footage.codec.Film} to write; both
 * hold memory outside the heap and are to be closed. Units: seconds from the first frame; frames
 * counted from 0; pixels from the top left.
 *
 * <p>How a frame is found again exactly: every file is read once when it is opened. Where the
 * container tells the time of each frame ({@code ToldIndex}) the packets are listed without
 * decoding one, and a frame is known by its time. Everywhere else ({@code CountedIndex}) the frames
 * are counted by decoding once, and a frame is known by counting on from a key; a key is known
 * again by the times and the place of its packet, or decoding starts at the beginning. A time alone
 * is never believed to lead to a frame.
 *
 * <p>Refuses: what is no recording, holds no pictures or none that can be decoded, as {@link
 * daylight.footage.FootageTrouble} says; sizes and rates that a codec does not take. A film that
 * was not finished leaves no file. Only files are opened, never an address that a file names; a
 * file may neither hold up its reader nor take what memory there is.
 *
 * <p>Sources: the formats are those of the library used.
 */
@NullMarked
package daylight.footage.codec;

import org.jspecify.annotations.NullMarked;
