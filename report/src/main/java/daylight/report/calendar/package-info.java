/**
 * The follow-ups as a calendar that any calendar program takes in.
 *
 * <p>In: what there is to come back to, in the reader's words. Out: one iCalendar file, an all-day
 * event for each of them that has a day. The same book gives the same bytes: the day on which an
 * event was made is that of the visit. Events keep their identity, so that a calendar that takes
 * the file in again has each of them once. Refuses: nothing; what has no day is no event. Start
 * with {@link daylight.report.calendar.CalendarFile}.
 *
 * <p>Sources: {@code rfc-5545}, {@code rfc-7986}.
 */
@NullMarked
package daylight.report.calendar;

import org.jspecify.annotations.NullMarked;
