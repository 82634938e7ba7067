/**
 * Sealed bundles: everything that an answer rests on and everything that was handed over, in one
 * file that tells whether it is as it was when it was sealed.
 *
 * <p>Refuses: names that lead out of the bundle, contents that change while they are sealed, a
 * target that is there already. Knows nothing of what is sealed.
 */
@NullMarked
package daylight.archive.seal;

import org.jspecify.annotations.NullMarked;
