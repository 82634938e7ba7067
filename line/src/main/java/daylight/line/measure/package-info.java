/** Lengths. */
@NullMarked
package daylight.line.measure;

import org.jspecify.annotations.NullMarked;
