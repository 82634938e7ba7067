/**
 * Benchmarks beside their yardsticks.
 *
 * <p>In: the rooms as they are shipped, and cases of a stated size. Out: times and memory beside
 * those of something outside the project that does the same work. Units: seconds and bytes.
 * Refuses: a comparison in which the two sides did not produce the same result.
 */
@NullMarked
package daylight.bench;

import org.jspecify.annotations.NullMarked;
