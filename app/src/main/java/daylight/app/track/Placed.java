package daylight.app.track;

import daylight.app.Trouble;
import daylight.archive.ReadBook;
import daylight.line.book.Id;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.counter.ByClock;
import daylight.line.counter.Filmed;
import daylight.line.counter.Fitted;
import daylight.line.counter.Track;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What the recordings of each pass tell together: locates by the clock, and what is not shown. */
final class Placed {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final ReadBook read;
  private final ZoneId zone;
  private final Function<String, @Nullable Instant> clocks;
  private final List<Fitted.OfPass> tracks;
  private final SortedMap<Id, Track.Between> located;
  private final List<Complaint> complaints;

  /**
   * @param zone of the site, in which times are told
   * @param clocks what the recorder's clock said at a recording, by its label; null for nothing
   * @param located gets where the camera was at locates that have a time only
   * @param complaints get what is to be said
   */
  Placed(
      ReadBook read,
      ZoneId zone,
      Function<String, @Nullable Instant> clocks,
      List<Fitted.OfPass> tracks,
      SortedMap<Id, Track.Between> located,
      List<Complaint> complaints) {
    this.read = read;
    this.zone = zone;
    this.clocks = clocks;
    this.tracks = tracks;
    this.located = located;
    this.complaints = complaints;
  }

  void take(Visit visit) {
    for (Pass pass : visit.passes()) {
      List<Fitted.OfPass> recordings =
          tracks.stream().filter(one -> one.pass().equals(pass.label())).toList();
      byClock(visit, pass, recordings);
      // Typed readings are too far apart to tell what is not shown between them.
      List<Fitted.OfPass> seen = recordings.stream().filter(one -> one.step() > 0).toList();
      if (seen.size() == recordings.size()) {
        filmed(pass, seen);
      }
    }
  }

  private void filmed(Pass pass, List<Fitted.OfPass> recordings) {
    Filmed filmed = Filmed.of(pass, recordings);
    for (Filmed.Break one : filmed.breaks()) {
      complain(
          Trouble.RECORDINGS_APART,
          pass.id(),
          "",
          new Argument.Label(one.first()),
          new Argument.Label(one.next()),
          new Argument.Length(one.before()),
          new Argument.Length(one.after()));
    }
    for (Filmed.Missing one : filmed.missing()) {
      complain(
          Trouble.SIGHT_NOT_FILMED,
          pass.id(),
          "sight",
          new Argument.Label(pass.label()),
          new Argument.Length(one.from()),
          new Argument.Length(one.to()));
    }
  }

  private void byClock(Visit visit, Pass pass, List<Fitted.OfPass> recordings) {
    List<Locate> own =
        visit.locates().stream()
            .filter(
                locate ->
                    locate.pass() == null
                        ? visit.passes().size() == 1
                        : locate.pass().equals(pass.label()))
            .toList();
    List<Locate> timed =
        own.stream().filter(one -> one.cable() == null && one.time() != null).toList();
    if (timed.isEmpty() || recordings.isEmpty()) {
      return;
    }
    List<ByClock.Began> began = new ArrayList<>();
    for (int i = 0; i < recordings.size(); i++) {
      Fitted.OfPass recording = recordings.get(i);
      Instant clock = clocks.apply(recording.track().media());
      Reading offset = visit.kit().clockOffset();
      Instant told =
          clock == null || offset == null
              ? null
              : clock.plusMillis(Math.round(1000 * offset.value()));
      Optional<ByClock.Began> one = ByClock.began(pass, own, recording, i == 0, told);
      one.ifPresent(began::add);
      one.ifPresent(found -> tell(pass, found, clock));
    }
    timed.forEach(locate -> tell(ByClock.place(locate, recordings, began)));
  }

  private void tell(Pass pass, ByClock.Began began, @Nullable Instant clock) {
    complain(
        Trouble.RECORDING_BEGAN,
        pass.id(),
        "",
        new Argument.Label(began.media()),
        new Argument.Text(TIME.format(began.middle().atZone(zone))),
        new Argument.Quantity(Dimension.DURATION, began.giveOrTake()),
        new Argument.Count(began.witnesses()),
        new Argument.Count(began.of()));
    if (clock != null) {
      double slow = Duration.between(clock, began.middle()).toMillis() / 1000.0;
      complain(
          slow < 0 ? Trouble.RECORDER_FAST : Trouble.RECORDER_SLOW,
          pass.id(),
          "",
          new Argument.Label(began.media()),
          new Argument.Quantity(Dimension.DURATION, Math.abs(slow)),
          new Argument.Quantity(Dimension.DURATION, began.giveOrTake()));
    }
  }

  private void tell(ByClock.Outcome outcome) {
    Id locate = outcome.locate().id();
    Argument label = new Argument.Label(locate.label());
    switch (outcome) {
      case ByClock.Outcome.At(Locate _, Track.Between counter) -> {
        located.put(locate, counter);
        complain(
            Trouble.LOCATE_BY_CLOCK,
            locate,
            "time",
            label,
            new Argument.UncertainLength(new Measured(counter.value(), counter.sd())));
      }
      case ByClock.Outcome.Several(Locate _, List<Double> counters) ->
          complain(
              Trouble.LOCATE_SEVERAL,
              locate,
              "time",
              label,
              new Argument.Either(counters.stream().<Argument>map(Argument.Length::new).toList()));
      case ByClock.Outcome.NoRest _ -> complain(Trouble.LOCATE_NO_REST, locate, "time", label);
      case ByClock.Outcome.NoClock _ -> complain(Trouble.LOCATE_NO_CLOCK, locate, "time", label);
    }
  }

  private void complain(Trouble code, Id entry, String field, Argument... arguments) {
    complaints.add(new Complaint(code, read.place(entry, field), List.of(arguments)));
  }
}
