/**
 * The command line.
 *
 * <p>In: the words typed after {@code ./daylight}. Out: text or JSON on standard output, progress
 * and errors on standard error, and an exit code. Units: whatever the field book or the option
 * says; SI inside. Refuses: words it does not know, with exit code 2 and the help of the command
 * concerned. Computes nothing itself: it reads, calls the rooms, and writes. Start at {@link
 * daylight.app.cli.Main}.
 */
@NullMarked
package daylight.app.cli;

import org.jspecify.annotations.NullMarked;
