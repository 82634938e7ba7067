/**
 * The shells: command line and workspace, and the one class that wires the rooms by saying new.
 *
 * <p>In: words of the command line, requests of the browser, files. Out: files, pages, exit codes.
 * Units: as people write them, handed on to the rooms that read them. Refuses: wrong use, naming
 * what was found and what was expected. Computes nothing: what the command line cannot do, the
 * workspace may not do either. Start at {@code daylight.app.cli.Main}.
 */
@NullMarked
package daylight.app;

import org.jspecify.annotations.NullMarked;
