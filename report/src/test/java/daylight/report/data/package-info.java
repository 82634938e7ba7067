/** Tests of the room {@code report.data}. */
@NullMarked
package daylight.report.data;

import org.jspecify.annotations.NullMarked;
