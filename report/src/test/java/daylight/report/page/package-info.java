/** Tests of the room {@code report.page}. */
@NullMarked
package daylight.report.page;

import org.jspecify.annotations.NullMarked;
