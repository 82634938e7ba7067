package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_RGB;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_GRAY8;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;

/**
 * The brightness of a decoded frame, as coded: neither widened to square pixels nor turned. It
 * looks at the frame on display, so it is valid until the next is shown. Nothing is copied but what
 * is asked for.
 */
public final class Luma {
  private static final int BYTE = 8;

  private final int number;
  private final AVFrame picture;
  private final BytePointer pixels;
  private final @Nullable Chroma chroma;

  private Luma(int number, AVFrame picture, @Nullable Chroma chroma) {
    this.number = number;
    this.picture = picture;
    pixels = picture.data(0);
    this.chroma = chroma;
  }

  /** The frame's number, from 0. */
  public int number() {
    return number;
  }

  /** Pixels across, as coded. */
  public int width() {
    return picture.width();
  }

  /** Pixels down, as coded. */
  public int height() {
    return picture.height();
  }

  /**
   * Copies a rectangle of it, row by row.
   *
   * @param into at least {@code across * down} bytes, each a brightness from 0 to 255 without sign
   */
  public void copy(int left, int top, int across, int down, byte[] into) {
    if (left < 0 || top < 0 || left + across > width() || top + down > height()) {
      throw new IllegalArgumentException(
          "the rectangle %d,%d %d × %d does not lie in a picture of %d × %d"
              .formatted(left, top, across, down, width(), height()));
    }
    long stride = picture.linesize(0);
    for (int y = 0; y < down; y++) {
      pixels.position((top + y) * stride + left).get(into, y * across, across);
    }
  }

  /** What colour the picture has on the whole; grey where none is known. */
  public Tint tint() {
    return chroma == null ? Tint.GREY : chroma.mean();
  }

  /**
   * Copies a rectangle as {@link #copy} does, but half of the brightness, and added to it how far a
   * pixel's colour is from a tint: what is as bright as its ground but of another colour stands
   * out.
   */
  public void copyAgainst(Tint tint, int left, int top, int across, int down, byte[] into) {
    copy(left, top, across, down, into);
    int size = across * down;
    for (int i = 0; i < size; i++) {
      into[i] = (byte) ((into[i] & 255) / 2);
    }
    if (chroma != null) {
      chroma.add(tint, left, top, across, down, into);
    }
  }

  /** Shows frames, converting only those whose pixels have no plane of brightness in bytes. */
  static final class Glass implements AutoCloseable {
    private @Nullable Colours colours;
    private @Nullable AVFrame grey;

    Luma look(int number, AVFrame frame) throws IOException {
      if (bright(frame)) {
        return new Luma(number, frame, Chroma.of(frame));
      }
      AVFrame to = grey;
      if (to == null || to.width() != frame.width() || to.height() != frame.height()) {
        close();
        to = Colours.frame(AV_PIX_FMT_GRAY8, frame.width(), frame.height());
        grey = to;
        colours = new Colours();
      }
      Colours with = colours;
      if (with == null) {
        throw new IllegalStateException("colours are there with the picture");
      }
      Colours.tell(frame);
      with.convert(frame, to);
      return new Luma(number, to, null);
    }

    private static boolean bright(AVFrame frame) {
      AVPixFmtDescriptor told = av_pix_fmt_desc_get(frame.format());
      return told != null
          && !told.isNull()
          && (told.flags() & AV_PIX_FMT_FLAG_RGB) == 0
          && told.comp(0).plane() == 0
          && told.comp(0).step() == 1
          && told.comp(0).depth() == BYTE;
    }

    @Override
    public void close() {
      if (colours != null) {
        colours.close();
        colours = null;
      }
      if (grey != null) {
        av_frame_free(grey);
        grey = null;
      }
    }
  }
}
