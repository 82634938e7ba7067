/** Placeholder. */
@NullMarked
package daylight.archive;

import org.jspecify.annotations.NullMarked;
