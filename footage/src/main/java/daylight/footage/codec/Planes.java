package daylight.footage.codec;

import org.bytedeco.ffmpeg.avcodec.AVPacket;

/**
 * The pictures in packets of MPEG-4 Visual, told from their start codes without decoding: a plane
 * begins with 00 00 01 B6, and the two bits that follow tell how it was coded (ISO/IEC 14496-2,
 * 6.2.5 and 6.3.5, from memory; agreement with the decoder is tested frame by frame).
 */
final class Planes {
  private static final int PLANE = 0xB6;
  private static final int CODED_FROM_BEFORE = 1;

  /**
   * A plane that is not coded, in the place of a picture that is not there, takes fewer bytes; the
   * least picture of a recording takes many more.
   */
  private static final int LEAST_CODED = 24;

  private byte[] bytes = {};

  /** Whether a packet holds one picture that is shown where it stands, not one that waits. */
  boolean oneInOrder(AVPacket packet) {
    int size = packet.size();
    if (bytes.length < size) {
      bytes = new byte[size + size / 2];
    }
    packet.data().get(bytes, 0, size);
    int planes = 0;
    int i = 0;
    while (i + 4 < size) {
      if ((bytes[i + 2] & 255) > 1) {
        i += 3;
      } else if (bytes[i] == 0 && bytes[i + 1] == 0 && bytes[i + 2] == 1) {
        if ((bytes[i + 3] & 255) == PLANE) {
          planes++;
          int coding = (bytes[i + 4] & 255) >> 6;
          if (planes > 1 || coding > CODED_FROM_BEFORE || size - i < LEAST_CODED) {
            return false;
          }
        }
        i += 4;
      } else {
        i++;
      }
    }
    return planes == 1;
  }
}
