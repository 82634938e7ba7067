/** Placeholder. */
@NullMarked
package daylight.bench;

import org.jspecify.annotations.NullMarked;
