/** Placeholder. */
@NullMarked
package daylight.footage;

import org.jspecify.annotations.NullMarked;
