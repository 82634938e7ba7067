/**
 * Photographs: pictures somebody took beside the recording.
 *
 * <p>In: a JPEG or PNG file. Out: its picture, upright, and when its camera says it was taken.
 * Refuses what is no such picture, as {@link daylight.footage.FootageTrouble} says. A photograph's
 * place on earth is never read, and nothing that is made of the picture holds it. Start with {@link
 * daylight.footage.photo.Photo}.
 *
 * <p>Sources: CIPA DC-008 (Exif) for the turn of a picture and the time that has no zone, read by a
 * library.
 */
@NullMarked
package daylight.footage.photo;

import org.jspecify.annotations.NullMarked;
