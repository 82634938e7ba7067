package daylight.report.calendar;

import daylight.line.answer.FollowUp;
import daylight.line.answer.FollowUps;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.words.FollowUpWords;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The door of the room: the follow-ups as an iCalendar file. */
public final class CalendarFile {
  /** How it is called among the results. */
  public static final String NAME = "follow-ups.ics";

  /** Nobody is told ahead of what is nearer than this, days. */
  private static final int FAR = 28;

  private final Subject subject;
  private final Words words;
  private final FollowUpWords told;
  private final List<FollowUp> all;
  private final ContentLines lines = new ContentLines();

  private CalendarFile(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.told = new FollowUpWords(words, subject.book(), subject.line(), subject.rules());
    this.all = FollowUps.of(subject.book(), subject.line(), subject.rules(), subject.answers());
  }

  /** The file; empty where nothing has a day, for a calendar holds at least one event (3.6). */
  public static Optional<byte[]> write(Subject subject) {
    CalendarFile file = new CalendarFile(subject);
    return file.hasDays() ? Optional.of(file.bytes()) : Optional.empty();
  }

  /** Whether anything has a day, so that there is a file. */
  public static boolean hasDays(Subject subject) {
    return new CalendarFile(subject).hasDays();
  }

  private boolean hasDays() {
    return all.stream().anyMatch(one -> one.due() instanceof FollowUp.Due.On);
  }

  private byte[] bytes() {
    String name = words.say("follow.calendar", text(subject.book().site().name()));
    lines.put("BEGIN", "VCALENDAR").put("VERSION", "2.0");
    lines.put("PRODID", "-//Daylight//follow-ups//EN").put("CALSCALE", "GREGORIAN");
    // The first by RFC 7986; most programs know the second, which is older and no standard.
    lines.text("NAME", name).text("X-WR-CALNAME", name);
    for (FollowUp one : all) {
      if (one.due() instanceof FollowUp.Due.On on) {
        event(one, on.day());
      }
    }
    return lines.put("END", "VCALENDAR").bytes();
  }

  private void event(FollowUp one, LocalDate day) {
    Site site = subject.book().site();
    String summary = words.named(site.name(), told.summary(one));
    lines.put("BEGIN", "VEVENT").put("UID", one.id().toString());
    lines.beginOf("DTSTAMP", made(day)).put("SEQUENCE", Integer.toString(visits()));
    lines.day("DTSTART", day).day("DTEND", day.plusDays(1));
    lines.text(
        "SUMMARY",
        site.invented() ? summary + " (" + words.word("follow.invented") + ")" : summary);
    lines.text("DESCRIPTION", String.join("\n", told.sentences(one, undated(one))));
    String address = site.address();
    lines.text("LOCATION", address == null ? site.name() : address);
    // It is something to remember, and nobody is busy for it.
    lines.put("TRANSP", "TRANSPARENT");
    alarm(one, summary, day);
    lines.put("END", "VEVENT");
  }

  /** A day ahead where a ticket has to be renewed, a week where there was time to forget. */
  private void alarm(FollowUp one, String summary, LocalDate day) {
    boolean ticket = one.what() instanceof FollowUp.What.Ticket;
    boolean consent = one.what() instanceof FollowUp.What.Consent;
    LocalDate visited = subject.visit().map(Visit::date).orElse(null);
    boolean far = visited != null && !day.isBefore(visited.plusDays(FAR));
    if (ticket || (far && !consent)) {
      lines.put("BEGIN", "VALARM").put("ACTION", "DISPLAY").text("DESCRIPTION", summary);
      lines.put("TRIGGER", ticket ? "-P1D" : "-P7D").put("END", "VALARM");
    }
  }

  /** What of the same line has no day: told with the line, or nobody would see it here. */
  private List<FollowUp> undated(FollowUp of) {
    return all.stream()
        .filter(one -> one.due() instanceof FollowUp.Due.Open)
        .filter(one -> one.line() != null && Objects.equals(one.line(), of.line()))
        .toList();
  }

  /** The day of the visit; where nobody noted it, the event's own. */
  private LocalDate made(LocalDate day) {
    return subject.visit().map(Visit::date).orElse(day);
  }

  /** A later visit tells more of the same event than an earlier one. */
  private int visits() {
    return subject.visit().map(subject.book().visits()::indexOf).orElse(0);
  }

  private static Argument text(String text) {
    return new Argument.Text(text);
  }
}
