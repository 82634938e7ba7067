@NullMarked
package daylight.report.view;

import org.jspecify.annotations.NullMarked;
