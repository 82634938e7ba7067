/**
 * Footage that was made up, for properties that were made up: what a small push camera would have
 * seen in the buried pipe that a field book describes, with the counter burned into the picture.
 *
 * <p>In: a field book, one of its passes and the label of the footage; a {@link
 * daylight.footage.scene.CameraLook}. Out: pictures, frame by frame, and for each its {@link
 * daylight.footage.scene.FrameTruth}. Start with {@link daylight.footage.scene.Script#of} and
 * {@link daylight.footage.scene.Scene#paint}.
 *
 * <p>Units: metres and seconds; clock positions in radians clockwise from twelve as the head looks.
 * Two kinds of distance, both metres: the <em>reading</em> of the counter, which may jump, and the
 * way <em>in</em>, which is the reading with its jumps taken out and is where things are. A finding
 * is noted while it stands in full view, so it is painted {@link
 * daylight.footage.scene.Script#AHEAD} radii ahead of the lens at its reading.
 *
 * <p>The same script, look and frame give the same pixels on every platform, in whatever order the
 * frames are asked for: no clock, no fonts of the machine, chance only as a function of place.
 * Refuses: footage whose book has no anchors, since nothing else says how the camera moved. What
 * the catalogue knows and the painter does not, is left unpainted.
 *
 * <p>Sources: none. How walls, roots and water look is common practice, no source.
 */
@NullMarked
package daylight.footage.scene;

import org.jspecify.annotations.NullMarked;
