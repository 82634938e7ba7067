@NullMarked
package daylight.report.captions;

import org.jspecify.annotations.NullMarked;
