package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;

/**
 * The two planes of colour of a decoded frame, which mostly have fewer pixels than its brightness.
 */
final class Chroma {
  private static final int COMPONENTS = 3;

  private final BytePointer blue;
  private final BytePointer red;
  private final long blueStride;
  private final long redStride;
  private final int wide;
  private final int high;
  private final int halvedAcross;
  private final int halvedDown;

  private Chroma(AVFrame frame, AVPixFmtDescriptor told) {
    blue = frame.data(1);
    red = frame.data(2);
    blueStride = frame.linesize(1);
    redStride = frame.linesize(2);
    halvedAcross = told.log2_chroma_w();
    halvedDown = told.log2_chroma_h();
    wide = -(-frame.width() >> halvedAcross);
    high = -(-frame.height() >> halvedDown);
  }

  /** Null where the frame has no planes of colour in bytes. */
  static @Nullable Chroma of(AVFrame frame) {
    AVPixFmtDescriptor told = av_pix_fmt_desc_get(frame.format());
    boolean planes =
        told != null
            && !told.isNull()
            && told.nb_components() >= COMPONENTS
            && plane(told, 1)
            && plane(told, 2);
    return planes ? new Chroma(frame, told) : null;
  }

  private static boolean plane(AVPixFmtDescriptor told, int component) {
    return told.comp(component).plane() == component && told.comp(component).step() == 1;
  }

  /** The mean of all its pixels. */
  Tint mean() {
    return new Tint(mean(blue, blueStride), mean(red, redStride));
  }

  private int mean(BytePointer plane, long stride) {
    long sum = 0;
    byte[] row = new byte[wide];
    for (int y = 0; y < high; y++) {
      plane.position(y * stride).get(row);
      for (byte pixel : row) {
        sum += pixel & 255;
      }
    }
    return (int) (sum / ((long) wide * high));
  }

  /** Adds to each pixel of a rectangle how far its colour is from a tint, up to 255. */
  void add(Tint tint, int left, int top, int across, int down, byte[] into) {
    int from = left >> halvedAcross;
    int to = Math.min(wide, ((left + across - 1) >> halvedAcross) + 2);
    int first = top >> halvedDown;
    int last = Math.min(high, ((top + down - 1) >> halvedDown) + 2);
    int columns = to - from;
    int[] far = new int[columns * (last - first)];
    byte[] row = new byte[columns];
    for (int y = first; y < last; y++) {
      int at = (y - first) * columns;
      blue.position(y * blueStride + from).get(row);
      for (int x = 0; x < columns; x++) {
        far[at + x] = Math.abs((row[x] & 255) - tint.blue());
      }
      red.position(y * redStride + from).get(row);
      for (int x = 0; x < columns; x++) {
        far[at + x] += Math.abs((row[x] & 255) - tint.red());
      }
    }
    for (int y = 0; y < down; y++) {
      // Between the pixels of colour it is taken as going straight from one to the next.
      int fineY = ((top + y) << 8 >> halvedDown) - (first << 8);
      int y0 = fineY >> 8;
      int y1 = Math.min(last - first - 1, y0 + 1);
      int partY = fineY & 255;
      for (int x = 0; x < across; x++) {
        int fineX = ((left + x) << 8 >> halvedAcross) - (from << 8);
        int x0 = fineX >> 8;
        int x1 = Math.min(columns - 1, x0 + 1);
        int partX = fineX & 255;
        int above = far[y0 * columns + x0] * (256 - partX) + far[y0 * columns + x1] * partX;
        int below = far[y1 * columns + x0] * (256 - partX) + far[y1 * columns + x1] * partX;
        int here = (above * (256 - partY) + below * partY) >> 16;
        int i = y * across + x;
        into[i] = (byte) Math.min(255, (into[i] & 255) + here);
      }
    }
  }
}
