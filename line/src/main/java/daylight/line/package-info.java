/** Placeholder. */
@NullMarked
package daylight.line;

import org.jspecify.annotations.NullMarked;
