package daylight.footage.codec;

import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Pictures as JPEG files, of one quality, the same bytes from the same picture. */
public final class Jpeg {
  private Jpeg() {}

  /** The picture as the bytes of a file. */
  public static byte[] of(Raster raster) throws IOException {
    Native.ready();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (Encoder encoder =
            Encoder.of(Recipe.still(), raster.width(), raster.height(), Rate.of(1), false);
        Brush brush = new Brush(encoder)) {
      AVFrame frame = brush.draw(raster);
      frame.pts(0);
      encoder.encode(frame, packet -> append(packet, file));
      encoder.encode(null, packet -> append(packet, file));
    }
    return file.toByteArray();
  }

  private static void append(AVPacket packet, ByteArrayOutputStream file) {
    byte[] bytes = new byte[packet.size()];
    packet.data().get(bytes);
    file.write(bytes, 0, bytes.length);
  }
}
