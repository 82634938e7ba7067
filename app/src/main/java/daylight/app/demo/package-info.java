/**
 * The footage of properties that were made up.
 *
 * <p>In: the field book of an invented property and the folder it lies in. Out: a video file for
 * every footage the book names and that is not there yet, painted from the book, the same bytes
 * every time. Start with {@link daylight.app.demo.DemoFilms}. Refuses: books of real properties,
 * since footage of those is recorded and never made; names of files that lead out of the folder or
 * end on nothing that {@link daylight.app.demo.DemoCamera} knows. The original of a file that is
 * there is never touched.
 *
 * <p>Sources: none; which camera shows its counter how is invented too.
 */
@NullMarked
package daylight.app.demo;

import org.jspecify.annotations.NullMarked;
