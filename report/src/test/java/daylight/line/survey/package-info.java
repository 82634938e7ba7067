/** Positions set down by hand. */
@NullMarked
package daylight.line.survey;

import org.jspecify.annotations.NullMarked;
