/** The whole hand-over, and the invented property that the tests of this module draw. */
@NullMarked
package daylight.report;

import org.jspecify.annotations.NullMarked;
