/**
 * What is written beside a recording: its chapters and its captions, as texts with their times.
 *
 * <p>In: the track of a recording, or the moments at which it shows findings. Out: cues, and WebVTT
 * files of them; {@code footage} puts the same chapters into a video. Units: seconds from the first
 * frame; counter readings in metres. What the counter did not show is said not to be known, what
 * was bridged is said to be bridged. Refuses nothing. Start with {@link
 * daylight.report.captions.DistanceChapters} and {@link daylight.report.captions.WebVtt}.
 *
 * <p>Sources: W3C, WebVTT: The Web Video Text Tracks Format (W3CVTT).
 */
@NullMarked
package daylight.report.captions;

import org.jspecify.annotations.NullMarked;
