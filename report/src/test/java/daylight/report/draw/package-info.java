/** Tests of the room {@code report.draw}. */
@NullMarked
package daylight.report.draw;

import org.jspecify.annotations.NullMarked;
