/** Placeholder. */
@NullMarked
package daylight.report;

import org.jspecify.annotations.NullMarked;
