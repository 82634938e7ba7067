/** Tests of the room {@code report.words}. */
@NullMarked
package daylight.report.words;

import org.jspecify.annotations.NullMarked;
