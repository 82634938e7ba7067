package daylight.app;

import daylight.archive.MediaFiles;
import daylight.archive.ResultFolder;
import daylight.footage.Chapter;
import daylight.footage.FootageTrouble;
import daylight.footage.Make;
import daylight.footage.Remark;
import daylight.footage.Watch;
import daylight.footage.Writ;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.line.answer.Answers;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers.Media;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.counter.Track;
import daylight.line.measure.Argument;
import daylight.report.captions.Counted;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What is handed over of the recordings of the judged visit: of each a copy in MP4 with a chapter
 * for everything found, beside it chapters and captions as WebVTT, and a page of small pictures. A
 * copy begins where the camera enters the pipe, is silent unless chosen otherwise, and holds no
 * place, day or device. Pictures are taken as they are where MP4 can hold them and the copy can
 * begin near the entry; else they are written anew. The recordings are only read.
 *
 * <p>Left out, and told: what cannot be opened, and what nothing tells the entry of, for nobody
 * knows what may be seen on it before.
 */
public final class HandedFootage {
  private static final String FOLDER = "footage/";

  /** So much of the first of the pipe may be left out to keep the pictures as they are, seconds. */
  private static final double NEAR = 3;

  private final Job.Outcome.Answered answered;
  private final boolean sound;
  private final Progress progress;
  private final Words words;
  private final List<Told> told = new ArrayList<>();

  /**
   * @param sound whether the recordings' own sound goes along
   */
  public HandedFootage(Job.Outcome.Answered answered, boolean sound, Progress progress) {
    this.answered = answered;
    this.sound = sound;
    this.progress = progress;
    this.words = answered.handout().subject().words();
  }

  /** What became of one recording. */
  public sealed interface Told {
    /** The name of the recording in the book. */
    String recording();

    /**
     * It was copied.
     *
     * @param files of the results that are about it
     * @param from where in the recording the copy begins, seconds
     * @param anew why its pictures were written anew; null where they are as they were
     * @param unfit what its sound is written in, where that was wanted and MP4 cannot hold it
     */
    record Copied(
        String recording,
        List<String> files,
        double from,
        @Nullable Anew anew,
        @Nullable String unfit)
        implements Told {
      public Copied {
        files = List.copyOf(files);
      }
    }

    /** It was left out. */
    record LeftOut(String recording, Remark why) implements Told {}

    /** It was left out, for nothing tells where the camera enters the pipe. */
    record NoEntry(String recording) implements Told {}

    /** The file is not there. */
    record Missing(String recording) implements Told {}
  }

  /** Why pictures were written anew. */
  public sealed interface Anew {
    /** MP4 cannot hold what they are written in. */
    record NotForMp4(Remark why) implements Anew {}

    /** No place near the entry at which a copy can begin with the pictures as they are. */
    record NoCleanCut() implements Anew {}
  }

  /** What became of each recording, in the order of the book. */
  public List<Told> told() {
    return List.copyOf(told);
  }

  /** Writes all of it; false where nobody waits for it any longer. */
  public boolean fill(ResultFolder.Room room) throws IOException {
    FieldBook book = answered.handout().book();
    Answers answers = answered.handout().answers();
    for (Visit visit : book.visits()) {
      if (visit.label().equals(answers.visit())) {
        for (Media media : visit.papers().media()) {
          if (media.kind() == Media.Kind.FOOTAGE && !hand(visit, media, room)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean hand(Visit visit, Media media, ResultFolder.Room room) throws IOException {
    Path file = answered.named().find(media);
    if (file == null) {
      told.add(new Told.Missing(media.file()));
      return true;
    }
    return switch (Footage.open(file, progress.begin(Progress.Step.READING, media.file()))) {
      case Opening.Refused(Remark why) -> {
        told.add(new Told.LeftOut(media.file(), why));
        yield true;
      }
      case Opening.Stopped() -> false;
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          yield hand(visit, media, footage, room);
        }
      }
    };
  }

  private boolean hand(Visit visit, Media media, Footage footage, ResultFolder.Room room)
      throws IOException {
    Counted counted = counted(media, footage);
    OptionalInt entry = entry(visit, media, footage, counted);
    if (entry.isEmpty()) {
      told.add(new Told.NoEntry(media.file()));
      return true;
    }
    BookInFilm film = BookInFilm.of(answered.handout().book(), visit, media);
    FilmText text = FilmText.of(film, counted, footage.recording().seconds(), words);
    One one = new One(media, footage, film, counted, text, base(film, room), room);
    try {
      return one.write(entry.getAsInt());
    } catch (IOException e) {
      // The rest goes on; a disk that is full is met again by what is written after this.
      one.forget();
      Argument said = new Argument.Text(String.valueOf(e.getMessage()));
      told.add(new Told.LeftOut(media.file(), Remark.of(FootageTrouble.UNREADABLE, said)));
      return true;
    }
  }

  private @Nullable Counted counted(Media media, Footage footage) {
    var counter = answered.counters().get(media.id());
    return counter == null
        ? null
        : new Counted(
            counter.track(), counter.leaps(), counter.step(), footage.recording().seconds());
  }

  /**
   * The frame at which the camera enters: by the counter in the picture, else by what was typed of
   * when it showed nothing.
   */
  private static OptionalInt entry(
      Visit visit, Media media, Footage footage, @Nullable Counted counted) {
    if (counted != null) {
      return counted.passages().entry();
    }
    for (Pass pass : visit.passes()) {
      Optional<Track> typed = Track.ofAnchors(pass, media.label());
      OptionalInt zero =
          typed.stream()
              .flatMap(track -> track.samples().stream())
              .filter(sample -> sample.state() != Track.State.UNKNOWN && sample.counter() == 0)
              .findFirst()
              .map(sample -> footage.times().shownAt(sample.seconds()))
              .orElse(OptionalInt.empty());
      if (zero.isPresent()) {
        return zero;
      }
    }
    return OptionalInt.empty();
  }

  /** What the files of a recording are called, after the push and the recording. */
  private static String base(BookInFilm film, ResultFolder.Room room) {
    String pass = film.passes().isEmpty() ? "" : film.passes().getFirst().label() + "-";
    String plain = FOLDER + MediaFiles.plain(pass + film.media().label());
    String base = plain;
    for (int i = 2; isTaken(base, room); i++) {
      base = plain + "-" + i;
    }
    return base;
  }

  private static boolean isTaken(String base, ResultFolder.Room room) {
    return room.names().stream()
        .anyMatch(name -> name.regionMatches(true, 0, base + ".", 0, base.length() + 1));
  }

  /** One recording being handed over. */
  private final class One {
    private final Media media;
    private final Footage footage;
    private final BookInFilm film;
    private final @Nullable Counted counted;
    private final FilmText text;
    private final String base;
    private final ResultFolder.Room room;
    private final List<String> files = new ArrayList<>();

    One(
        Media media,
        Footage footage,
        BookInFilm film,
        @Nullable Counted counted,
        FilmText text,
        String base,
        ResultFolder.Room room) {
      this.media = media;
      this.footage = footage;
      this.film = film;
      this.counted = counted;
      this.text = text;
      this.base = base;
      this.room = room;
    }

    /** False where nobody waits for it any longer. */
    boolean write(int entry) throws IOException {
      Optional<String> unfit = sound ? footage.unfitSound(Make.VP9_MP4) : Optional.empty();
      boolean loud = sound && unfit.isEmpty();
      Path target = place(".mp4");
      OptionalInt cut = cut(entry);
      int first = cut.orElse(entry);
      Anew anew = new Anew.NoCleanCut();
      Writ writ = new Writ.Stopped();
      if (cut.isPresent()) {
        writ = footage.chaptered(target, first, loud, chapters(first), watch());
        anew = writ instanceof Writ.Refused(Remark why) ? new Anew.NotForMp4(why) : null;
      }
      if (anew != null) {
        first = entry;
        writ = anew(target, first, loud);
      }
      if (writ instanceof Writ.Refused(Remark why)) {
        forget();
        told.add(new Told.LeftOut(media.file(), why));
        return true;
      }
      if (writ instanceof Writ.Stopped || !beside(first)) {
        return false;
      }
      told.add(
          new Told.Copied(
              media.file(), files, footage.times().secondsOf(first), anew, unfit.orElse(null)));
      return true;
    }

    private Watch watch() {
      return progress.begin(Progress.Step.COPYING, media.file());
    }

    private Path place(String ending) throws IOException {
      files.add(base + ending);
      return room.place(base + ending);
    }

    /** A clean cut near the entry, with nothing found in what it leaves out. */
    private OptionalInt cut(int entry) {
      OptionalInt cut = footage.cleanCut(entry);
      double from = footage.times().secondsOf(entry);
      double to = footage.times().secondsOf(cut.orElse(entry));
      boolean found =
          film.findings(counted).seen().stream()
              .anyMatch(seen -> seen.seconds() >= from && seen.seconds() < to);
      return to - from > NEAR || found ? OptionalInt.empty() : cut;
    }

    private List<Chapter> chapters(int first) {
      return text.from(footage.times().secondsOf(first)).chapters().stream()
          .map(cue -> new Chapter(cue.from(), cue.to(), cue.text()))
          .toList();
    }

    /** Writes the pictures anew, then gives them their chapters. */
    private Writ anew(Path target, int first, boolean loud) throws IOException {
      Path bare = target.resolveSibling("." + target.getFileName() + ".bare");
      try {
        Writ writ = footage.copy(bare, Make.VP9_MP4, first, loud, watch());
        if (!(writ instanceof Writ.Written)) {
          return writ;
        }
        return switch (Footage.open(bare, progress.begin(Progress.Step.READING, media.file()))) {
          case Opening.Refused(Remark why) -> new Writ.Refused(why);
          case Opening.Stopped() -> new Writ.Stopped();
          case Opening.Opened(Footage made) -> {
            try (made) {
              yield made.chaptered(target, 0, loud, chapters(first), watch());
            }
          }
        };
      } finally {
        Files.deleteIfExists(bare);
      }
    }

    /** What lies beside the copy; false where nobody waits for it any longer. */
    private boolean beside(int first) throws IOException {
      FilmText shifted = text.from(footage.times().secondsOf(first));
      write(".chapters.vtt", shifted.chapterFile());
      if (!shifted.captions().isEmpty()) {
        write(".captions.vtt", shifted.captionFile());
      }
      if (counted == null) {
        return true;
      }
      PictureSheet.Manner manner =
          new PictureSheet.Manner(base.substring(FOLDER.length()) + ".mp4", null, first, false);
      return switch (PictureSheet.make(
          footage,
          counted,
          film,
          manner,
          words,
          progress.begin(Progress.Step.PICTURES, media.file()))) {
        case PictureSheet.Outcome.Made(String page, int _) -> {
          write(".sheet.html", page);
          yield true;
        }
        // Further than anybody pushes a camera: the counter was misread, and there is no sheet.
        case PictureSheet.Outcome.TooMany() -> true;
        case PictureSheet.Outcome.Stopped() -> false;
      };
    }

    private void write(String ending, String content) throws IOException {
      files.add(base + ending);
      room.write(base + ending, content.getBytes(StandardCharsets.UTF_8));
    }

    /** Takes back what was written of it. */
    void forget() throws IOException {
      for (String file : files) {
        Files.deleteIfExists(room.folder().resolve(file));
      }
    }
  }
}
