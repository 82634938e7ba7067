package daylight.app;

import daylight.app.track.BookFiles;
import daylight.app.track.Tracked;
import daylight.archive.ReadBook;
import daylight.footage.FootageTrouble;
import daylight.footage.Frame;
import daylight.footage.Remark;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Jpeg;
import daylight.footage.codec.Opening;
import daylight.line.book.Finding;
import daylight.line.book.Papers.Media;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.report.shots.Picture;
import daylight.report.shots.Reel;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the recordings of a book lend to its answer: a picture of everything found while one ran. A
 * recording that cannot be looked at is complained of and left aside.
 */
final class Recordings {
  private final ReadBook read;
  private final BookFiles files;
  private final Visit visit;
  private final Tracked tracked;
  private final StillNames names;
  private final Progress progress;
  private final List<Complaint> complaints = new ArrayList<>();
  private final List<Reel> reels = new ArrayList<>();
  private final Map<String, Still> stills = new TreeMap<>();

  /**
   * @param files where those lie that it names
   * @param visit the one that is judged
   * @param tracked what is known of the counters of the book's recordings
   * @param names what its pictures are called
   */
  Recordings(
      ReadBook read,
      BookFiles files,
      Visit visit,
      Tracked tracked,
      StillNames names,
      Progress progress) {
    this.read = read;
    this.files = files;
    this.visit = visit;
    this.tracked = tracked;
    this.names = names;
    this.progress = progress;
  }

  /** What is wrong with the recordings, after {@link #shots}. */
  List<Complaint> complaints() {
    return complaints;
  }

  /** Opens every recording of the visit that is there and takes the pictures. */
  Shots shots() {
    for (Media media : visit.papers().media()) {
      Path file = file(media);
      if (media.kind() == Media.Kind.FOOTAGE && file != null) {
        look(media, file);
      }
    }
    List<Still> inOrder =
        visit.passes().stream()
            .flatMap(pass -> pass.findings().stream())
            .flatMap(finding -> Optional.ofNullable(stills.get(finding.label())).stream())
            .toList();
    return new Shots(reels, inOrder);
  }

  /** The file of a recording; null where it is not there, of which the reader has complained. */
  private @Nullable Path file(Media media) {
    return files.find(media);
  }

  private void look(Media media, Path file) {
    switch (Footage.open(file, progress.begin(Progress.Step.READING, media.file()))) {
      case Opening.Refused(Remark why) -> complain(why, media);
      case Opening.Stopped() -> {}
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          footage.notes().forEach(note -> complain(note, media));
          reels.add(reel(media, footage));
          take(media, footage);
        } catch (IOException e) {
          complain(
              Remark.of(
                  FootageTrouble.UNREADABLE, new Argument.Text(String.valueOf(e.getMessage()))),
              media);
        }
      }
    }
  }

  private void complain(Remark remark, Media media) {
    complaints.add(remark.at(read.place(media.id(), "file")));
  }

  private static Reel reel(Media media, Footage footage) {
    var recording = footage.recording();
    return new Reel(
        media.label(),
        media.file(),
        media.pass(),
        recording.seconds(),
        recording.width(),
        recording.height(),
        recording.codec(),
        recording.browser());
  }

  /**
   * A finding to be pictured.
   *
   * @param frame the number of the frame that shows it
   */
  private record Wanted(Finding finding, int frame) {}

  private void take(Media media, Footage footage) throws IOException {
    Map<Integer, List<Finding>> wanted =
        visit.passes().stream()
            .flatMap(pass -> pass.findings().stream())
            .flatMap(finding -> wanted(finding, media, footage).stream())
            .collect(
                Collectors.groupingBy(
                    Wanted::frame,
                    TreeMap::new,
                    Collectors.mapping(Wanted::finding, Collectors.toList())));
    footage.sweep(
        List.copyOf(wanted.keySet()),
        progress.begin(Progress.Step.PICTURES, media.file()),
        frame ->
            wanted
                .getOrDefault(frame.number(), List.of())
                .forEach(finding -> keep(media, finding, frame)));
  }

  private Optional<Wanted> wanted(Finding finding, Media media, Footage footage) {
    Double moment = moment(finding, media.label());
    if (moment == null) {
      return Optional.empty();
    }
    var frame = footage.times().shownAt(moment);
    if (frame.isEmpty()) {
      complaints.add(
          new Complaint(
              Trouble.MOMENT_BEYOND_FOOTAGE,
              read.place(finding.id(), ""),
              List.of(
                  new Argument.Label(finding.label()),
                  new Argument.Quantity(Dimension.DURATION, moment),
                  new Argument.Label(media.label()))));
      return Optional.empty();
    }
    return Optional.of(new Wanted(finding, frame.getAsInt()));
  }

  /** When a recording shows a finding, seconds; null where that is not known or it does not. */
  private @Nullable Double moment(Finding finding, String media) {
    Function<Double, Optional<Double>> byCounter =
        counter ->
            ofPass(finding, media)
                .flatMap(track -> track.momentOf(counter, finding.moving()))
                .map(Track.Between::value);
    return switch (finding.where()) {
      case Where.AtMoment(String own, double seconds) -> own.equals(media) ? seconds : null;
      case Where.AtCable(var cable) -> byCounter.apply(cable.value()).orElse(null);
      case Where.FromTo(var from, var to) -> byCounter.apply(from.value()).orElse(null);
    };
  }

  /** The track of a recording, where it was made on the push that saw the finding. */
  private Optional<Track> ofPass(Finding finding, String media) {
    return visit.passes().stream()
        .filter(pass -> pass.findings().contains(finding))
        .flatMap(pass -> tracked.of(pass.label(), media).stream())
        .findFirst();
  }

  private void keep(Media media, Finding finding, Frame frame) {
    if (stills.containsKey(finding.label())) {
      return;
    }
    try {
      Picture picture =
          new Picture(frame.raster().width(), frame.raster().height(), Jpeg.of(frame.raster()));
      stills.put(
          finding.label(),
          new Still(
              names.name(finding, ""), finding.label(), media.label(), frame.seconds(), picture));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
