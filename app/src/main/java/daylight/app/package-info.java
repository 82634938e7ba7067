/** Placeholder. */
@NullMarked
package daylight.app;

import org.jspecify.annotations.NullMarked;
