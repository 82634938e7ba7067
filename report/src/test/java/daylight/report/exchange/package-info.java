/** Tests of the files for maps and drawings, by programs that are not ours. */
@NullMarked
package daylight.report.exchange;

import org.jspecify.annotations.NullMarked;
