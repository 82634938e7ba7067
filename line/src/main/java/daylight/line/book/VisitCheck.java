package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Visits follow each other; their kit, tests, works and papers name what is known. */
final class VisitCheck {
  /** A transmitter sits within a hose of the lens: common practice, no source. */
  private static final double SONDE_FAR = 3;

  private final FaultList faults;
  private final Names names;
  private final TestCheck tests;

  VisitCheck(FaultList faults, Names names, Surroundings around) {
    this.faults = faults;
    this.names = names;
    this.tests = new TestCheck(faults, names, around);
  }

  void checkOrder(List<Visit> visits) {
    LocalDate last = null;
    for (Visit visit : visits) {
      LocalDate date = visit.date();
      if (date != null && last != null && date.isBefore(last)) {
        Argument day = new Argument.Day(date);
        faults.add(BookFault.VISITS_OUT_OF_ORDER, visit, "date", day, new Argument.Day(last));
      }
      last = date == null ? last : date;
    }
  }

  void check(Visit visit) {
    Reading behind = visit.kit().sondeBehindLens();
    if (behind != null && StrictMath.abs(behind.value()) > SONDE_FAR) {
      Argument distance = new Argument.Length(behind.value());
      faults.add(BookFault.SONDE_FAR, visit, "kit.sonde-behind-lens", distance);
    }
    complaint(visit);
    visit.tests().forEach(tests::check);
    visit.works().forEach(this::work);
    Set<String> passes = Names.labels(visit.passes());
    for (Papers.Media media : visit.papers().media()) {
      faults.known(BookFault.UNKNOWN_PASS, media, "pass", media.pass(), passes);
      for (int i = 0; i < media.pins().size(); i++) {
        String point = media.pins().get(i).point();
        faults.known(BookFault.UNKNOWN_POINT, media, "pins[" + i + "].of", point, names.points());
      }
    }
    for (Papers.Consent consent : visit.papers().consents()) {
      faults.known(
          BookFault.UNKNOWN_MEDIA, consent, "signature", consent.signature(), names.media());
    }
    visit.papers().tickets().forEach(ticket -> ticket(ticket, visit));
  }

  private void complaint(Visit visit) {
    Reported complaint = visit.complaint();
    if (complaint != null) {
      faults.known(
          BookFault.UNKNOWN_SPOT, visit, "complaint.at", complaint.at(), names.complainedOf());
    }
  }

  private void work(Work work) {
    switch (work) {
      case Work.Cleaning cleaning -> {
        for (int i = 0; i < cleaning.reaches().size(); i++) {
          reach(work, "reaches[" + i + "]", cleaning.reaches().get(i));
        }
      }
      case Work.Repair repair -> {
        reach(work, "reach", repair.reach());
        faults.notNegative(work, "from", repair.from());
        if (repair.from() != null && repair.to() != null) {
          faults.rising(work, "to", repair.from(), repair.to());
        }
      }
    }
  }

  private void reach(Work work, String field, String label) {
    faults.known(BookFault.UNKNOWN_REACH, work, field, label, names.reaches());
  }

  private void ticket(Papers.Ticket ticket, Visit visit) {
    LocalDate expires = ticket.expires();
    LocalDate date = visit.date();
    if (expires != null && date != null && expires.isBefore(date)) {
      Argument lastDay = new Argument.Day(expires);
      faults.add(BookFault.TICKET_EXPIRED, ticket, "expires", lastDay, new Argument.Day(date));
    }
  }
}
