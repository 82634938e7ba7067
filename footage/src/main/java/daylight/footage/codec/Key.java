package daylight.footage.codec;

/**
 * A frame that decoding can start at.
 *
 * @param frame its number
 * @param pts when it is shown, as its packet says, in ticks
 * @param dts when it is decoded, as its packet says, in ticks
 * @param pos where its packet begins in the file, bytes; negative if not told
 * @param from a place in the file some packets before it, for a reader to find its feet
 */
record Key(int frame, long pts, long dts, long pos, long from) {
  Key numbered(int number) {
    return new Key(number, pts, dts, pos, from);
  }

  boolean isPacket(long itsPts, long itsDts, long itsPos) {
    return pts == itsPts && dts == itsDts && (pos < 0 || itsPos < 0 || pos == itsPos);
  }
}
