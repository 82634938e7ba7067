package daylight.footage.codec;

import static org.bytedeco.ffmpeg.avutil.AVFrame.AV_FRAME_FLAG_INTERLACED;
import static org.bytedeco.ffmpeg.global.avcodec.AV_FIELD_PROGRESSIVE;
import static org.bytedeco.ffmpeg.global.avcodec.AV_FIELD_UNKNOWN;

import daylight.footage.FootageTrouble;
import daylight.footage.FrameTimes;
import daylight.footage.Recording;
import daylight.footage.Remark;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/** Opens a file step by step, each of which may be refused. */
final class Opener {
  private static final double FRAMES_ROUNDED = 1.5;

  private final Path file;
  private final Progress progress;
  private final List<Remark> notes = new ArrayList<>();

  Opener(Path file, Progress progress) {
    this.file = file;
    this.progress = progress;
  }

  Opening open() {
    if (!Files.isRegularFile(file)) {
      return refused(FootageTrouble.NOT_A_FILE);
    }
    try {
      long bytes = Files.size(file);
      if (bytes == 0) {
        return refused(FootageTrouble.EMPTY_FILE);
      }
      Optional<Sniffed> sniffed = Sniffed.of(file);
      return sniffed.isEmpty() ? refused(FootageTrouble.NOT_VIDEO) : known(sniffed.get(), bytes);
    } catch (IOException e) {
      return refused(FootageTrouble.UNREADABLE, new Argument.Text(e.toString()));
    }
  }

  private Opening known(Sniffed sniffed, long bytes) {
    Wrapping wrapping = sniffed.wrapping();
    Argument container = new Argument.Text(wrapping.words());
    try (Input input = Input.open(file, sniffed)) {
      Remark refusal = refusal(input, container);
      if (refusal != null) {
        return new Opening.Refused(refusal);
      }
      String ending = Sniffed.ending(file);
      if (wrapping.contradicts(ending)) {
        notes.add(Remark.of(FootageTrouble.WRONG_EXTENSION, new Argument.Text(ending), container));
      }
      Opening told = told(input, sniffed, bytes);
      return told != null ? told : counted(sniffed, bytes, container);
    } catch (IOException e) {
      return refused(FootageTrouble.TRUNCATED, container);
    }
  }

  private static @Nullable Remark refusal(Input input, Argument container) {
    if (!input.hasPictures()) {
      return Remark.of(
          input.hasSound() ? FootageTrouble.NO_PICTURES : FootageTrouble.TRUNCATED, container);
    }
    AVCodecParameters parameters = input.stream().codecpar();
    if (!Decoder.knows(input.stream())) {
      return Remark.of(FootageTrouble.UNSUPPORTED, new Argument.Text(CodecWords.of(parameters)));
    }
    if (Math.max(parameters.width(), parameters.height()) > Decoder.LARGEST_SIDE) {
      return Remark.of(
          FootageTrouble.TOO_LARGE,
          new Argument.Count(parameters.width()),
          new Argument.Count(parameters.height()),
          new Argument.Count(Decoder.LARGEST_SIDE));
    }
    return null;
  }

  private @Nullable Opening told(Input input, Sniffed sniffed, long bytes) throws IOException {
    Optional<Index> index = ToldIndex.of(input, bytes, progress);
    return index.isEmpty() ? null : opened(sniffed, index.get());
  }

  private Opening counted(Sniffed sniffed, long bytes, Argument container) throws IOException {
    Input input = Input.open(file, sniffed);
    Optional<Index> index = CountedIndex.of(input, bytes, progress);
    Opening counted = index.isEmpty() ? null : opened(sniffed, index.get());
    return counted != null ? counted : refused(FootageTrouble.TRUNCATED, container);
  }

  /** Null if the first frame of the index does not come out of the decoder. */
  private @Nullable Opening opened(Sniffed sniffed, Index index) throws IOException {
    Reel reel = new Reel(file, sniffed, index);
    boolean opened = false;
    try {
      Optional<AVFrame> first = reel.wind(0, progress, 0, 0);
      if (first.isEmpty()) {
        return null;
      }
      Input input = reel.input();
      noteMissingTail(index);
      Geometry geometry = Geometry.of(input, first.get());
      Recording recording = recording(input, index.times(), geometry, first.get());
      opened = true;
      return new Opening.Opened(new Footage(reel, recording, geometry, notes));
    } finally {
      if (!opened) {
        reel.close();
      }
    }
  }

  private void noteMissingTail(Index index) {
    double seconds = index.times().seconds();
    // One frame more or less is only how a container rounds.
    if (index.missingSeconds() > FRAMES_ROUNDED * seconds / index.times().count()) {
      notes.add(
          Remark.of(
              FootageTrouble.TRUNCATED_TAIL,
              new Argument.Quantity(Dimension.DURATION, seconds),
              new Argument.Quantity(Dimension.DURATION, seconds + index.missingSeconds())));
    }
  }

  private static Recording recording(
      Input input, FrameTimes times, Geometry geometry, AVFrame first) {
    AVCodecParameters parameters = input.stream().codecpar();
    boolean fields =
        parameters.field_order() != AV_FIELD_UNKNOWN
            && parameters.field_order() != AV_FIELD_PROGRESSIVE;
    return new Recording(
        input.wrapping().words(),
        CodecWords.of(parameters),
        geometry.shownWidth(),
        geometry.shownHeight(),
        times.seconds(),
        times.count() / times.seconds(),
        times.variable(),
        times.count(),
        input.hasSound(),
        fields || (first.flags() & AV_FRAME_FLAG_INTERLACED) != 0,
        CodecWords.browserPlays(input.wrapping(), parameters.codec_id(), first.format()));
  }

  private static Opening refused(FootageTrouble trouble, Argument... arguments) {
    return new Opening.Refused(Remark.of(trouble, arguments));
  }
}
