/**
 * The tracks of a book: which counter reading was on the screen when.
 *
 * <p>In: a book that was read, the folder its recordings lie in, and what was read of them before.
 * Out: for each pass and recording a track, and what is to be said of how it came about. Start at
 * {@link daylight.app.track.BookTracks}. Units: seconds from the first frame, metres of counter.
 *
 * <p>The counter on the screen is the evidence; what a person typed beside a recording counts where
 * nothing could be read, and is compared everywhere else. What was read is kept in a cache that may
 * be thrown away at any time ({@link daylight.app.track.CounterCache}): its key is the digest of
 * the recording, that of the reader itself, and where the counter was told to stand. The commands
 * about one recording ask the same cache. Refuses nothing: a recording that cannot be read leaves
 * what was typed.
 *
 * <p>Sources: none.
 */
@NullMarked
package daylight.app.track;

import org.jspecify.annotations.NullMarked;
