/** Tests of the room {@code report.paper}. */
@NullMarked
package daylight.report.paper;

import org.jspecify.annotations.NullMarked;
